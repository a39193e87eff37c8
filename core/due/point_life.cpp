// SPDX-License-Identifier: Apache-2.0
// Telling lives from marks and mends, and weighing the grid with them.
#include "due/point_life.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double daysPerMonth = 365.25 / 12.0;

double monthsBetween(Instant a, Instant b)
{
    return std::chrono::duration<double, std::chrono::days::period>(b - a).count() / daysPerMonth;
}

// Walks through one point's records in order of time.
class Teller {
public:
    explicit Teller(double nominal) : m_nominal(nominal) {}

    void look(const Mark &mark)
    {
        advance(mark.at.instant);
        const LookAtAge look{m_lives.age, sensitivityOf(mark.how)};
        if (mark.state == MarkState::Attention) {
            if (!m_lives.now.found)
                m_lives.now.found = look;
            return;
        }
        m_lives.now.found.reset(); // gone without work: nothing was learnt of its life
        m_lives.now.passes.push_back(look);
    }

    void work(const Mend &mend)
    {
        const bool anew = mend.action == "replace" || mend.action == "clean" || mend.action == "lubricate";
        const bool half = mend.action == "reseal" || mend.action == "retorque";
        if (!m_at && !anew)
            return; // work on a part of unknown age says nothing of its age
        advance(mend.at.instant);
        if (!anew && !half && !m_lives.now.found)
            return;
        close();
        m_lives.age = anew ? 0.0 : half ? m_lives.age / 2.0 : m_lives.age;
        m_lives.now.born = m_lives.age;
    }

    PointLives end(Instant now)
    {
        if (m_at)
            advance(now);
        else
            m_lives.age = m_nominal;
        m_lives.passes = static_cast<int>(m_lives.now.passes.size());
        trim(m_lives.now);
        return std::move(m_lives);
    }

private:
    void advance(Instant to)
    {
        m_lives.age = m_at ? m_lives.age + monthsBetween(*m_at, to) : m_nominal;
        m_at = to;
    }

    static void trim(Life &life)
    {
        const std::size_t kept = looksThatMatter(life.passes).size();
        life.passes.erase(life.passes.begin(), life.passes.end() - static_cast<std::ptrdiff_t>(kept));
    }

    void close()
    {
        if (!m_lives.now.passes.empty() || m_lives.now.found) {
            trim(m_lives.now);
            m_lives.earlier.push_back(std::move(m_lives.now));
        }
        m_lives.now = Life();
    }

    double m_nominal;
    PointLives m_lives;
    std::optional<Instant> m_at;
};

double likelihood(const WeibullLife &life, const PointLives &lives)
{
    double all = likelihoodOfPasses(life, {lives.now.passes, lives.now.born});
    for (const Life &earlier : lives.earlier) {
        const LooksOfLife looks{earlier.passes, earlier.born};
        all *= earlier.found ? likelihoodOfFinding(life, looks, *earlier.found)
                             : likelihoodOfPasses(life, looks);
    }
    return all;
}

using Chances = std::array<std::pair<double, double>, std::tuple_size_v<LifeGrid>>; // chance, weight

ChanceRange rangeOf(Chances &chances)
{
    ChanceRange range;
    for (const auto &[chance, weight] : chances)
        range.value += chance * weight;
    std::sort(chances.begin(), chances.end());
    double below = 0.0;
    range.low = range.high = chances.front().first;
    for (const auto &[chance, weight] : chances) {
        if (below < 0.1)
            range.low = chance;
        if (below < 0.9)
            range.high = chance;
        below += weight;
    }
    range.value = std::min(range.value, 1.0);
    range.low = std::min(range.low, range.value);
    range.high = std::max(range.high, range.value);
    return range;
}

} // namespace

PointLives livesOf(const PointHistory &history, double nominal, LocalTime now, bool leaveOutLastWork)
{
    Teller teller(nominal);
    const Mark *last = history.lastLook();
    bool since = false;
    auto mend = history.work.begin();
    const auto workUntil = [&](std::optional<Instant> until) {
        for (; mend != history.work.end() && (!until || (*mend)->at.instant < *until); ++mend) {
            const bool late = last == nullptr || (*mend)->at.instant >= last->at.instant;
            since = since || late;
            if (!late || !leaveOutLastWork)
                teller.work(**mend);
        }
    };
    for (const MarkOnWalk &m : history.marks) {
        if (!isLook(m.mark->state))
            continue;
        workUntil(m.mark->at.instant);
        teller.look(*m.mark);
    }
    workUntil(std::nullopt);
    PointLives lives = teller.end(now.instant);
    lives.workSinceLook = since;
    return lives;
}

LifeGrid updated(LifeGrid prior, const PointLives &lives)
{
    LifeGrid grid = prior;
    double sum = 0.0;
    for (LifeCell &cell : grid) {
        cell.weight *= likelihood(cell.life, lives);
        sum += cell.weight;
    }
    if (!(sum > 0.0)) { // every cell finds it impossible: the longest life is the least wrong
        const auto longest = std::max_element(prior.begin(), prior.end(), [](const auto &a, const auto &b) {
            return a.life.scale < b.life.scale;
        });
        for (LifeCell &cell : prior)
            cell.weight = &cell == &*longest ? 1.0 : 0.0;
        return prior;
    }
    for (LifeCell &cell : grid)
        cell.weight /= sum;
    return grid;
}

ChanceRange chanceAhead(const LifeGrid &grid, const PointLives &lives, double ahead)
{
    Chances chances;
    const LooksOfLife looks{lives.now.passes, lives.now.born};
    for (std::size_t i = 0; i < grid.size(); ++i)
        chances[i] = {presentBy(grid[i].life, looks, lives.age + ahead), grid[i].weight};
    return rangeOf(chances);
}

double chanceMissed(const LifeGrid &grid, const PointLives &lives)
{
    double missed = 0.0;
    for (const LifeCell &cell : grid)
        missed += cell.weight * missedSoFar(cell.life, {lives.now.passes, lives.now.born});
    return missed;
}

ChanceRange chanceUnlooked(const LifeGrid &prior, double age)
{
    Chances chances;
    for (std::size_t i = 0; i < prior.size(); ++i)
        chances[i] = {presentBy(prior[i].life, {}, age), prior[i].weight};
    return rangeOf(chances);
}

} // namespace snugwalk

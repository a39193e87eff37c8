// SPDX-License-Identifier: Apache-2.0
// Telling lives from marks and mends, and weighing the grid with them.
#include "due/point_life.hpp"

#include <algorithm>
#include <cmath>

#include "base/month.hpp"
#include "due/in_order.hpp"

namespace snugwalk {
namespace {

// Walks through one point's records in order of time.
class Teller {
public:
    explicit Teller(const LifeFrame &frame) : m_frame(frame), m_at(frame.clock.begin())
    {
        m_lives.age = frame.nominal;
    }

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
        advance(mend.at.instant);
        if (!anew && !half && !m_lives.now.found)
            return;
        close();
        m_lives.age = anew ? 0.0 : half ? m_lives.age / 2.0 : m_lives.age;
        m_lives.now.born = m_lives.age;
        m_lives.birthKnown = m_lives.birthKnown || anew;
    }

    PointLives end()
    {
        advance(m_frame.now.instant);
        m_lives.passes = static_cast<int>(m_lives.now.passes.size());
        trim(m_lives.now);
        return std::move(m_lives);
    }

private:
    void advance(Instant to)
    {
        if (to <= m_at)
            return;
        m_lives.age += m_frame.byMoves ? m_frame.clock.moves(m_at, to) : m_frame.clock.months(m_at, to);
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

    const LifeFrame &m_frame;
    PointLives m_lives;
    Instant m_at;
};

double likelihoodOfEarlier(const WeibullLife &life, const PointLives &lives)
{
    double all = 1.0;
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
    std::sort(chances.begin(), chances.end(), [](const auto &a, const auto &b) {
        return a.first < b.first || (!(b.first < a.first) && a.second < b.second);
    });
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

AgeClock::AgeClock(const RigHistory &history, LocalTime now) : m_begin(now.instant)
{
    for (const WalkRecord &record : history.walks) {
        m_begin = std::min(m_begin, record.walk.started.instant);
        for (const Mark &mark : record.marks)
            m_begin = std::min(m_begin, mark.at.instant);
    }
    for (const Trip &trip : history.trips)
        m_moves.push_back(trip.start.instant);
    if (m_moves.empty()) {
        for (const WalkRecord &record : history.walks) {
            if (record.walk.kind == "before_road")
                m_moves.push_back(record.walk.started.instant);
        }
    }
    std::sort(m_moves.begin(), m_moves.end());
}

double AgeClock::months(Instant from, Instant to) const
{
    return std::chrono::duration<double, std::chrono::days::period>(to - from).count() / daysPerMonth;
}

double AgeClock::moves(Instant from, Instant to) const
{
    const auto first = std::upper_bound(m_moves.begin(), m_moves.end(), from);
    return static_cast<double>(std::upper_bound(first, m_moves.end(), to) - first);
}

PointLives livesOf(const PointHistory &history, const LifeFrame &frame, bool leaveOutLastWork)
{
    Teller teller(frame);
    const Mark *last = history.lastLook();
    bool since = false;
    inOrder(
        history,
        [&](const Mend &mend) {
            const bool late = last == nullptr || mend.at.instant >= last->at.instant;
            since = since || late;
            if (!late || !leaveOutLastWork)
                teller.work(mend);
        },
        [&](const Mark &mark) { teller.look(mark); });
    PointLives lives = teller.end();
    lives.workSinceLook = since;
    return lives;
}

PointChance chanceOf(const LifeGrid &prior, const PointLives &lives, double ahead)
{
    const LooksOfLife looks{lives.now.passes, lives.now.born};
    std::array<double, std::tuple_size_v<LifeGrid>> missed{};
    Chances chances;
    double sum = 0.0;
    for (std::size_t i = 0; i < prior.size(); ++i) {
        const SeenThrough seen = seenThrough(prior[i].life, looks, lives.age + ahead);
        const double weight = prior[i].weight * seen.likelihood * likelihoodOfEarlier(prior[i].life, lives);
        chances[i] = {seen.present, weight};
        missed[i] = seen.missed;
        sum += weight;
    }
    if (!(sum > 0.0)) { // every life finds it impossible: the longest is the least wrong
        const auto longest = std::max_element(prior.begin(), prior.end(), [](const auto &a, const auto &b) {
            return a.life.scale < b.life.scale;
        });
        chances[static_cast<std::size_t>(longest - prior.begin())].second = sum = 1.0;
    }
    PointChance out;
    for (std::size_t i = 0; i < prior.size(); ++i) {
        chances[i].second /= sum;
        out.missed += missed[i] * chances[i].second;
    }
    out.ahead = rangeOf(chances);
    return out;
}

ChanceRange chanceUnlooked(const LifeGrid &prior, double age)
{
    Chances chances;
    for (std::size_t i = 0; i < prior.size(); ++i)
        chances[i] = {presentBy(prior[i].life, {}, age), prior[i].weight};
    return rangeOf(chances);
}

} // namespace snugwalk

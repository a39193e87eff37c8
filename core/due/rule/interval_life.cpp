// SPDX-License-Identifier: Apache-2.0
// Walking through the records of one point in the order of time.
#include "due/rule/interval_life.hpp"

#include <algorithm>

#include "due/in_order.hpp"

namespace snugwalk {
namespace {

constexpr double wholeInterval = 0.9; // people look a little early; common practice

class Teller {
public:
    explicit Teller(const IntervalAge &age) : m_age(age) {}

    void look(const Mark &mark)
    {
        if (!m_lives.started) {
            if (mark.state == MarkState::Pass)
                begin(mark.at, 0.0, false);
            else
                end(mark.at, 0.0, false);
            return;
        }
        const double gap = advance(mark.at);
        const LookAtAge look{m_lives.age, sensitivityOf(mark.how)};
        if (mark.state == MarkState::Pass) {
            m_lives.fullPasses = gap >= wholeInterval ? m_lives.fullPasses + 1 : m_lives.fullPasses;
            m_lives.now.passes.push_back(look);
            return;
        }
        m_lives.now.found = look;
        m_lives.found = true;
        m_lives.fullPasses = 0;
        end(mark.at, 0.0, false);
    }

    void work(const Mend &mend)
    {
        const bool anew = mend.action == "replace" || mend.action == "clean" || mend.action == "lubricate";
        const bool half = mend.action == "reseal" || mend.action == "retorque";
        if (anew) {
            end(mend.at, 0.0, true);
        } else if (half && m_lives.started) {
            advance(mend.at);
            end(mend.at, m_lives.age / 2.0, true);
        }
    }

    IntervalLives take() { return std::move(m_lives); }

private:
    double advance(LocalTime to)
    {
        const double gap = to.instant > m_lives.since.instant ? m_age(m_lives.since, to) : 0.0;
        m_lives.age += gap;
        m_lives.since = std::max(m_lives.since, to);
        return gap;
    }

    void begin(LocalTime when, double age, bool known)
    {
        m_lives.now = IntervalLife{age, known, {}, std::nullopt};
        m_lives.age = age;
        m_lives.since = when;
        m_lives.started = true;
    }

    void end(LocalTime when, double age, bool known)
    {
        if (m_lives.now.found || !m_lives.now.passes.empty())
            m_lives.earlier.push_back(std::move(m_lives.now));
        begin(when, age, known);
    }

    const IntervalAge &m_age;
    IntervalLives m_lives;
};

} // namespace

IntervalLives intervalLivesOf(const PointHistory &history, const IntervalAge &age)
{
    Teller teller(age);
    inOrder(
        history, [&](const Mend &mend) { teller.work(mend); }, [&](const Mark &mark) { teller.look(mark); });
    return teller.take();
}

} // namespace snugwalk

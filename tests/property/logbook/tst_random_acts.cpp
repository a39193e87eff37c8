// SPDX-License-Identifier: Apache-2.0
// Hundreds of random acts: the projection is what the entries say, and marks are what a plain model says.
#include <doctest/doctest.h>

#include <map>
#include <random>

#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

using Marks = std::map<std::string, std::string>; ///< point to state and note

// Does random acts and keeps beside the logbook what the marks of the walk should be, act by act.
class RandomWalker {
public:
    explicit RandomWalker(unsigned seed) : m_walker("random " + std::to_string(seed)), m_rng(seed)
    {
        m_levels = {{}};
    }

    void act()
    {
        const int kind = pick(100);
        // sometimes the machine's clock is set back
        if (pick(20) == 0)
            m_walker.home.clock.advance(std::chrono::hours(pick(2000) - 1000));
        if (kind < 55)
            mark();
        else if (kind < 65)
            markLine();
        else if (kind < 85)
            undo();
        else if (kind < 93)
            mend();
        else if (kind < 97)
            rig();
        else
            nextWalk();
    }

    void checkMarks()
    {
        Marks found;
        const auto marks = marksOf(m_walker.book(), m_walker.walk.id).value();
        for (const Mark &mark : marks)
            found[mark.point] = std::string(slug(mark.state)) + " " + mark.note;
        for (const auto &mark : m_levels.back()) {
            CAPTURE(mark.first);
            REQUIRE(found[mark.first] == mark.second);
        }
        REQUIRE(found.size() == m_levels.back().size());
        REQUIRE(findingHistories(m_walker.book(), m_walker.rig.id)->size() >= m_oldFindings);
    }

    Walker &walker() { return m_walker; }

private:
    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_rng); }

    const TapeLine &anyLine()
    {
        return m_walker.walk.tape.at(
            static_cast<std::size_t>(pick(static_cast<int>(m_walker.walk.tape.size()))));
    }

    void mark()
    {
        const TapeLine &line = anyLine();
        const std::string point =
            line.points.at(static_cast<std::size_t>(pick(static_cast<int>(line.points.size()))));
        const std::string note = "note " + std::to_string(pick(3));
        MarkDraft draft = pick(3) == 0 ? attentionOn(point, 1 + pick(5), note) : passOf(point, note);
        if (pick(5) == 0)
            draft = couldNotLook(point), draft.note = note;
        REQUIRE(m_walker.mark(draft));
        m_levels.push_back(m_levels.back());
        m_levels.back()[point] = std::string(slug(draft.state)) + " " + note;
    }

    void markLine()
    {
        const TapeLine line = anyLine();
        Marks next = m_levels.back();
        for (const std::string &point : line.points)
            next.emplace(point, "pass ");
        m_walker.home.clock.advance(std::chrono::minutes(1));
        REQUIRE(snugwalk::markLine(m_walker.book(), m_walker.walk, line, MarkState::Pass, LookedHow::Glance,
                                   "", m_walker.doer));
        if (next != m_levels.back()) // a line that has all its marks is no act
            m_levels.push_back(next);
    }

    void undo()
    {
        const auto undone = m_walker.undo();
        REQUIRE(undone.has_value() == (m_levels.size() > 1));
        if (undone)
            m_levels.pop_back();
    }

    void mend()
    {
        Mend mend;
        mend.rig = m_walker.rig.id;
        mend.at = m_walker.home.clock.now();
        mend.action = mendActions().at(static_cast<std::size_t>(pick(7)));
        mend.points = {anyLine().points.front()};
        const auto histories = findingHistories(m_walker.book(), m_walker.rig.id).value();
        for (const FindingHistory &history : histories) {
            if (pick(4) == 0)
                mend.findings.push_back(history.finding.id);
        }
        REQUIRE(addMend(m_walker.book(), mend, m_walker.doer));
    }

    void rig()
    {
        m_walker.rig.tires.placard = kilopascals(300 + pick(40));
        REQUIRE(saveRig(m_walker.book(), m_walker.rig, m_walker.doer));
    }

    void nextWalk()
    {
        m_oldFindings = findingHistories(m_walker.book(), m_walker.rig.id)->size();
        m_walker.nextWalk();
        m_levels = {{}};
    }

    Walker m_walker;
    std::mt19937 m_rng;
    std::vector<Marks> m_levels; ///< the marks after each act of this walk that still stands
    std::size_t m_oldFindings = 0;
};

} // namespace

TEST_CASE("500 random acts: marks as the model has them, projection as the entries have it")
{
    for (const unsigned seed : {1U, 2U}) { // fixed: a failure must be repeatable
        CAPTURE(seed);
        RandomWalker random(seed);
        for (int i = 0; i < 500; ++i) {
            CAPTURE(i);
            random.act();
            if (i % 10 == 9)
                random.checkMarks();
        }
        random.checkMarks();
        Logbook &book = random.walker().book();
        const Hash lived = projectionNow(book);
        CHECK(entryCount(book) > 500);
        CHECK(projectionRebuilt(book) == lived);
        const CheckReport report = checkLogbook(book, true).value();
        CHECK(report.faults.empty());
        CHECK(projectionNow(random.walker().home.reopened()) == lived);
    }
}

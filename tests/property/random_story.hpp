// SPDX-License-Identifier: Apache-2.0
// Random histories over the small catalogue, the same for the same seed; and their shuffles.
#pragma once

#include <algorithm>
#include <random>
#include <string>

#include "../unit/due/story.hpp"

namespace snugwalk::test {

class RandomStory {
public:
    explicit RandomStory(unsigned seed) : m_rng(seed)
    {
        const int walks = 2 + below(5);
        for (int i = 0; i < walks; ++i)
            addWalk(i);
    }
    [[nodiscard]] RigHistory history() const { return m_story.history(); }
    [[nodiscard]] const std::vector<Id> &walks() const { return m_walks; }
    [[nodiscard]] const std::vector<Id> &findings() const { return m_findings; }
    Story &story() { return m_story; }
    /// After everything in the history.
    [[nodiscard]] LocalTime end() const { return day(8); }
    int below(int limit) { return std::uniform_int_distribution<int>(0, limit - 1)(m_rng); }
    std::mt19937 &rng() { return m_rng; }

private:
    // Walks a month and a half apart, so that intervals run out; minutes are few, so that times tie.
    [[nodiscard]] LocalTime day(int index, int minutes = 0) const
    {
        LocalTime t = at("2026-01-01", minutes);
        t.instant += std::chrono::days(45 * index);
        return t;
    }

    void addWalk(int i)
    {
        std::vector<std::string> tape;
        for (const Point &point : smallCatalogue().points()) {
            if (below(4) != 0)
                tape.push_back(point.slug);
        }
        const Id walk = m_story.walk(day(i), below(2) == 0 ? "full_round" : "before_road", tape);
        m_walks.push_back(walk);
        for (const std::string &point : tape)
            addMark(walk, point, day(i, below(3)));
        addBetween(i);
    }

    void addMark(Id walk, const std::string &point, LocalTime when)
    {
        const int roll = below(10);
        if (roll == 0)
            return;
        const MarkState state = roll < 5    ? MarkState::Pass
                                : roll < 8  ? MarkState::Attention
                                : roll == 8 ? MarkState::CouldNotLook
                                            : MarkState::NotFitted;
        Mark &mark = m_story.mark(walk, point, state, when);
        mark.how = static_cast<LookedHow>(roll % 3);
        if (point == "tread" && (state == MarkState::Pass || state == MarkState::Attention))
            mark.readings = {{"tread-depth", "wheel 1L", Dimension::Length, 1e-3 * (1 + below(8)), "mm"}};
        if (state != MarkState::Attention)
            return;
        for (const Id &id : m_findings) {
            if (m_story.find(id)->finding.point == point && below(3) != 0)
                m_story.look(id, walk, below(6), when).extent =
                    Extent{Dimension::Length, 1e-3 * below(30), "mm"};
        }
        if (below(2) == 0)
            m_findings.push_back(
                m_story.finding(walk, point, below(2) == 0 ? "crack" : "loose", 1 + below(5), when));
    }

    void addBetween(int i)
    {
        static const char *const actions[] = {"replace",   "reseal", "retorque", "clean",
                                              "lubricate", "adjust", "other"};
        static const char *const kinds[] = {"hail", "flood", "wheel_fitted"};
        for (const Id &id : m_findings) {
            if (below(4) == 0)
                m_story.mend(day(i, 100 + below(2)), actions[below(7)], {id});
        }
        if (below(2) == 0)
            m_story.trip(day(i, 200), day(i, 200 + 60 * 24 * (1 + below(9))),
                         kilometres(50.0 * (1 + below(40))));
        if (below(5) == 0)
            m_story.happening(day(i, 150), kinds[below(3)]);
    }

    Story m_story;
    std::mt19937 m_rng;
    std::vector<Id> m_walks;
    std::vector<Id> m_findings;
};

inline void shuffleAll(RigHistory &h, std::mt19937 &rng)
{
    const auto mix = [&](auto &list) { std::shuffle(list.begin(), list.end(), rng); };
    mix(h.walks);
    mix(h.findings);
    mix(h.mends);
    mix(h.trips);
    mix(h.happenings);
    for (WalkRecord &record : h.walks)
        mix(record.marks);
    for (FindingHistory &f : h.findings) {
        mix(f.looks);
        mix(f.mends);
        mix(f.pointPasses);
        mix(f.photos);
        mix(f.drawings);
    }
}

} // namespace snugwalk::test

// SPDX-License-Identifier: Apache-2.0
// Counts of a walk and the line to go on at.
#include <doctest/doctest.h>

#include "walk/progress.hpp"

using namespace snugwalk;

namespace {

Walk threeLines()
{
    Walk walk;
    walk.tape = {{"a", {"a"}}, {"bc", {"b", "c"}}, {"d", {"d"}}};
    return walk;
}

Mark mark(const char *point, MarkState state)
{
    Mark m;
    m.point = point;
    m.state = state;
    return m;
}

} // namespace

TEST_CASE("what has no mark is not looked at, never a pass")
{
    const Walk walk = threeLines();
    CHECK(countMarks(walk, {}) == Counts{4, 0, 0, 0, 0, 4});
    CHECK(nextLine(walk, {}) == 0);
    CHECK(linesLeft(walk, {}) == 3);
    const std::vector<Mark> marks = {mark("a", MarkState::Pass), mark("b", MarkState::Attention),
                                     mark("c", MarkState::CouldNotLook), mark("d", MarkState::NotFitted),
                                     mark("not on this walk", MarkState::Pass)};
    CHECK(countMarks(walk, marks) == Counts{4, 1, 1, 1, 1, 0});
    CHECK_FALSE(nextLine(walk, marks));
    CHECK(linesLeft(walk, marks) == 0);
}

TEST_CASE("the walk goes on at the first line with a point that has no mark")
{
    const Walk walk = threeLines();
    CHECK(nextLine(walk, {mark("a", MarkState::Pass)}) == 1);
    CHECK(nextLine(walk, {mark("a", MarkState::Pass), mark("b", MarkState::Pass)}) == 1);
    CHECK(nextLine(walk, {mark("a", MarkState::Pass), mark("b", MarkState::Pass),
                          mark("c", MarkState::Pass)}) == 2);
    CHECK(nextLine(walk, {mark("d", MarkState::Pass)}) == 0);
    CHECK(linesLeft(walk, {mark("d", MarkState::Pass), mark("b", MarkState::Pass)}) == 2);
}

TEST_CASE("a line shows the state that needs a person most, in every order")
{
    const TapeLine line{"bc", {"b", "c"}};
    const MarkState order[] = {MarkState::NotFitted, MarkState::Pass, MarkState::CouldNotLook,
                               MarkState::Attention};
    for (int b = 0; b < 4; ++b) {
        for (int c = 0; c < 4; ++c) {
            const std::vector<Mark> marks = {mark("b", order[b]), mark("c", order[c])};
            CHECK(lineState(line, marks) == order[b > c ? b : c]);
        }
        CHECK(lineState(line, {mark("b", order[b])}) == MarkState::NotLooked);
        CHECK(lineState(line, {mark("c", order[b])}) == MarkState::NotLooked);
    }
}

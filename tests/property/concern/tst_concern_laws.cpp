// SPDX-License-Identifier: Apache-2.0
// Laws of concern and of the rig's state over 2,000 random histories.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "../random_story.hpp"
#include "concern/state.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr unsigned histories = 2000;

RigState stateOfAll(const RigHistory &history, LocalTime now)
{
    return stateOf(smallCatalogue(), history, dueBands(smallCatalogue(), history, now), now);
}

double riskOf(const RigState &state)
{
    double worst = 0.0;
    for (const OpenFinding &f : state.open)
        worst = std::max(worst, f.concern.number);
    return worst;
}

const OpenFinding *findOpen(const RigState &state, Id id)
{
    const auto found =
        std::find_if(state.open.begin(), state.open.end(), [&](const OpenFinding &f) { return f.id == id; });
    return found == state.open.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("the order of the history never changes the state")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        RigHistory history = random.history();
        const RigState a = stateOfAll(history, random.end());
        shuffleAll(history, random.rng());
        const RigState b = stateOfAll(history, random.end());
        CAPTURE(seed);
        REQUIRE(a.open.size() == b.open.size());
        for (std::size_t i = 0; i < a.open.size(); ++i) {
            REQUIRE(a.open[i].id == b.open[i].id);
            REQUIRE(a.open[i].concern.number == b.open[i].concern.number);
            REQUIRE(a.open[i].concern.call == b.open[i].concern.call);
        }
        REQUIRE(a.hold == b.hold);
        REQUIRE(a.forbids == b.forbids);
        REQUIRE(a.holds.size() == b.holds.size());
        REQUIRE(a.lookedAt == b.lookedAt);
        REQUIRE(a.walk == b.walk);
        REQUIRE(a.pastDue == b.pastDue);
        REQUIRE(a.dueNow == b.dueNow);
    }
}

TEST_CASE("mending a finding raises no concern and no count of holds")
{
    int mended = 0;
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        const LocalTime now = random.end();
        const RigState before = stateOfAll(random.history(), now);
        if (before.open.empty())
            continue;
        const OpenFinding &chosen =
            before.open[static_cast<std::size_t>(random.below(static_cast<int>(before.open.size())))];
        const char *const actions[] = {"replace",   "reseal", "retorque", "clean",
                                       "lubricate", "adjust", "other"};
        LocalTime justNow = now;
        justNow.instant -= std::chrono::minutes(1);
        random.story().mend(justNow, actions[random.below(7)], {chosen.id});
        const RigState after = stateOfAll(random.history(), now);
        CAPTURE(seed);
        for (const OpenFinding &f : before.open) {
            if (const OpenFinding *same = findOpen(after, f.id)) {
                REQUIRE(same->concern.number <= f.concern.number);
                REQUIRE(static_cast<int>(same->concern.call) <= static_cast<int>(f.concern.call));
            }
        }
        REQUIRE(after.hold <= before.hold);
        REQUIRE(riskOf(after) <= riskOf(before));
        ++mended;
    }
    CHECK(mended > 1000);
}

TEST_CASE("a new pass never hides an open finding")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        const RigState before = stateOfAll(random.history(), random.end());
        LocalTime later = random.end();
        later.instant += std::chrono::days(1);
        const Id walk = random.story().walk(later);
        for (const Point &point : smallCatalogue().points())
            random.story().mark(walk, point.slug, MarkState::Pass, later);
        const RigState after = stateOfAll(random.history(), later);
        CAPTURE(seed);
        for (const OpenFinding &f : before.open) {
            if (f.status == FindingStatus::Open)
                REQUIRE(findOpen(after, f.id) != nullptr);
        }
    }
}

TEST_CASE("a missing look never counts as a pass; numbers stay in their range")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        const RigHistory history = random.history();
        const RigState state = stateOfAll(history, random.end());
        CAPTURE(seed);
        for (const WalkRecord &record : history.walks) {
            if (record.walk.id != state.walk)
                continue;
            int looked = 0;
            for (const Mark &mark : record.marks)
                looked += mark.state == MarkState::Pass || mark.state == MarkState::Attention;
            REQUIRE(state.lookedAt == looked);
        }
        for (const OpenFinding &f : state.open) {
            REQUIRE(f.concern.low >= 0.0);
            REQUIRE(f.concern.low <= f.concern.number);
            REQUIRE(f.concern.number <= f.concern.high);
            REQUIRE(f.concern.high <= 100.0);
            REQUIRE((f.concern.call == Call::Hold) == !f.concern.holds.empty());
        }
        const auto loose = std::count_if(state.holds.begin(), state.holds.end(),
                                         [](const StateHold &h) { return h.finding.isNull(); });
        REQUIRE(state.hold >= static_cast<int>(loose));
        REQUIRE(state.forbids.empty() == state.holds.empty());
    }
}

TEST_CASE("more grade, more consequence, more time: never less concern")
{
    for (int grade = 1; grade < 5; ++grade) {
        for (double months = 0.0; months < 12.0; months += 0.25) {
            CHECK(chanceOfFailing(grade + 1, months) >= chanceOfFailing(grade, months));
            CHECK(chanceOfFailing(grade, months + 0.25) >= chanceOfFailing(grade, months));
        }
    }
}

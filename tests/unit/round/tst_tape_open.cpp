// SPDX-License-Identifier: Apache-2.0
// Points that join a move's tape only while a happening waits for them.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/units.hpp"
#include "round/tape.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2026-11-24T12:00:00Z");

RigHistory with(const char *event, const Rig &rig = tandem())
{
    RigHistory history;
    history.rig = rig;
    history.happenings.push_back(
        {Id::fromBytes(std::string(16, 'h')), rig.id, event, timeAt("2026-11-20T12:00:00Z"), ""});
    return history;
}

std::vector<TapeLine> tape(const RigHistory &history, const char *kind = "before_road")
{
    return tapeForWalk(realCatalogue(), history, kind, {}, {}, now).value();
}

bool asksFor(const std::vector<TapeLine> &lines, const std::string &point)
{
    return std::any_of(lines.begin(), lines.end(), [&](const TapeLine &line) {
        return std::find(line.points.begin(), line.points.end(), point) != line.points.end();
    });
}

void look(RigHistory &history, const char *point, const char *when)
{
    WalkRecord record;
    record.walk.id = Id::fromBytes(std::string(16, 'w'));
    record.walk.started = timeAt(when);
    Mark mark;
    mark.id = Id::fromBytes(std::string(16, 'm'));
    mark.point = point;
    mark.state = MarkState::Pass;
    mark.at = timeAt(when);
    record.marks.push_back(mark);
    history.walks.push_back(record);
}

Trip trip(const char *from, const char *to, Distance length)
{
    Trip t;
    t.start = timeAt(from);
    t.end = timeAt(to);
    t.summary.length = length;
    return t;
}

} // namespace

TEST_CASE("wheel nuts are on the tape from the fitting of a wheel until the ladder is closed")
{
    RigHistory none;
    none.rig = tandem();
    CHECK_FALSE(asksFor(tape(none), "wheel-nut-torque"));
    RigHistory history = with("wheel_fitted");
    const auto open = tape(history);
    REQUIRE(asksFor(open, "wheel-nut-torque"));
    CHECK(asksFor(tape(history, "at_stop"), "wheel-nut-torque"));
    const auto wheels =
        std::find_if(open.begin(), open.end(), [](const TapeLine &line) { return line.slug == "wheels"; });
    REQUIRE(wheels != open.end());
    CHECK((wheels + 1)->slug == "wheel-nut-torque");
    CHECK(open.back().slug == "pull-away-lap");
    // looked at after 12 mi: the next rungs wait; after 60 mi the ladder is closed (50 to 100 mi, common
    // practice)
    history.trips.push_back(trip("2026-11-20T13:00:00Z", "2026-11-20T14:00:00Z", miles(12)));
    look(history, "wheel-nut-torque", "2026-11-20T15:00:00Z");
    CHECK(asksFor(tape(history), "wheel-nut-torque"));
    history.trips.push_back(trip("2026-11-21T13:00:00Z", "2026-11-21T14:00:00Z", miles(60)));
    look(history, "wheel-nut-torque", "2026-11-21T15:00:00Z");
    CHECK_FALSE(asksFor(tape(history), "wheel-nut-torque"));
}

TEST_CASE("U-bolts after axle work, until they were looked at")
{
    RigHistory history = with("axle_work");
    CHECK(asksFor(tape(history), "u-bolts"));
    look(history, "u-bolts", "2026-11-21T15:00:00Z");
    CHECK_FALSE(asksFor(tape(history), "u-bolts"));
}

TEST_CASE("a move has at most 16 lines with what is open, too")
{
    for (int kind = 0; kind <= static_cast<int>(RigKind::Van); ++kind) {
        Rig rig = tandem();
        rig.kind = static_cast<RigKind>(kind);
        rig.fittings = {knownFittings().begin(), knownFittings().end()};
        RigHistory history = with("wheel_fitted", rig);
        history.happenings.push_back(
            {Id::fromBytes(std::string(16, 'i')), rig.id, "axle_work", timeAt("2026-11-20T12:00:00Z"), ""});
        const auto lines = tape(history);
        CHECK(lines.size() <= 16);
        CHECK(asksFor(lines, "wheel-nut-torque"));
        CHECK(asksFor(lines, "u-bolts"));
    }
}

TEST_CASE("a hidden point does not join; a full round has it once anyway")
{
    RigHistory history = with("wheel_fitted");
    const Catalogue mine = realCatalogue().withOwn({{}, {{"wheel-nut-torque", "A", civilDate(now), ""}}, {}});
    CHECK_FALSE(asksFor(tapeForWalk(mine, history, "before_road", {}, {}, now).value(), "wheel-nut-torque"));
    const auto round = tape(history, "full_round");
    CHECK(std::count_if(round.begin(), round.end(),
                        [](const TapeLine &line) { return line.slug == "wheel-nut-torque"; }) == 1);
    CHECK(tapeForWalk(realCatalogue(), history, "sideways", {}, {}, now).error().code == Errc::NotFound);
}

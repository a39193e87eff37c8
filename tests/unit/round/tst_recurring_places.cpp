// SPDX-License-Identifier: Apache-2.0
// Where a rig keeps failing: what counts as one place, and what counts as once more.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "base/units.hpp"
#include "rig/usual_measures.hpp"
#include "round/recurring_places.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;

namespace {

LocalTime day(int number)
{
    return {startOfDay(addDays(CivilDate{std::chrono::year{2025} / 1 / 1}, number)), {}};
}

int made = 0; // ids that differ

FindingHistory found(RigPlace place, int on, const char *point = "roof-lap-sealant")
{
    FindingHistory history;
    history.finding.id.bytes[0] = static_cast<unsigned char>(++made);
    history.finding.id.bytes[1] = static_cast<unsigned char>(made >> 8);
    history.finding.point = point;
    history.finding.place = std::move(place);
    history.finding.opened = day(on);
    Look look;
    look.at = day(on);
    look.grade = 3;
    history.looks.push_back(look);
    return history;
}

RigPlace spot(Face face, double aft, double right, double up)
{
    return {"", face, RigPosition{metres(aft), metres(right), metres(up)}};
}

void mend(FindingHistory &history, int on)
{
    Mend mend;
    mend.at = day(on);
    history.mends.push_back(mend);
}

void look(FindingHistory &history, int on, int grade)
{
    Look look;
    look.at = day(on);
    look.grade = grade;
    history.looks.push_back(look);
}

void pass(FindingHistory &history, int on)
{
    Mark mark;
    mark.at = day(on);
    history.pointPasses.push_back(mark);
}

} // namespace

TEST_CASE("the same seam a finger's breadth on is the same place; an arm's length on is another")
{
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    const RecurringPlaces places = recurringPlaces(rig, {found(spot(Face::Top, 2.0, 0.1, 2.4), 1),
                                                         found(spot(Face::Top, 2.1, 0.1, 2.4), 40),
                                                         found(spot(Face::Top, 2.6, 0.1, 2.4), 60)});
    REQUIRE(places.places.size() == 2);
    CHECK(places.places[0].times == 2);
    CHECK(places.places[0].first == day(1));
    CHECK(places.places[0].last == day(40));
    CHECK(places.places[0].at->aft == metres(2.0)); // where it was first found
    CHECK(places.places[1].times == 1);
}

TEST_CASE("a row of rivets does not grow into one place")
{
    std::vector<FindingHistory> findings;
    for (int i = 0; i < 12; ++i)
        findings.push_back(found(spot(Face::Underside, 1.0 + 0.1 * i, 0.5, 0.5), i));
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    CHECK(recurringPlaces(rig, findings).places.size() == 6); // each takes the next one in, and no more
}

TEST_CASE("the same spot seen on another face is another place")
{
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    CHECK(recurringPlaces(
              rig, {found(spot(Face::Top, 2, -1.15, 2.4), 1), found(spot(Face::Left, 2, -1.15, 2.4), 2)})
              .places.size() == 2);
}

TEST_CASE("a named place is one place, and takes in a spot on it")
{
    const Rig rig = test::tandem();
    RigPlace wheel = findNamedPlace(rig, "wheel 1L").value();
    RigPlace byName{"wheel 1L", std::nullopt, std::nullopt};
    RigPlace near = spot(Face::Left, wheel.at->aft.si() + 0.05, wheel.at->right.si(), wheel.at->up.si());
    const RecurringPlaces places = recurringPlaces(
        rig, {found(byName, 1, "tread-depth"), found(near, 5, "wheel-nuts"), found(byName, 9, "tread-depth"),
              found({"wheel 2L", std::nullopt, std::nullopt}, 9)});
    REQUIRE(places.places.size() == 2);
    CHECK(places.places[0].times == 3);
    CHECK(places.places[0].face == Face::Left);
    CHECK(places.places[0].points == std::vector<std::string>{"tread-depth", "wheel-nuts"});
}

TEST_CASE("a name the rig no longer has is still one place, without a spot")
{
    const Rig rig = test::tandem();
    const RecurringPlaces places =
        recurringPlaces(rig, {found({"stove flue", std::nullopt, std::nullopt}, 1),
                              found({"stove flue", std::nullopt, std::nullopt}, 3)});
    REQUIRE(places.places.size() == 1);
    CHECK(places.places[0].times == 2);
    CHECK(!places.places[0].at);
}

TEST_CASE("a face alone gathers what says no more; nothing said is counted apart")
{
    const Rig rig = test::tandem();
    const RigPlace roof{"", Face::Top, std::nullopt};
    const RecurringPlaces places = recurringPlaces(
        rig, {found(roof, 1), found(roof, 2), found(spot(Face::Top, 1, 0, 2.7), 3), found({}, 4)});
    CHECK(places.places.size() == 2);
    CHECK(places.places[0].times == 2);
    CHECK(places.withoutPlace == 1);
}

TEST_CASE("what comes back after a mend, or after it was gone, is once more")
{
    FindingHistory history = found(spot(Face::Top, 1, 0, 2.4), 1);
    look(history, 10, 3); // still there: the same time
    CHECK(timesFound(history).size() == 1);
    mend(history, 20);
    look(history, 30, 0);
    CHECK(timesFound(history).size() == 1);
    look(history, 40, 2);
    CHECK(timesFound(history) == std::vector<LocalTime>{day(1), day(40)});
    look(history, 50, 0); // gone by itself
    look(history, 60, 2);
    look(history, 70, 3);
    CHECK(timesFound(history).size() == 3);
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    const RecurringPlace place = recurringPlaces(rig, {history}).places.front();
    CHECK(place.times == 3);
    CHECK(place.last == day(60));
    CHECK(place.lastMend == day(20));
}

TEST_CASE("a place is open until the last of its findings is confirmed or gone")
{
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    FindingHistory one = found(spot(Face::Top, 1, 0, 2.4), 1);
    CHECK(recurringPlaces(rig, {one}).places.front().isOpen);
    mend(one, 5);
    CHECK(recurringPlaces(rig, {one}).places.front().isOpen); // nobody has looked since
    pass(one, 8);
    CHECK(!recurringPlaces(rig, {one}).places.front().isOpen);
    const FindingHistory again = found(spot(Face::Top, 1, 0, 2.4), 20);
    CHECK(recurringPlaces(rig, {one, again}).places.front().isOpen);
}

TEST_CASE("laws: every finding is in one place, near its first, and later ones change no earlier place")
{
    std::mt19937 rng(11);
    std::uniform_real_distribution<double> along(0, 2);
    const Rig rig = usualRig(RigKind::TravelTrailer, Practice::Europe);
    std::vector<FindingHistory> findings;
    for (int i = 0; i < 120; ++i)
        findings.push_back(found(spot(Face::Left, along(rng), -1.15, along(rng)), i));
    const RecurringPlaces all = recurringPlaces(rig, findings);
    std::size_t counted = 0;
    for (const RecurringPlace &place : all.places) {
        counted += place.findings.size();
        CHECK(place.times == static_cast<int>(place.findings.size()));
        for (const Id &id : place.findings) {
            const auto history = std::find_if(findings.begin(), findings.end(),
                                              [&](const FindingHistory &h) { return h.finding.id == id; });
            REQUIRE(history != findings.end());
            const RigPosition &at = *history->finding.place.at;
            CHECK(std::hypot(at.aft.si() - place.at->aft.si(), at.up.si() - place.at->up.si()) <=
                  handsBreadth + 1e-12);
        }
    }
    CHECK(counted == findings.size());
    for (std::size_t i = 1; i < all.places.size(); ++i)
        CHECK(all.places[i - 1].times >= all.places[i].times);
    // the order in which they were read does not matter
    std::vector<FindingHistory> mixed = findings;
    std::shuffle(mixed.begin(), mixed.end(), rng);
    const RecurringPlaces again = recurringPlaces(rig, mixed);
    REQUIRE(again.places.size() == all.places.size());
    for (std::size_t i = 0; i < all.places.size(); ++i)
        CHECK(again.places[i].findings == all.places[i].findings);
    // a year later: what was a place is one still, at the same spot
    findings.resize(60);
    for (const RecurringPlace &before : recurringPlaces(rig, findings).places)
        CHECK(std::any_of(all.places.begin(), all.places.end(), [&](const RecurringPlace &now) {
            return now.at == before.at && now.findings.front() == before.findings.front();
        }));
}

TEST_CASE("no finding, no place")
{
    const RecurringPlaces none = recurringPlaces(Rig{}, {});
    CHECK(none.places.empty());
    CHECK(none.withoutPlace == 0);
}

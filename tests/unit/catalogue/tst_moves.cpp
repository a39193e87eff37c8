// SPDX-License-Identifier: Apache-2.0
// The walk before a move for every kind of rig and habit, and the walks that add to it.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "base/units.hpp"
#include "rig/usual_fittings.hpp"
#include "support/five_rigs.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::vector<TapeLine> move(const Rig &rig)
{
    return tapeFor(realCatalogue(), rig, "before_road", {}, {}).value();
}

bool asksFor(const std::vector<TapeLine> &tape, const std::string &point)
{
    return std::any_of(tape.begin(), tape.end(), [&](const TapeLine &line) {
        return std::find(line.points.begin(), line.points.end(), point) != line.points.end();
    });
}

double minutesOf(const std::vector<TapeLine> &tape)
{
    double minutes = 0.0;
    for (const TapeLine &line : tape) {
        for (const std::string &point : line.points)
            minutes += realCatalogue().find(point)->minutes;
    }
    return minutes;
}

Rig usualRig(RigKind kind, Practice practice)
{
    Rig rig = tandem();
    rig.kind = kind;
    rig.practice = practice;
    rig.hitch = usualHitch(kind);
    rig.fittings = usualFittings(kind, practice);
    return rig;
}

} // namespace

// Source: the trade's set "every time it moves": 14 lines on a plain North American tandem, 8 to 10 minutes.
TEST_CASE("a plain North American twin-axle trailer: at most 14 lines, 8 to 10 minutes")
{
    const auto tape = move(usualRig(RigKind::TravelTrailer, Practice::NorthAmerica));
    MESSAGE(tape.size() << " lines, " << minutesOf(tape) << " minutes");
    CHECK(tape.size() <= 14);
    CHECK(minutesOf(tape) >= 8.0);
    CHECK(minutesOf(tape) <= 10.0);
    CHECK(move(tandem()).size() <= 14);
}

TEST_CASE("at most 16 lines for any rig and practice, with whatever fittings")
{
    std::mt19937 random(20261125);
    std::size_t most = 0;
    for (int round = 0; round < 2000; ++round) {
        Rig rig = usualRig(static_cast<RigKind>(random() % 7), static_cast<Practice>(random() % 4));
        for (const std::string &fitting : knownFittings()) {
            if (random() % 2 == 0)
                rig.fittings.insert(fitting);
        }
        const auto tape = move(rig);
        most = std::max(most, tape.size());
        CHECK(tape.size() <= 16);
        CHECK(tape.back().slug == "pull-away-lap");
        CHECK(std::count_if(tape.begin(), tape.end(),
                            [](const TapeLine &line) { return line.slug == "pull-away-lap"; }) == 1);
    }
    MESSAGE("at most " << most << " lines");
}

TEST_CASE("practice selects lamps, plug and safety link")
{
    const auto american = move(usualRig(RigKind::TravelTrailer, Practice::NorthAmerica));
    CHECK(asksFor(american, "seven-way-plug"));
    CHECK(asksFor(american, "side-markers"));
    CHECK(asksFor(american, "chains-run"));
    CHECK(asksFor(american, "breakaway-lanyard"));
    CHECK_FALSE(asksFor(american, "lamps-outside-north-america"));
    CHECK_FALSE(asksFor(american, "breakaway-cable"));
    const auto european = move(usualRig(RigKind::TravelTrailer, Practice::Europe));
    CHECK(asksFor(european, "thirteen-pin-plug"));
    CHECK(asksFor(european, "lamps-outside-north-america"));
    CHECK(asksFor(european, "breakaway-cable"));
    CHECK(asksFor(european, "overrun-parking-brake"));
    CHECK_FALSE(asksFor(european, "seven-way-plug"));
    CHECK_FALSE(asksFor(european, "breakaway-lanyard"));
    const auto southern = move(usualRig(RigKind::TravelTrailer, Practice::AustraliaNewZealand));
    CHECK(asksFor(southern, "thirteen-pin-plug"));
    CHECK(asksFor(southern, "chains-run"));
    CHECK(asksFor(southern, "lamps-outside-north-america"));
}

TEST_CASE("buying: everything, the papers of gas and mains with it, the damp map first and once more last")
{
    for (const NamedRig &named : fiveRigs()) {
        CAPTURE(named.file);
        const auto tape = tapeFor(realCatalogue(), named.rig, "buying", {}, {}).value();
        CHECK(tape.front().points == std::vector<std::string>{"moisture-map"});
        CHECK(tape.back().points == std::vector<std::string>{againSlug("moisture-map")});
        CHECK(tape.size() == pointsFor(realCatalogue(), named.rig).size() + 1);
        CHECK(asksFor(tape, "papers-and-dates"));
        CHECK(asksFor(tape, "mains-certificate"));
        CHECK(asksFor(tape, "gas-certificate") == (allFittings(named.rig).count("lp_gas") > 0));
        CHECK(asksFor(tape, "tire-age"));
        CHECK(asksFor(tape, "floor-soft-spots"));
    }
    const Point *again = realCatalogue().find("moisture-map-again");
    REQUIRE(again != nullptr);
    CHECK(again->readings.size() == realCatalogue().find("moisture-map")->readings.size());
    CHECK(realTexts().point("moisture-map-again").title != realTexts().point("moisture-map").title);
    CHECK(realTexts().point("moisture-map-again").look == realTexts().point("moisture-map").look);
    CHECK(realTexts().grade("moisture-map-again", 5) == realTexts().grade("moisture-map", 5));
}

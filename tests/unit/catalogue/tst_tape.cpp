// SPDX-License-Identifier: Apache-2.0
// Which points a rig has and the tape that a walk of it gets.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "base/units.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::vector<TapeLine> tape(const Rig &rig, const std::string &kind, const std::vector<std::string> &sets = {},
                           const std::vector<std::string> &points = {})
{
    return tapeFor(realCatalogue(), rig, kind, sets, points).value();
}

std::map<std::string, int> countPoints(const std::vector<TapeLine> &lines)
{
    std::map<std::string, int> counts;
    for (const TapeLine &line : lines) {
        for (const std::string &point : line.points)
            ++counts[point];
    }
    return counts;
}

bool eachOnce(const std::vector<TapeLine> &lines)
{
    const auto counts = countPoints(lines);
    return std::all_of(counts.begin(), counts.end(), [](const auto &c) { return c.second == 1; });
}

} // namespace

TEST_CASE("a point is for the kinds, habits and fittings it names")
{
    Point point;
    const Rig rig = tandem();
    CHECK(applies(point, rig)); // empty lists mean any
    point.applies.kinds = {"van"};
    CHECK_FALSE(applies(point, rig));
    point.applies.kinds = {"van", "travel_trailer"};
    CHECK(applies(point, rig));
    point.applies.practices = {"europe"};
    CHECK_FALSE(applies(point, rig));
    point.applies.practices = {"north_america"};
    point.applies.needs = {"lp_gas", "multi_axle"}; // the second follows from the axles
    CHECK(applies(point, rig));
    point.applies.needs.emplace_back("slide_out");
    CHECK_FALSE(applies(point, rig));
    point.applies.needs.pop_back();
    point.applies.without = {"awning"};
    CHECK_FALSE(applies(point, rig));
}

TEST_CASE("every move of a plain North American tandem: at most 14 lines, closing with the lap")
{
    const auto lines = tape(tandem(), "before_road");
    CHECK(lines.size() <= 14);
    CHECK(lines.size() >= 10);
    CHECK(lines.back().slug == "pull-away-lap");
    CHECK(eachOnce(lines));
    for (const auto &[slug, count] : countPoints(lines))
        CHECK(applies(*realCatalogue().find(slug), tandem()));
}

TEST_CASE("no rig has more than 16 lines on every move")
{
    for (int kind = 0; kind <= static_cast<int>(RigKind::Van); ++kind) {
        for (int practice = 0; practice <= static_cast<int>(Practice::Other); ++practice) {
            Rig rig = tandem();
            rig.kind = static_cast<RigKind>(kind);
            rig.practice = static_cast<Practice>(practice);
            rig.fittings = {knownFittings().begin(), knownFittings().end()};
            CHECK(tape(rig, "before_road").size() <= 16);
        }
    }
}

TEST_CASE("a full round has every point of the rig once, one a line, stand after stand")
{
    for (const Rig &rig : {tandem(), southernTwinAxle(), bareRig()}) {
        const auto lines = tape(rig, "full_round");
        auto wanted = pointsFor(realCatalogue(), rig);
        std::vector<std::string> got;
        std::vector<std::string> stands;
        for (const TapeLine &line : lines) {
            REQUIRE(line.points.size() == 1);
            CHECK(line.slug == line.points.front());
            got.push_back(line.slug);
            const std::string stand = standOf(realCatalogue(), line);
            if (stands.empty() || stands.back() != stand)
                stands.push_back(stand);
        }
        std::sort(got.begin(), got.end());
        std::sort(wanted.begin(), wanted.end());
        CHECK(got == wanted);
        // nobody comes back to a stand: the order of stands is the route's, some left out
        auto at = realCatalogue().route("lap").begin();
        for (const std::string &stand : stands) {
            at = std::find(at, realCatalogue().route("lap").end(), stand);
            REQUIRE(at != realCatalogue().route("lap").end());
        }
    }
}

TEST_CASE("what an occasion adds comes once, before the lap that closes the walk")
{
    const auto plain = countPoints(tape(tandem(), "before_road"));
    const auto lines =
        tape(tandem(), "before_road", {"first_of_day", "first_of_trip"}, {"tire-pressure", "chains-run"});
    const auto counts = countPoints(lines);
    CHECK(counts.size() > plain.size());
    CHECK(counts.count("tire-pressure") == 1);
    CHECK(eachOnce(lines));
    CHECK(lines.back().slug == "pull-away-lap");
}

TEST_CASE("an extra point that the rig lacks is left out")
{
    const auto lines = tape(tandem(), "before_road", {}, {"thirteen-pin-plug"});
    CHECK(countPoints(lines).count("thirteen-pin-plug") == 0);
}

TEST_CASE("a name nobody knows is refused, with the names there are")
{
    const auto kind = tapeFor(realCatalogue(), tandem(), "sideways", {}, {});
    REQUIRE_FALSE(kind);
    CHECK(kind.error().code == Errc::NotFound);
    for (const WalkKind &known : realCatalogue().kinds())
        CHECK(kind.error().act.find(known.slug) != std::string::npos);
    const auto set = tapeFor(realCatalogue(), tandem(), "before_road", {"first_of_dya"}, {});
    REQUIRE_FALSE(set); // a line too few, and nobody told, would be worse
    CHECK(set.error().code == Errc::NotFound);
    CHECK(set.error().act.find("first_of_day") != std::string::npos);
    const auto point = tapeFor(realCatalogue(), tandem(), "before_road", {}, {"tire-presure"});
    REQUIRE_FALSE(point);
    CHECK(point.error().code == Errc::NotFound);
}

TEST_CASE("places that a repeated point stands for")
{
    const Rig rig = tandem();
    CHECK(placesOf(*realCatalogue().find("tire-pressure"), rig) == wheelNames(rig));
    Point point;
    CHECK(placesOf(point, rig).empty());
    point.repeat = "door";
    CHECK(placesOf(point, rig) == std::vector<std::string>{"door"});
    point.repeat = "vent";
    CHECK(placesOf(point, rig) == std::vector<std::string>{"vent 1"});
    Rig more = rig;
    more.openings.push_back(more.openings.front());
    more.openings.back().name = "window 1";
    more.openings.back().kind = OpeningKind::Window;
    more.openings.push_back(more.openings.front());
    more.openings.back().name = "locker 1";
    more.openings.back().kind = OpeningKind::Hatch;
    point.repeat = "window";
    CHECK(placesOf(point, more) == std::vector<std::string>{"window 1"});
    point.repeat = "hatch";
    CHECK(placesOf(point, more) == std::vector<std::string>{"locker 1"});
    point.repeat = "door";
    CHECK(placesOf(point, more) == std::vector<std::string>{"door"});
    point.repeat = "lock"; // locks and hinges are of doors and baggage doors alike
    CHECK(placesOf(point, more) == std::vector<std::string>{"door", "locker 1"});
}

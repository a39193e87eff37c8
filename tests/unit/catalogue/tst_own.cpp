// SPDX-License-Identifier: Apache-2.0
// An owner's points laid over the product's catalogue.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/units.hpp"
#include "catalogue/own_value.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

OwnPoint stepLight()
{
    OwnPoint point;
    point.title = "Step light";
    point.slug = ownSlug(point.title);
    point.stand = "kerb-front";
    point.zone = "inside";
    point.consequence = {"C"};
    point.interval.months = 3;
    return point;
}

bool isOn(const std::vector<TapeLine> &tape, const std::string &point)
{
    return std::any_of(tape.begin(), tape.end(), [&](const TapeLine &line) {
        return std::find(line.points.begin(), line.points.end(), point) != line.points.end();
    });
}

CivilDate day() { return parseDate("2026-11-24").value(); }

} // namespace

TEST_CASE("a slug from a title, apart from every slug of the catalogue")
{
    CHECK(ownSlug("Step light") == "own-step-light");
    CHECK(ownSlug("  Pump, 12 V!  ") == "own-pump-12-v");
    CHECK(ownSlug("\xD0\xA1\xD0\xB2\xD0\xB5\xD1\x82") == "own-point");
    for (const Point &point : realCatalogue().points())
        CHECK_FALSE(point.slug.starts_with("own-"));
}

TEST_CASE("an own point joins walks, sets and words, with the cautions of its stand")
{
    OwnPoint own = stepLight();
    own.stand = "roof";
    own.interval.uses = {"every_move", "hail"};
    own.readings = {{"Glow", {"own-glow", Dimension::Voltage, "V", 11.0, 15.0, "common_practice", "CP"}}};
    REQUIRE(checkOwnPoint(realCatalogue(), own));
    const OwnChoices choices{{own}, {}, {}};
    const Catalogue mine = realCatalogue().withOwn(choices);
    const Point *point = mine.find("own-step-light");
    REQUIRE(point != nullptr);
    CHECK(point->own);
    CHECK(point->cautions == std::vector<std::string>{"a"});
    CHECK(point->defects.size() == 16);
    CHECK(mine.points().size() == realCatalogue().points().size() + 1);
    CHECK(realCatalogue().find("own-step-light") == nullptr);
    const auto move = tapeFor(mine, tandem(), "before_road", {}, {}).value();
    CHECK(isOn(move, "own-step-light"));
    CHECK(move.back().slug == "pull-away-lap");
    CHECK(isOn(tapeFor(mine, tandem(), "full_round", {}, {}).value(), "own-step-light"));
    CHECK(mine.events().at("hail").back() == "own-step-light");
    const Texts words = realTexts("es").withOwn(choices);
    CHECK(words.point("own-step-light").title == "Step light");
    CHECK(words.point("own-step-light").look != "own-step-light");
    CHECK(words.grade("own-step-light", 3) != "3");
    CHECK(words.word("readings", "own-glow") == "Glow");
    CHECK(words.point("tread-depth").title == realTexts("es").point("tread-depth").title);
}

TEST_CASE("cautions of a place to stand and of a zone")
{
    const auto has = [](const char *stand, const char *zone, const char *code) {
        const auto cautions = cautionsAt(stand, zone);
        return std::find(cautions.begin(), cautions.end(), code) != cautions.end();
    };
    CHECK(has("roof", "roof", "a"));
    CHECK(has("underneath", "underbody", "b"));
    CHECK(has("inside", "gas", "c"));
    CHECK(has("inside", "lights-and-electrics", "e"));
    CHECK(has("nose", "hitch", "h"));
    CHECK(has("road-wheels", "brakes", "l"));
    CHECK(cautionsAt("inside", "inside").empty());
}

TEST_CASE("what cannot be walked is refused, with the field")
{
    const auto where = [](OwnPoint point) {
        const Status status = checkOwnPoint(realCatalogue(), point);
        return status ? std::string("taken") : status.error().where;
    };
    CHECK(where(stepLight()) == "taken");
    OwnPoint point = stepLight();
    point.title = " ";
    CHECK(where(point) == "title");
    point.title = std::string(61, 'x');
    CHECK(where(point) == "title");
    point = stepLight();
    point.stand = "moon";
    CHECK(where(point) == "stand");
    point = stepLight();
    point.zone = "moon";
    CHECK(where(point) == "zone");
    point = stepLight();
    point.consequence = {"Q"};
    CHECK(where(point) == "consequence");
    point = stepLight();
    point.interval.uses = {"full_moon"};
    CHECK(where(point) == "uses");
    point = stepLight();
    point.interval.months.reset();
    CHECK(where(point) == "interval");
    point.interval.months = 0;
    CHECK(where(point) == "own-step-light");
    const Catalogue mine = realCatalogue().withOwn({{stepLight()}, {}, {}});
    CHECK(checkOwnPoint(mine, stepLight()).error().code == Errc::Conflict);
}

TEST_CASE("a hidden point drops out; one of the road, of fire or of the hold list stays in sight")
{
    const OwnChoices choices{{},
                             {{"tread-depth", "A. Rata", day(), "gauge lost"},
                              {"roof-chalk", "A. Rata", day(), {}},
                              {"motor-mover", "A. Rata", day(), {}}, // not on this rig
                              {"no-such-point", "A. Rata", day(), {}}},
                             {}};
    const Catalogue mine = realCatalogue().withOwn(choices);
    const Rig rig = tandem();
    for (const char *slug : {"tread-depth", "roof-chalk"}) {
        CHECK(isOnRig(*mine.find(slug), rig));
        CHECK_FALSE(applies(*mine.find(slug), rig));
        CHECK_FALSE(isOn(tapeFor(mine, rig, "full_round", {}, {}).value(), slug));
    }
    CHECK(pointsFor(mine, rig).size() == pointsFor(realCatalogue(), rig).size() - 2);
    const auto hidden = hiddenInSight(mine, rig);
    REQUIRE(hidden.size() == 1);
    CHECK(hidden.front()->slug == "tread-depth");
    CHECK(hidden.front()->hidden->by == "A. Rata");
    CHECK(hiddenInSight(realCatalogue(), rig).empty());
}

TEST_CASE("shortening is always taken; lengthening is refused for road, fire, hold list and published limits")
{
    for (const Point &point : realCatalogue().points()) {
        if (!point.interval.months || *point.interval.months < 2)
            continue;
        CAPTURE(point.slug);
        const int usual = *point.interval.months;
        CHECK(checkOwnInterval(realCatalogue(), {point.slug, usual - 1, {}, {}, {}}));
        const Status longer = checkOwnInterval(realCatalogue(), {point.slug, usual + 1, {}, {}, {}});
        const bool bound = point.isRoadOrFire() || point.sourceTag == "P" || point.sourceTag == "FM";
        CHECK(longer.has_value() != bound);
        if (!longer)
            CHECK(longer.error().code == Errc::InvalidInput);
        // and what was stored with an earlier catalogue does not lengthen it either
        const Catalogue mine = realCatalogue().withOwn({{}, {}, {{point.slug, usual + 1, {}, {}, {}}}});
        CHECK(mine.find(point.slug)->interval.months == (bound ? usual : usual + 1));
    }
    CHECK(checkOwnInterval(realCatalogue(), {"no-such-point", 1, {}, {}, {}}).error().code == Errc::NotFound);
    CHECK(checkOwnInterval(realCatalogue(), {"roof-chalk", 0, {}, {}, {}}).error().code == Errc::OutOfRange);
    CHECK(checkOwnInterval(realCatalogue(), {"roof-chalk", {}, kilometres(-1), {}, {}}).error().code ==
          Errc::OutOfRange);
    CHECK_FALSE(checkOwnInterval(realCatalogue(), {"roof-chalk", {}, {}, {}, {}}));
}

TEST_CASE("a limit that the catalogue has not shortens; the other limit stays")
{
    const Catalogue mine = realCatalogue().withOwn({{}, {}, {{"tread-depth", {}, kilometres(2000), {}, {}}}});
    CHECK(mine.find("tread-depth")->interval.distance == kilometres(2000));
    CHECK(mine.find("tread-depth")->interval.months == realCatalogue().find("tread-depth")->interval.months);
}

TEST_CASE("values there and back")
{
    OwnPoint own = stepLight();
    own.look = "Press the switch.";
    own.interval.distance = kilometres(5000);
    own.interval.uses = {"hail"};
    own.readings = {{"Glow", {"own-glow", Dimension::Voltage, "V", 11.0, {}, "common_practice", ""}}};
    own.minutes = 1.5;
    own.by = "A. Rata";
    own.date = day();
    const OwnPoint back = ownPointFromValue(toValue(own));
    CHECK(toValue(back) == toValue(own));
    CHECK(back.readings.front().spec.lowSi == 11.0);
    const HiddenPoint hidden{"tread-depth", "A. Rata", day(), "why"};
    CHECK(toValue(hiddenPointFromValue(toValue(hidden))) == toValue(hidden));
    const OwnInterval every{"tread-depth", 2, kilometres(100), "A. Rata", day()};
    CHECK(toValue(ownIntervalFromValue(toValue(every))) == toValue(every));
    CHECK(ownIntervalFromValue(Value()).months == std::nullopt);
    CHECK(ownPointFromValue(Value("text")).slug.empty());
}

// SPDX-License-Identifier: Apache-2.0
// Everything of a walk goes through its value and back.
#include <doctest/doctest.h>

#include "keys/hash.hpp"
#include "support/book.hpp"
#include "walk/walk_value.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Id one = derivedId("test", "id", "1");
const Id two = derivedId("test", "id", "2");
const LocalTime when = timeAt("2026-11-24T21:10:00.250+13:00");
const GeoPoint where{-44.262, 170.105, 351.5, metres(4.5)};

Value stored(const Value &value) { return decodeCbor(encodeCbor(value)).value(); }

} // namespace

TEST_CASE("nothing is lost")
{
    const Reading reading{"cold-pressure", "wheel 1L", Dimension::Pressure, 344737.9, "kPa"};
    const Mark mark{Id{},
                    one,
                    "tire-pressure",
                    MarkState::CouldNotLook,
                    LookedHow::Measured,
                    "too_dark",
                    "note",
                    {reading},
                    when,
                    "W. Tester",
                    where};
    CHECK(markFromValue(stored(toValue(mark))) == mark);

    const RigPlace place{"", Face::Underside, RigPosition{metres(4.1), metres(-0.6), metres(0.5)}};
    const Finding finding{Id{}, one, "belly-pan", "loose", place, two, when};
    CHECK(findingFromValue(stored(toValue(finding))) == finding);

    const Extent extent{Dimension::Length, 0.014, "mm"};
    const Look look{Id{}, one, two, when, "W. Tester", 4, extent, "grew", where, {reading}};
    CHECK(lookFromValue(stored(toValue(look))) == look);

    const Mend mend{Id{},        one,        when,
                    "W. Tester", {one, two}, {"hub-heat"},
                    "reseal",    "what",     {{"lap sealant", 2.5, "cartridges"}, {"rivet", 3, ""}},
                    "NZD 12.00", 45.5};
    CHECK(mendFromValue(stored(toValue(mend))) == mend);

    const Stock stock{Id{}, one, "rivets", Dimension::Count, 12.0, "", when, "W. Tester"};
    CHECK(stockFromValue(stored(toValue(stock))) == stock);

    const Photo photo{Id{},         one,   two,  one,       blake2b("p").text(),
                      "image/jpeg", 4000,  3000, 6,         when,
                      "2026:11:24", where, when, "caption", 3};
    CHECK(photoFromValue(stored(toValue(photo))) == photo);

    const Happening happening{Id{}, one, "hail", when, "as peas"};
    CHECK(happeningFromValue(stored(toValue(happening))) == happening);

    const Walk walk{Id{}, one, "before_road", "W. Tester", when, when, where, {{"bc", {"b", "c"}}}};
    const Walk back = walkFromValue(stored(toValue(walk)));
    CHECK(back == walk);
    CHECK(back.tape.at(0).points == walk.tape.at(0).points);
}

TEST_CASE("parts as an older version wrote them, text alone, are one piece each")
{
    const Value old =
        Value::Map{{"action", "replace"}, {"parts", Value::List{"4.8 mm rivet", "butyl tape, 2 rolls"}}};
    const Mend mend = mendFromValue(stored(old));
    CHECK(mend.parts == std::vector<MendPart>{{"4.8 mm rivet", 1.0, ""}, {"butyl tape, 2 rolls", 1.0, ""}});
}

TEST_CASE("what a newer version wrote is shown as needing a person, never as a pass")
{
    CHECK(markFromValue(Value::Map{{"state", "sniffed"}}).state == MarkState::Attention);
    CHECK(markFromValue(Value::Map{}).state == MarkState::NotLooked);
    CHECK(lookFromValue(Value::Map{}).grade == 5);
    CHECK_FALSE(geoFromValue(Value::Map{{"latitude", 91.0}, {"longitude", 0.0}}));
    CHECK_FALSE(geoFromValue(Value("here")));
}

TEST_CASE("a number that no grade and no int can hold is the worst, not cut off")
{
    CHECK(lookFromValue(Value::Map{{"grade", std::int64_t{0x100000001}}}).grade == 5);
    CHECK(lookFromValue(Value::Map{{"grade", -7}}).grade == 5);
}

TEST_CASE("slugs of marks")
{
    for (const MarkState state : {MarkState::NotLooked, MarkState::Pass, MarkState::Attention,
                                  MarkState::NotFitted, MarkState::CouldNotLook})
        CHECK(parseMarkState(slug(state)) == state);
    for (const LookedHow how : {LookedHow::Glance, LookedHow::Looked, LookedHow::Measured})
        CHECK(parseLookedHow(slug(how)) == how);
    CHECK_FALSE(parseMarkState("fine"));
}

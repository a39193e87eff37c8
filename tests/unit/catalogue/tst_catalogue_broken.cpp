// SPDX-License-Identifier: Apache-2.0
// Catalogue files that are damaged are refused with their place, never walked as if they were shorter.
#include <doctest/doctest.h>

#include <functional>

#include "base/value.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// One good point, set and source; a test breaks a member of it.
struct Files {
    Value points = Value::Map{
        {"zone", "roof"},
        {"points", Value::List{Value::Map{
                       {"slug", "vent"},
                       {"stand", "roof"},
                       {"consequence", Value::List{"W"}},
                       {"source", Value::Map{{"tag", "CP"}}},
                       {"defects", Value::List{"crack"}},
                       {"readings",
                        Value::List{Value::Map{{"slug", "gap"}, {"quantity", "length"}, {"unit", "mm"}}}}}}}};
    Value sets = Value::Map{
        {"kinds", Value::List{Value::Map{{"slug", "short"}, {"sets", Value::List{"s"}}, {"route", "lap"}}}},
        {"sets",
         Value::Map{{"s", Value::List{Value::Map{{"line", "vent"}, {"points", Value::List{"vent"}}}}}}},
        {"routes", Value::Map{{"lap", Value::List{"roof"}}}},
        {"events", Value::Map{{"hail", Value::List{"vent"}}}}};

    Value &point() { return const_cast<Value &>(points["points"].list().front()); }
    Value &reading() { return const_cast<Value &>(point()["readings"].list().front()); }

    [[nodiscard]] Result<Catalogue> load() const
    {
        return Catalogue::load({toJson(points, false)}, toJson(sets, false), "{}", "{}");
    }
};

// Loads with one change, wants `Corrupt` with a place that holds `where`.
void wantCorrupt(const std::string &where, const std::function<void(Files &)> &change)
{
    CAPTURE(where);
    Files files;
    change(files);
    const std::string points = toJson(files.points, false);
    const std::string sets = toJson(files.sets, false);
    const auto catalogue = Catalogue::load({points}, sets, "{}", "{}");
    REQUIRE_FALSE(catalogue);
    CHECK(catalogue.error().code == Errc::Corrupt);
    CHECK_FALSE(catalogue.error().act.empty());
    const std::string told = catalogue.error().where + " " + catalogue.error().what;
    CAPTURE(told);
    CHECK(told.find(where) != std::string::npos);
}

} // namespace

TEST_CASE("the unbroken files load")
{
    Files files;
    const std::string points = toJson(files.points, false);
    const std::string sets = toJson(files.sets, false);
    CHECK(Catalogue::load({points}, sets, "{}", "{}"));
}

TEST_CASE("a point with a member missing is named")
{
    wantCorrupt("roof/", [](Files &f) { f.point().member("slug") = ""; });
    wantCorrupt("roof/vent", [](Files &f) { f.point().member("stand") = Value(); });
    wantCorrupt("roof/vent", [](Files &f) { f.point().member("consequence") = Value::List{}; });
    wantCorrupt("roof/vent", [](Files &f) { f.point().member("source") = Value(); });
    wantCorrupt("roof/vent", [](Files &f) { f.reading().member("slug") = ""; });
    wantCorrupt("weight-of-the-moon",
                [](Files &f) { f.reading().member("quantity") = "weight-of-the-moon"; });
    wantCorrupt("furlong", [](Files &f) { f.reading().member("unit") = "furlong"; });
}

TEST_CASE("a slug used twice")
{
    wantCorrupt("roof/vent", [](Files &f) { f.points.member("points") = Value::List{f.point(), f.point()}; });
}

TEST_CASE("files that hold no points, kinds or routes are no catalogue")
{
    wantCorrupt("points", [](Files &f) { f.points = Value::Map{}; });
    wantCorrupt("zone", [](Files &f) { f.points.member("zone") = Value(); });
    wantCorrupt("kinds", [](Files &f) { f.sets = Value::Map{}; });
    wantCorrupt("lap", [](Files &f) { f.sets.member("routes") = Value::Map{}; });
    CHECK_FALSE(Catalogue::load({}, toJson(Files().sets, false), "{}", "{}"));
}

TEST_CASE("sets and events that name points nobody has would be walked without them")
{
    wantCorrupt("skylark", [](Files &f) {
        f.sets.member("sets").member("s") =
            Value::List{Value::Map{{"line", "l"}, {"points", Value::List{"skylark"}}}};
    });
    wantCorrupt("skylark", [](Files &f) { f.sets.member("events").member("hail") = Value::List{"skylark"}; });
    wantCorrupt("s2", [](Files &f) {
        f.sets.member("kinds") =
            Value::List{Value::Map{{"slug", "short"}, {"sets", Value::List{"s2"}}, {"route", "lap"}}};
    });
}

TEST_CASE("text that is no JSON: which file and where in it")
{
    const CatalogueBytes &real = realCatalogueBytes();
    CatalogueBytes cut = real;
    cut.points.at(2).resize(cut.points.at(2).size() / 2);
    const Error points = cut.load().error();
    CHECK(points.code == Errc::Corrupt);
    CHECK(points.where.find("point file 3") != std::string::npos);
    CHECK(points.where.find("line") != std::string::npos);
    cut = real;
    cut.sets = "{\"kinds\": [";
    CHECK(cut.load().error().where.find("sets") != std::string::npos);
    cut = real;
    cut.sources = "\x01garbage";
    CHECK(cut.load().error().where.find("sources") != std::string::npos);
}

// SPDX-License-Identifier: Apache-2.0
// where: the nearest named place of a finding, a stay, a trip's ends, or of coordinates.
#include "cli/commands.hpp"
#include "cli/weather_options.hpp"
#include "map/compass.hpp"
#include "report/near_words.hpp"
#include "round/history.hpp"
#include "round/where_seen.hpp"

namespace snugwalk::cli {
namespace {

struct WhereOptions {
    std::vector<std::string> what;
    std::string place = "exact";
};

struct Wanted {
    std::string what; ///< finding, stay, start, end, place
    std::optional<GeoPoint> place;
};

Error unknownThing(const std::string &text)
{
    return Error{
        Errc::NotFound, "no finding, trip or stay of this rig has this id", text,
        "see 'snugwalk finding list --all' and 'snugwalk trip list', or give latitude and longitude"};
}

Result<std::vector<Wanted>> ofThing(Session &session, const std::string &text)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<RigHistory> history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    std::vector<Wanted> wanted;
    int things = 0;
    const auto isMeant = [&](const Id &id) {
        const bool meant = id.text() == text || id.shortText() == text;
        things += meant ? 1 : 0;
        return meant;
    };
    for (const FindingHistory &finding : history->findings) {
        if (isMeant(finding.finding.id))
            wanted.push_back({"finding", whereSeen(*history, finding)});
    }
    for (const Stay &stay : history->stays) {
        if (isMeant(stay.id))
            wanted.push_back({"stay", stay.place});
    }
    for (const Trip &trip : history->trips) {
        if (!isMeant(trip.id))
            continue;
        const bool hasLine = !trip.outline.empty();
        wanted.push_back({"start", hasLine ? std::optional(trip.outline.front()) : std::nullopt});
        wanted.push_back({"end", hasLine ? std::optional(trip.outline.back()) : std::nullopt});
    }
    if (things == 0)
        return unknownThing(text);
    if (things > 1)
        return Error{Errc::Conflict, "several things have an id that begins so", text, "give the whole id"};
    return wanted;
}

Result<std::vector<Wanted>> wantedOf(Session &session, const std::vector<std::string> &what)
{
    if (what.size() == 1)
        return ofThing(session, what.front());
    if (what.size() != 2)
        return Error{Errc::Usage, "a place has two numbers", what.empty() ? "" : what.back(),
                     "write latitude and longitude, such as -44.26 170.10"};
    const auto place = placeOf(what[0], what[1]);
    if (!place)
        return place.error();
    return std::vector<Wanted>{{"place", *place}};
}

Value json(const Wanted &one, const std::optional<NearPlace> &near, const std::string &words)
{
    Value::Map value{{"what", one.what}, {"near", Value()}, {"words", Value()}};
    if (!near)
        return value;
    value["words"] = words;
    value["near"] = Value::Map{
        {"name", near->named.name},
        {"country", near->named.country},
        {"distance", Value::Map{{"value", near->distance.si()}, {"unit", siSymbol(Dimension::Distance)}}},
        {"bearing", near->bearing},
        {"direction", std::string(compassPoint(near->bearing))},
        {"latitude", near->named.place.latitude},
        {"longitude", near->named.place.longitude}};
    return value;
}

Result<Answer> where(Session &session, const WhereOptions &o)
{
    const auto detail = parsePlaceDetail(o.place);
    const Gazetteer *places = session.world().placesOrNull();
    if (places == nullptr) {
        for (const Error &fault : session.worldFaults()) {
            if (fault.where.find("places.bin") != std::string::npos)
                return fault;
        }
        return Error{Errc::NotFound, "there are no named places here", "places.bin",
                     "install this version's data files again"};
    }
    const auto wanted = wantedOf(session, o.what);
    if (!wanted)
        return wanted.error();
    Value::List list;
    std::string text;
    for (const Wanted &one : *wanted) {
        const auto near = nearToTell(places, one.place, *detail);
        const std::string words = nearWords(near, *detail, session.texts(), session.units());
        list.emplace_back(json(one, near, words));
        text += (wanted->size() > 1 ? one.what + ": " : "") +
                (near ? words : std::string("no place was kept")) + "\n";
    }
    return Answer{Value::Map{{"where", list}, {"place_detail", o.place}}, text};
}

} // namespace

void addWhereCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub =
        app.add_subcommand("where", "nearest named place of a finding, a trip, a stay or of coordinates");
    auto o = std::make_shared<WhereOptions>();
    sub->add_option("what", o->what, "an id, whole or its first eight digits; or latitude and longitude")
        ->required();
    sub->add_option("--place", o->place, "exact or coarse: as much of it as a report would tell")
        ->check(CLI::IsMember({"exact", "coarse"}));
    registry.add(*sub, "  snugwalk where 8d3f21c0\n  snugwalk where -44.26 170.10 --json",
                 [o](Session &s) { return where(s, *o); });
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// trip import, list, stay.
#include <algorithm>
#include <filesystem>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/input_stream.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "trip/make_trip.hpp"
#include "trip/trip_value.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

struct ImportOptions {
    std::vector<std::string> files;
    std::string road = "unknown";
    std::string title;
    std::string note;
};

struct StayOptions {
    std::string from, to, name;
    bool covered = false;
};

Value tripJson(const Trip &trip)
{
    Value value = toValue(trip);
    value.member("id") = trip.id.text();
    return value;
}

std::string tripLine(const Trip &trip, UnitSystem units)
{
    return trip.id.shortText() + "  " + formatLocalShort(trip.start) + "  " +
           padded(format(trip.summary.length, units), 10) + padded(std::string(roadClassName(trip.road)), 9) +
           trip.title + "\n";
}

std::string dropWords(const Trip &trip)
{
    std::string out;
    for (const Drop &drop : trip.summary.drops)
        out += "  left out: " + std::to_string(drop.count) + " (" + replaceAll(drop.reason, "_", " ") +
               ", first at " + drop.firstWhere + ")\n";
    if (trip.summary.gaps > 0)
        out += "  gaps bridged by a straight line: " + std::to_string(trip.summary.gaps) + "\n";
    return out;
}

Result<Trip> readTrip(const std::string &file, const ImportOptions &o, const Rig &rig, ZoneOffset offset)
{
    const Result<std::string> bytes = readFile(file, std::size_t{64} << 20);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return inFile(track.error(), file);
    const auto road = findRoadClass(o.road);
    const std::string name = std::filesystem::path(file).filename().string();
    Result<Trip> trip = makeTrip(*track, {o.title, road.value_or(RoadClass::Unknown), name, o.note, offset});
    if (trip)
        trip->rig = rig.id;
    return trip;
}

Result<Answer> import(Session &session, const ImportOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    const Result<LocalTime> now = session.now();
    if (!rig || !doer || !now)
        return !rig ? rig.error() : !doer ? doer.error() : now.error();
    Value::List json;
    std::string text;
    for (const std::string &file : o.files) {
        Result<Trip> trip = readTrip(file, o, *rig, now->offset);
        if (!trip)
            return trip.error();
        const Result<Id> id = addTrip(**session.book(), *trip, *doer);
        if (!id)
            return inFile(id.error(), file);
        trip->id = *id;
        json.push_back(tripJson(*trip));
        text += tripLine(*trip, session.units()) + dropWords(*trip);
    }
    return Answer{Value::Map{{"trips", json}}, text};
}

Result<Answer> list(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const auto trips = tripsOf(**session.book(), rig->id);
    const auto stays = staysOf(**session.book(), rig->id);
    if (!trips || !stays)
        return trips ? stays.error() : trips.error();
    Value::List json;
    Value::List stayJson;
    std::string text;
    Distance whole;
    for (const Trip &trip : *trips) {
        json.push_back(tripJson(trip));
        text += tripLine(trip, session.units());
        whole = whole + trip.summary.length;
    }
    for (const Stay &stay : *stays) {
        Value one = toValue(stay);
        one.member("id") = stay.id.text();
        stayJson.push_back(one);
        text += stay.id.shortText() + "  " + formatLocalShort(stay.from) + "  stay " + stay.name +
                (stay.covered ? ", covered" : "") + "\n";
    }
    text += trips->empty() ? "no trip yet\n" : "together " + format(whole, session.units()) + "\n";
    return Answer{Value::Map{{"trips", json}, {"stays", stayJson}}, text};
}

Result<Answer> stay(Session &session, const StayOptions &o)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    const auto from = parseLocal(o.from);
    const auto to = parseLocal(o.to);
    if (!from || (!to && !o.to.empty()))
        return Error{Errc::Usage, "not a time", from ? "--to" : "--from",
                     "write it as 2026-11-24T08:10:00+13:00"};
    if (!doer->where)
        return Error{Errc::Usage, "a stay without its place", "--where",
                     "give --where \"latitude, longitude\""};
    const Stay stay{Id{}, rig->id, *from, to, *doer->where, o.covered, o.name};
    const Result<Id> id = addStay(**session.book(), stay, *doer);
    if (!id)
        return id.error();
    Value json = toValue(stay);
    json.member("id") = id->text();
    return Answer{json, "stay " + id->shortText() + " written\n"};
}

} // namespace

void addTripCommands(CLI::App &app, Registry &registry)
{
    CLI::App *trip = app.add_subcommand("trip", "journeys, and where the rig stood");
    trip->require_subcommand(1);
    auto o = std::make_shared<ImportOptions>();
    CLI::App *importing = trip->add_subcommand("import", "read a GPX 1.1 track or an NMEA 0183 log");
    importing->add_option("files", o->files, "track files")->required();
    importing->add_option("--road", o->road, "what the road was")
        ->check(CLI::IsMember({"unknown", "smooth", "broken", "gravel", "washboard", "track"}));
    importing->add_option("--title", o->title, "a name (default: the track's own)");
    importing->add_option("--note", o->note, "in your words");
    registry.add(*importing,
                 "  snugwalk trip import monday.gpx --road gravel\n  snugwalk trip import receiver.nmea",
                 [o](Session &s) { return import(s, *o); });
    registry.add(*trip->add_subcommand("list", "all trips and stays"), "  snugwalk trip list --units us",
                 [](Session &s) { return list(s); });
    auto at = std::make_shared<StayOptions>();
    CLI::App *staying = trip->add_subcommand("stay", "the rig stood somewhere; the place is --where");
    staying->add_option("--from", at->from, "from when")->required();
    staying->add_option("--to", at->to, "until when (left out: still there)");
    staying->add_option("--name", at->name, "what you call the place");
    staying->add_flag("--covered", at->covered, "under a roof or cover");
    registry.add(*staying,
                 "  snugwalk --where \"-44.27, 170.10\" trip stay --from 2026-05-01T12:00:00+12:00 --name "
                 "yard --covered",
                 [at](Session &s) { return stay(s, *at); });
    addTripRoadCommands(*trip, registry);
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// trip road, trip shake.
#include <algorithm>

#include "base/text.hpp"
#include "cli/road_answers.hpp"
#include "logbook/query.hpp"
#include "road/accel/log_of_trip.hpp"
#include "road/shake.hpp"
#include "trip/trip_value.hpp"

namespace snugwalk::cli {
namespace {

struct TripRoadOptions {
    std::string trip, road;
};

struct TripShakeOptions {
    std::string trip;
    std::vector<std::string> files;
    SensorOptions sensor;
};

struct TripsNow {
    std::vector<Trip> all;
    std::size_t at = 0;
};

Result<TripsNow> findTrip(Session &session, const std::string &typed)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<Id> id = idOf(**session.book(), "trip", typed);
    if (!id)
        return id.error();
    auto trips = tripsOf(**session.book(), rig->id);
    if (!trips)
        return trips.error();
    const auto found = std::find_if(trips->begin(), trips->end(), [&](const Trip &t) { return t.id == *id; });
    if (found == trips->end())
        return Error{Errc::NotFound, "no such trip of this rig", typed, "see `snugwalk trip list`"};
    const auto at = static_cast<std::size_t>(found - trips->begin());
    return TripsNow{std::move(trips).value(), at};
}

Value metresOf(Distance d) { return Value::Map{{"value", d.si()}, {"unit", "m"}}; }

Value shakeValue(const TripShake &s)
{
    return Value::Map{
        {"driven", metresOf(s.driven)},
        {"equivalent", metresOf(s.equivalent)},
        {"low", metresOf(s.low)},
        {"high", metresOf(s.high)},
        {"consumption",
         Value::Map{{"value", s.consumption}, {"low", s.consumptionLow}, {"high", s.consumptionHigh}}},
        {"basis", s.basis},
        {"source", "SAYERS-1986, MINER-1945, common practice"}};
}

std::string shakeText(const TripShake &s, UnitSystem units)
{
    return "shook the rig like " + format(s.equivalent, units) + " of smooth road (" + format(s.low, units) +
           " to " + format(s.high, units) + ") on " + format(s.driven, units) +
           "; basis: " + replaceAll(s.basis, "_", " ") + "\n";
}

Result<Answer> answerOf(Session &session, const TripsNow &trips)
{
    const Trip &trip = trips.all[trips.at];
    const TripShake shake = shakeOf(trip, roadHabitOf(trips.all));
    Value json = toValue(trip);
    json.member("id") = trip.id.text();
    json.member("shake") = shakeValue(shake);
    return Answer{json, shakeText(shake, session.units())};
}

Result<Answer> tagRoad(Session &session, const TripRoadOptions &o)
{
    Result<TripsNow> trips = findTrip(session, o.trip);
    const Result<Doer> doer = session.doer();
    if (!trips || !doer)
        return trips ? doer.error() : trips.error();
    Trip &trip = trips->all[trips->at];
    trip.road = findRoadClass(o.road).value_or(RoadClass::Unknown);
    SNUG_TRY(changeTrip(**session.book(), trip, *doer));
    return answerOf(session, *trips);
}

Result<Answer> shake(Session &session, const TripShakeOptions &o)
{
    Result<TripsNow> trips = findTrip(session, o.trip);
    const Result<Doer> doer = session.doer();
    if (!trips || !doer)
        return trips ? doer.error() : trips.error();
    Trip &trip = trips->all[trips->at];
    const auto seconds = [](Instant at) { return static_cast<double>(toMillis(at)) * 1e-3; };
    const auto log = roughnessOfLogs(o.files, o.sensor, movingSpeed(trip), seconds(trip.start.instant), {});
    if (!log)
        return log.error();
    SNUG_TRY(checkLogTime(trip, log->from, log->to));
    const auto measured = measureOf(log->result, log->options);
    if (!measured)
        return Error{Errc::InvalidInput, "no speed is known for this log", o.files.front(),
                     "give --track or --speed"};
    trip.measured = measured;
    SNUG_TRY(changeTrip(**session.book(), trip, *doer));
    Result<Answer> answer = answerOf(session, *trips);
    if (answer) {
        answer->json.member("roughness") = roughnessValue(*log);
        answer->text = roughnessText(*log) + answer->text;
    }
    return answer;
}

} // namespace

void addTripRoadCommands(CLI::App &trip, Registry &registry)
{
    auto r = std::make_shared<TripRoadOptions>();
    CLI::App *road = trip.add_subcommand("road", "say afterwards what the road of a trip was");
    road->add_option("trip", r->trip, "id of the trip")->required();
    road->add_option("class", r->road, "unknown, smooth, broken, gravel, washboard or track")
        ->required()
        ->check(CLI::IsMember({"unknown", "smooth", "broken", "gravel", "washboard", "track"}));
    registry.add(*road, "  snugwalk trip road 3f2a gravel", [r](Session &s) { return tagRoad(s, *r); });
    auto o = std::make_shared<TripShakeOptions>();
    CLI::App *shaking = trip.add_subcommand("shake", "measure a trip's road by its accelerometer log");
    shaking->add_option("trip", o->trip, "id of the trip")->required();
    shaking->add_option("files", o->files, "the trip's logs, in the order of their times")->required();
    addSensorOptions(*shaking, o->sensor);
    registry.add(*shaking,
                 "  snugwalk trip shake 3f2a morning.csv evening.csv --track day.gpx --location rig",
                 [o](Session &s) { return shake(s, *o); });
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// Writing and reading trips and stays member by member.
#include "trip/trip_value.hpp"

#include <algorithm>
#include <array>

#include "trip/value_parts.hpp"

namespace snugwalk {
namespace {

using namespace trip_parts;

struct NamedRoad {
    RoadClass road;
    std::string_view name;
};
constexpr std::array roads = {
    NamedRoad{RoadClass::Unknown, "unknown"},     NamedRoad{RoadClass::Smooth, "smooth"},
    NamedRoad{RoadClass::Broken, "broken"},       NamedRoad{RoadClass::Gravel, "gravel"},
    NamedRoad{RoadClass::Washboard, "washboard"}, NamedRoad{RoadClass::Track, "track"},
};

bool isAmount(double number) { return std::isfinite(number) && number >= 0.0; }

Value roughness(double metresPerKilometre)
{
    return Value::Map{{"value", metresPerKilometre}, {"unit", "m/km"}};
}

std::string text(const Value &value) { return value.asString().value_or(""); }

Value dropValue(const Drop &drop)
{
    return Value::Map{{"reason", drop.reason}, {"count", drop.count}, {"first_where", drop.firstWhere}};
}

Drop readDrop(const Value &value)
{
    return {text(value["reason"]), value["count"].asInt().value_or(0), text(value["first_where"])};
}

Value stopValue(const StopOver &stop)
{
    return Value::Map{
        {"from", formatInstant(stop.from)}, {"to", formatInstant(stop.to)}, {"place", place(stop.place)}};
}

std::optional<StopOver> readStop(const Value &value)
{
    const auto from = readInstant(value["from"]);
    const auto to = readInstant(value["to"]);
    const auto where = readPlace(value["place"]);
    if (!from || !to || !where)
        return std::nullopt;
    return StopOver{*from, *to, *where};
}

Value outlineValue(const std::vector<GeoPoint> &outline)
{
    Value::List points;
    for (const GeoPoint &point : outline) {
        Value::List one{point.latitude, point.longitude};
        if (point.altitude)
            one.emplace_back(*point.altitude);
        points.emplace_back(std::move(one));
    }
    return points;
}

std::vector<GeoPoint> readOutline(const Value &value)
{
    std::vector<GeoPoint> points;
    for (const Value &one : value.list()) {
        const auto &numbers = one.list();
        if (points.size() == outlineLimit)
            break;
        if (numbers.size() < 2 || !numbers[0].asDouble() || !numbers[1].asDouble())
            continue;
        GeoPoint point{*numbers[0].asDouble(), *numbers[1].asDouble(), std::nullopt, std::nullopt};
        if (numbers.size() > 2 && std::isfinite(numbers[2].asDouble().value_or(NAN)))
            point.altitude = numbers[2].asDouble();
        if (isValid(point))
            points.push_back(point);
    }
    return points;
}

Value summaryValue(const TrackSummary &s)
{
    Value out = Value::Map{{"length", quantity(s.length)},
                           {"inferred", quantity(s.inferred)},
                           {"fixes_read", s.fixesRead},
                           {"fixes_kept", s.fixesKept},
                           {"gaps", s.gaps}};
    put(out, "start", s.start, formatInstant);
    put(out, "end", s.end, formatInstant);
    put(out, "first", s.first, place);
    put(out, "last", s.last, place);
    put(out, "ascent", s.ascent, quantity<Length>);
    put(out, "descent", s.descent, quantity<Length>);
    put(out, "lowest", s.lowest, quantity<Length>);
    put(out, "highest", s.highest, quantity<Length>);
    Value::List stops;
    std::transform(s.stops.begin(), s.stops.end(), std::back_inserter(stops), stopValue);
    out.member("stops") = std::move(stops);
    Value::List drops;
    std::transform(s.drops.begin(), s.drops.end(), std::back_inserter(drops), dropValue);
    out.member("drops") = std::move(drops);
    return out;
}

TrackSummary readSummary(const Value &value)
{
    TrackSummary s;
    s.length = readQuantity<Distance>(value["length"]).value_or(Distance{});
    s.inferred = readQuantity<Distance>(value["inferred"]).value_or(Distance{});
    s.start = readInstant(value["start"]);
    s.end = readInstant(value["end"]);
    s.first = readPlace(value["first"]);
    s.last = readPlace(value["last"]);
    s.ascent = readQuantity<Length>(value["ascent"]);
    s.descent = readQuantity<Length>(value["descent"]);
    s.lowest = readQuantity<Length>(value["lowest"]);
    s.highest = readQuantity<Length>(value["highest"]);
    s.fixesRead = value["fixes_read"].asInt().value_or(0);
    s.fixesKept = value["fixes_kept"].asInt().value_or(0);
    s.gaps = static_cast<int>(std::clamp<std::int64_t>(value["gaps"].asInt().value_or(0), 0, 1'000'000'000));
    for (const Value &stop : value["stops"].list()) {
        if (const auto read = readStop(stop))
            s.stops.push_back(*read);
    }
    for (const Value &drop : value["drops"].list())
        s.drops.push_back(readDrop(drop));
    return s;
}

constexpr std::array doseKeys = {"2", "4", "6"}; // by exponent

Value alongValue(const RoadMeasure &m)
{
    Value::List list;
    for (const std::optional<double> &index : m.along)
        list.emplace_back(index);
    return Value::Map{{"step", quantity(m.alongStep)}, {"roughness", std::move(list)}, {"unit", "m/km"}};
}

// A line to look at: where it cannot be true there is none, and the measure stands without it.
void readAlong(const Value &value, RoadMeasure &m)
{
    const Value::List &list = value["roughness"].list();
    const auto step = readQuantity<Distance>(value["step"]);
    if (!step || !(step->si() > 0.0) || list.size() > alongLimit)
        return;
    for (const Value &index : list) {
        const auto read = index.asDouble();
        m.along.push_back(read && isAmount(*read) ? read : std::nullopt);
    }
    m.alongStep = *step;
}

Value measureValue(const RoadMeasure &m)
{
    Value::Map dose;
    for (std::size_t i = 0; i < doseKeys.size(); ++i)
        dose[doseKeys[i]] = m.dose[i];
    return Value::Map{{"analysed", quantity(m.analysed)},
                      {"median_roughness", roughness(m.medianRoughness)},
                      {"p90_roughness", roughness(m.p90)},
                      {"dose", dose},
                      {"consumption", m.consumption},
                      {"sensor_location", m.sensorLocation},
                      {"calibrated", m.calibrated},
                      {"clipped", m.clipped},
                      {"along", m.along.empty() ? Value() : alongValue(m)}};
}

// Nothing unless every figure is there and can be true: half a measure would shake a rig wrongly.
std::optional<RoadMeasure> readMeasure(const Value &value)
{
    const auto analysed = readQuantity<Distance>(value["analysed"]);
    const auto median = value["median_roughness"]["value"].asDouble();
    const auto p90 = value["p90_roughness"]["value"].asDouble();
    RoadMeasure m;
    m.consumption = value["consumption"].asDouble().value_or(1.0);
    bool sound = analysed && median && p90 && analysed->si() > 0.0;
    sound = sound && isAmount(*median) && isAmount(*p90) && isAmount(m.consumption);
    for (std::size_t i = 0; i < doseKeys.size(); ++i) {
        m.dose[i] = value["dose"][doseKeys[i]].asDouble().value_or(NAN);
        sound = sound && isAmount(m.dose[i]);
    }
    if (!sound)
        return std::nullopt;
    m.analysed = *analysed;
    m.medianRoughness = *median;
    m.p90 = *p90;
    m.sensorLocation = value["sensor_location"].asString().value_or("unknown");
    m.calibrated = value["calibrated"].asBool().value_or(false);
    m.clipped = value["clipped"].asBool().value_or(false);
    readAlong(value["along"], m);
    return m;
}

} // namespace

std::string_view roadClassName(RoadClass road)
{
    const auto found =
        std::find_if(roads.begin(), roads.end(), [&](const auto &r) { return r.road == road; });
    SNUG_ASSERT(found != roads.end());
    return found->name;
}

std::optional<RoadClass> findRoadClass(std::string_view name)
{
    const auto found =
        std::find_if(roads.begin(), roads.end(), [&](const auto &r) { return r.name == name; });
    return found == roads.end() ? std::nullopt : std::optional(found->road);
}

Value toValue(const Trip &trip)
{
    Value out = Value::Map{{"rig", trip.rig.text()},
                           {"title", trip.title},
                           {"road", roadClassName(trip.road)},
                           {"start", formatLocal(trip.start)},
                           {"end", formatLocal(trip.end)},
                           {"summary", summaryValue(trip.summary)},
                           {"source_name", trip.sourceName},
                           {"outline", outlineValue(trip.outline)},
                           {"note", trip.note}};
    put(out, "measured", trip.measured, measureValue);
    return out;
}

Trip tripFromValue(const Value &value)
{
    Trip trip;
    trip.rig = Id::parse(text(value["rig"])).value_or(Id{});
    trip.title = text(value["title"]);
    trip.road = findRoadClass(text(value["road"])).value_or(RoadClass::Unknown);
    trip.start = readLocal(value["start"]).value_or(LocalTime{});
    trip.end = readLocal(value["end"]).value_or(LocalTime{});
    trip.summary = readSummary(value["summary"]);
    trip.sourceName = text(value["source_name"]);
    trip.outline = readOutline(value["outline"]);
    trip.note = text(value["note"]);
    trip.measured = readMeasure(value["measured"]);
    return trip;
}

Value toValue(const Stay &stay)
{
    Value out = Value::Map{{"rig", stay.rig.text()},
                           {"from", formatLocal(stay.from)},
                           {"place", place(stay.place)},
                           {"covered", stay.covered},
                           {"name", stay.name}};
    put(out, "to", stay.to, formatLocal);
    return out;
}

Stay stayFromValue(const Value &value)
{
    Stay stay;
    stay.rig = Id::parse(text(value["rig"])).value_or(Id{});
    stay.from = readLocal(value["from"]).value_or(LocalTime{});
    stay.to = readLocal(value["to"]);
    stay.place = readPlace(value["place"]).value_or(GeoPoint{});
    stay.covered = value["covered"].asBool().value_or(false);
    stay.name = text(value["name"]);
    return stay;
}

} // namespace snugwalk

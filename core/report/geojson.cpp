// SPDX-License-Identifier: Apache-2.0
// Features with their geometry, or none.
#include "report/geojson.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "base/value.hpp"
#include "report/shortest.hpp"
#include "round/where_seen.hpp"

namespace snugwalk {
namespace {

using Line = std::vector<GeoPoint>;

double sevenDigits(double degrees) { return std::round(degrees * 1e7) / 1e7; }

std::string position(const GeoPoint &p)
{
    return "[" + shortest(sevenDigits(p.longitude)) + "," + shortest(sevenDigits(p.latitude)) + "]";
}

std::string positions(const Line &line)
{
    std::vector<std::string> out;
    out.reserve(line.size());
    for (const GeoPoint &p : line)
        out.push_back(position(p));
    return "[" + join(out, ",") + "]";
}

std::string geometry(std::string_view type, const std::string &coordinates)
{
    return "{\"type\":\"" + std::string(type) + "\",\"coordinates\":" + coordinates + "}";
}

std::string pointGeometry(const std::optional<GeoPoint> &place)
{
    return place ? geometry("Point", position(*place)) : "null";
}

// Two positions more than half the earth apart in longitude are taken to meet over the 180th meridian.
std::vector<Line> cutAtMeridian(const Line &line)
{
    std::vector<Line> parts = {{}};
    for (const GeoPoint &p : line) {
        Line &part = parts.back();
        if (!part.empty() && std::abs(p.longitude - part.back().longitude) > 180.0) {
            const GeoPoint &from = part.back();
            const double edge = from.longitude > 0.0 ? 180.0 : -180.0;
            const double way = 360.0 - std::abs(p.longitude - from.longitude);
            const double share = way > 0.0 ? std::abs(edge - from.longitude) / way : 0.0;
            const double latitude = from.latitude + share * (p.latitude - from.latitude);
            part.push_back({latitude, edge, std::nullopt, std::nullopt});
            parts.push_back({{latitude, -edge, std::nullopt, std::nullopt}});
        }
        parts.back().push_back(p);
    }
    return parts;
}

bool samePlace(const GeoPoint &a, const GeoPoint &b)
{
    return sevenDigits(a.latitude) == sevenDigits(b.latitude) &&
           sevenDigits(a.longitude) == sevenDigits(b.longitude);
}

std::string lineGeometry(const Line &outline, PlaceDetail detail)
{
    Line told;
    for (const GeoPoint &p : outline) {
        const auto place = placeToTell(p, detail);
        if (place && (told.empty() || !samePlace(told.back(), *place)))
            told.push_back(*place);
    }
    if (told.size() < 2)
        return told.empty() ? "null" : pointGeometry(told.front());
    std::vector<Line> parts = cutAtMeridian(told);
    // a line that only touches the meridian leaves a part of one spot twice
    std::erase_if(parts, [](const Line &part) {
        return part.size() < 2 || (part.size() == 2 && samePlace(part.front(), part.back()));
    });
    if (parts.size() == 1)
        return geometry("LineString", positions(parts.front()));
    std::vector<std::string> all;
    all.reserve(parts.size());
    for (const Line &part : parts)
        all.push_back(positions(part));
    return geometry("MultiLineString", "[" + join(all, ",") + "]");
}

// A line each, for people who read it all the same.
std::string feature(const Id &id, const std::string &geometry, Value::Map properties)
{
    return "{\"type\":\"Feature\",\"id\":\"" + id.text() + "\",\"geometry\":" + geometry +
           ",\"properties\":" + toJson(Value(std::move(properties)), false) + "}";
}

std::string findingFeature(const Standing &standing, const FindingHistory &history, const Texts &texts,
                           PlaceDetail detail)
{
    const Finding &finding = history.finding;
    const Look *last = lookAt(history, Instant::max());
    Value::Map properties{{"kind", "finding"},
                          {"point", finding.point},
                          {"title", texts.point(finding.point).title},
                          {"defect", finding.defect},
                          {"status", slug(statusOf(history))},
                          {"opened", formatLocal(finding.opened)},
                          {"place_detail", slug(detail)}};
    if (last != nullptr)
        properties["grade"] = last->grade;
    for (const OpenFinding &open : standing.state.open) {
        if (open.id == finding.id)
            properties["call"] = slug(open.concern.call);
    }
    return feature(finding.id, pointGeometry(placeToTell(whereSeen(standing.history, history), detail)),
                   std::move(properties));
}

std::string tripFeature(const Trip &trip, PlaceDetail detail)
{
    Value::Map properties{
        {"kind", "trip"},
        {"start", formatLocal(trip.start)},
        {"end", formatLocal(trip.end)},
        {"road", roadClassName(trip.road)},
        {"length", Value::Map{{"value", trip.summary.length.si()}, {"unit", siSymbol(Dimension::Distance)}}},
        {"place_detail", slug(detail)}};
    if (detail != PlaceDetail::LeftOut)
        properties["title"] = trip.title;
    return feature(trip.id, lineGeometry(trip.outline, detail), std::move(properties));
}

std::string stayFeature(const Stay &stay, PlaceDetail detail)
{
    Value::Map properties{{"kind", "stay"},
                          {"from", formatLocal(stay.from)},
                          {"to", stay.to ? Value(formatLocal(*stay.to)) : Value()},
                          {"covered", stay.covered},
                          {"place_detail", slug(detail)}};
    if (detail == PlaceDetail::Exact)
        properties["name"] = stay.name;
    return feature(stay.id, pointGeometry(placeToTell(stay.place, detail)), std::move(properties));
}

} // namespace

std::string geoJsonText(const Standing &standing, const Texts &texts, PlaceDetail place)
{
    std::vector<std::string> features;
    for (const FindingHistory &history : standing.history.findings)
        features.push_back(findingFeature(standing, history, texts, place));
    for (const Trip &trip : standing.history.trips)
        features.push_back(tripFeature(trip, place));
    for (const Stay &stay : standing.history.stays)
        features.push_back(stayFeature(stay, place));
    return std::string("{\"type\":\"FeatureCollection\",\"features\":[") + (features.empty() ? "" : "\n") +
           join(features, ",\n") + "\n]}\n";
}

} // namespace snugwalk

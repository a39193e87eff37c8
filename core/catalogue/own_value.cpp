// SPDX-License-Identifier: Apache-2.0
// Own points and intervals to values and back; quantities are in SI with their unit.
#include "catalogue/own_value.hpp"

#include "rig/rig_value.hpp"

namespace snugwalk {
namespace {

std::string text(const Value &v) { return v.asString().value_or(""); }

CivilDate date(const Value &v) { return parseDate(text(v)).value_or(CivilDate{}); }

Value stringsValue(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

std::vector<std::string> strings(const Value &v)
{
    std::vector<std::string> out;
    for (const Value &item : v.list())
        out.push_back(text(item));
    return out;
}

std::optional<int> months(const Value &v)
{
    const auto count = v.asInt();
    return count && *count > 0 && *count <= 1200 ? std::optional(static_cast<int>(*count)) : std::nullopt;
}

std::optional<Distance> distance(const Value &v)
{
    const auto read = readQuantity<Distance>(v, "distance");
    return read ? std::optional(*read) : std::nullopt;
}

Value toValue(const OwnReading &reading)
{
    const ReadingSpec &spec = reading.spec;
    return Value::Map{{"reading", spec.slug},
                      {"title", reading.title},
                      {"quantity", dimensionName(spec.dimension)},
                      {"unit", siSymbol(spec.dimension)},
                      {"low", Value(spec.lowSi)},
                      {"high", Value(spec.highSi)},
                      {"typed_in", spec.unit},
                      {"set_by", spec.setBy}};
}

OwnReading readingFromValue(const Value &v)
{
    const Dimension dimension = findDimension(text(v["quantity"])).value_or(Dimension::Count);
    return {text(v["title"]),
            {text(v["reading"]),
             dimension,
             text(v["typed_in"]),
             v["low"].asDouble(),
             v["high"].asDouble(),
             text(v["set_by"]),
             {}}};
}

} // namespace

Value toValue(const OwnPoint &point)
{
    Value::List readings;
    for (const OwnReading &reading : point.readings)
        readings.push_back(toValue(reading));
    return Value::Map{{"point", point.slug},
                      {"title", point.title},
                      {"look", point.look},
                      {"pass", point.pass},
                      {"stand", point.stand},
                      {"zone", point.zone},
                      {"consequence", stringsValue(point.consequence)},
                      {"months", Value(point.interval.months)},
                      {"distance", quantityValue(point.interval.distance)},
                      {"uses", stringsValue(point.interval.uses)},
                      {"readings", readings},
                      {"minutes", point.minutes},
                      {"by", point.by},
                      {"date", formatDate(point.date)}};
}

Value toValue(const HiddenPoint &point)
{
    return Value::Map{
        {"point", point.point}, {"by", point.by}, {"date", formatDate(point.date)}, {"note", point.note}};
}

Value toValue(const OwnInterval &every)
{
    return Value::Map{{"point", every.point},
                      {"months", Value(every.months)},
                      {"distance", quantityValue(every.distance)},
                      {"by", every.by},
                      {"date", formatDate(every.date)}};
}

OwnPoint ownPointFromValue(const Value &v)
{
    OwnPoint point;
    point.slug = text(v["point"]);
    point.title = text(v["title"]);
    point.look = text(v["look"]);
    point.pass = text(v["pass"]);
    point.stand = text(v["stand"]);
    point.zone = text(v["zone"]);
    point.consequence = strings(v["consequence"]);
    point.interval = {months(v["months"]), distance(v["distance"]), strings(v["uses"])};
    for (const Value &reading : v["readings"].list())
        point.readings.push_back(readingFromValue(reading));
    point.minutes = v["minutes"].asDouble().value_or(point.minutes);
    point.by = text(v["by"]);
    point.date = date(v["date"]);
    return point;
}

HiddenPoint hiddenPointFromValue(const Value &v)
{
    return {text(v["point"]), text(v["by"]), date(v["date"]), text(v["note"])};
}

OwnInterval ownIntervalFromValue(const Value &v)
{
    return {text(v["point"]), months(v["months"]), distance(v["distance"]), text(v["by"]), date(v["date"])};
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// From the things of a walk to values.
#include "rig/rig_value.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

Value idValue(const Id &id) { return id.isNull() ? Value() : Value(id.text()); }

Value stringsValue(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value timeValue(const std::optional<LocalTime> &time) { return time ? Value(formatLocal(*time)) : Value(); }

Value readingsValue(const std::vector<Reading> &readings)
{
    Value::List out;
    for (const Reading &reading : readings)
        out.push_back(toValue(reading));
    return out;
}

Value placeOrNull(const std::optional<GeoPoint> &where) { return where ? toValue(*where) : Value(); }

} // namespace

Value toValue(const GeoPoint &point)
{
    Value::Map out{{"latitude", point.latitude}, {"longitude", point.longitude}};
    if (point.altitude)
        out["altitude"] = Value::Map{{"value", *point.altitude}, {"unit", "m"}};
    if (point.accuracy)
        out["accuracy"] = quantityValue(*point.accuracy);
    return out;
}

Value toValue(const Reading &reading)
{
    Value::Map out{{"reading", reading.slug},
                   {"place", reading.place},
                   {"quantity", dimensionName(reading.dimension)},
                   {"value", reading.si},
                   {"unit", siSymbol(reading.dimension)},
                   {"read_in", reading.unit}};
    if (!reading.tool.empty())
        out["tool"] = reading.tool;
    return out;
}

Value toValue(const Extent &extent)
{
    return Value::Map{{"quantity", dimensionName(extent.dimension)},
                      {"value", extent.si},
                      {"unit", siSymbol(extent.dimension)},
                      {"read_in", extent.unit}};
}

Value toValue(const Stock &stock)
{
    return Value::Map{{"rig", idValue(stock.rig)},
                      {"item", stock.item},
                      {"amount", toValue(Extent{stock.dimension, stock.si, stock.unit})},
                      {"at", formatLocal(stock.at)},
                      {"by", stock.by}};
}

Value toValue(const WalkBudget &budget)
{
    return Value::Map{{"minutes", budget.minutes}, {"left_out", stringsValue(budget.leftOut)}};
}

Value toValue(const Walk &walk)
{
    Value::List tape;
    for (const TapeLine &line : walk.tape)
        tape.push_back(Value::Map{{"line", line.slug}, {"points", stringsValue(line.points)}});
    return Value::Map{{"rig", idValue(walk.rig)},
                      {"kind", walk.kind},
                      {"by", walk.by},
                      {"started", formatLocal(walk.started)},
                      {"finished", timeValue(walk.finished)},
                      {"where", placeOrNull(walk.where)},
                      {"tape", tape},
                      {"budget", walk.budget ? toValue(*walk.budget) : Value()}};
}

Value toValue(const Mark &mark)
{
    return Value::Map{{"walk", idValue(mark.walk)},
                      {"point", mark.point},
                      {"state", mark.state == MarkState::NotLooked ? Value() : Value(slug(mark.state))},
                      {"how", slug(mark.how)},
                      {"reason", mark.reason},
                      {"note", mark.note},
                      {"readings", readingsValue(mark.readings)},
                      {"at", formatLocal(mark.at)},
                      {"by", mark.by},
                      {"where", placeOrNull(mark.where)}};
}

Value toValue(const Finding &finding)
{
    return Value::Map{{"rig", idValue(finding.rig)},
                      {"point", finding.point},
                      {"defect", finding.defect},
                      {"place", toValue(finding.place)},
                      {"opened_on", idValue(finding.openedOn)},
                      {"opened", formatLocal(finding.opened)}};
}

Value toValue(const Look &look)
{
    Value::Map out{{"finding", idValue(look.finding)},
                   {"walk", idValue(look.walk)},
                   {"at", formatLocal(look.at)},
                   {"by", look.by},
                   {"grade", look.grade},
                   {"extent", look.extent ? toValue(*look.extent) : Value()},
                   {"note", look.note},
                   {"where", placeOrNull(look.where)}};
    if (!look.readings.empty())
        out["readings"] = readingsValue(look.readings);
    return out;
}

Value toValue(const MendPart &part)
{
    return Value::Map{{"name", part.name}, {"quantity", part.quantity}, {"unit", part.unit}};
}

Value toValue(const Mend &mend)
{
    Value::List findings;
    for (const Id &id : mend.findings)
        findings.push_back(idValue(id));
    Value::List parts;
    for (const MendPart &part : mend.parts)
        parts.push_back(toValue(part));
    return Value::Map{{"rig", idValue(mend.rig)},
                      {"at", formatLocal(mend.at)},
                      {"by", mend.by},
                      {"findings", findings},
                      {"points", stringsValue(mend.points)},
                      {"action", mend.action},
                      {"what", mend.what},
                      {"parts", parts},
                      {"cost", mend.cost},
                      {"minutes", Value(mend.minutes)}};
}

Value toValue(const Photo &photo)
{
    Value::Map out{{"rig", idValue(photo.rig)},
                   {"finding", idValue(photo.finding)},
                   {"look", idValue(photo.look)},
                   {"hash", photo.hash},
                   {"mime", photo.mime},
                   {"width", photo.width},
                   {"height", photo.height},
                   {"orientation", photo.orientation},
                   {"taken", timeValue(photo.taken)},
                   {"taken_text", photo.takenText},
                   {"where", placeOrNull(photo.where)},
                   {"added", formatLocal(photo.added)},
                   {"caption", photo.caption}};
    if (photo.order)
        out["order"] = *photo.order;
    return out;
}

Value toValue(const Happening &happening)
{
    return Value::Map{{"rig", idValue(happening.rig)},
                      {"kind", happening.kind},
                      {"at", formatLocal(happening.at)},
                      {"note", happening.note}};
}

Value toValue(const Acceptance &acceptance)
{
    return Value::Map{{"rig", idValue(acceptance.rig)},  {"walk", idValue(acceptance.walk)},
                      {"point", acceptance.point},       {"reason", acceptance.reason},
                      {"knowing", acceptance.knowing},   {"by", acceptance.by},
                      {"at", formatLocal(acceptance.at)}};
}

} // namespace snugwalk

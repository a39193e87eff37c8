// SPDX-License-Identifier: Apache-2.0
// From stored values to the things of a walk; never fails, so that a newer version's entries show.
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

std::string text(const Value &v) { return v.asString().value_or(""); }
Id idOf(const Value &v) { return Id::parse(text(v)).value_or(Id{}); }
// A number outside what a field can hold reads as the fallback, never cut off.
int number(const Value &v, int low, int high, int fallback)
{
    const auto n = v.asInt();
    return n && *n >= low && *n <= high ? static_cast<int>(*n) : fallback;
}
LocalTime time(const Value &v) { return parseLocal(text(v)).value_or(LocalTime{}); }

std::optional<LocalTime> maybeTime(const Value &v) { return parseLocal(text(v)); }

std::vector<std::string> strings(const Value &v)
{
    std::vector<std::string> out;
    for (const Value &item : v.list())
        out.push_back(text(item));
    return out;
}

Dimension dimension(const Value &v) { return findDimension(text(v)).value_or(Dimension::Count); }

Reading reading(const Value &v)
{
    return {text(v["reading"]),       text(v["place"]),
            dimension(v["quantity"]), v["value"].asDouble().value_or(0.0),
            text(v["read_in"]),       text(v["tool"])};
}

std::vector<Reading> readings(const Value &v)
{
    std::vector<Reading> out;
    for (const Value &item : v.list())
        out.push_back(reading(item));
    return out;
}

Extent extent(const Value &v)
{
    return {dimension(v["quantity"]), v["value"].asDouble().value_or(0.0), text(v["read_in"])};
}

} // namespace

std::optional<GeoPoint> geoFromValue(const Value &v)
{
    const auto latitude = v["latitude"].asDouble();
    const auto longitude = v["longitude"].asDouble();
    if (!latitude || !longitude)
        return std::nullopt;
    GeoPoint point{*latitude, *longitude, v["altitude"]["value"].asDouble(), std::nullopt};
    if (const auto accuracy = v["accuracy"]["value"].asDouble())
        point.accuracy = metres(*accuracy);
    return isValid(point) ? std::optional(point) : std::nullopt;
}

Walk walkFromValue(const Value &v)
{
    Walk walk;
    walk.rig = idOf(v["rig"]);
    walk.kind = text(v["kind"]);
    walk.by = text(v["by"]);
    walk.started = time(v["started"]);
    walk.finished = maybeTime(v["finished"]);
    walk.where = geoFromValue(v["where"]);
    for (const Value &line : v["tape"].list())
        walk.tape.push_back({text(line["line"]), strings(line["points"])});
    if (const auto minutes = v["budget"]["minutes"].asDouble())
        walk.budget = WalkBudget{*minutes, strings(v["budget"]["left_out"])};
    return walk;
}

Mark markFromValue(const Value &v)
{
    Mark mark;
    mark.walk = idOf(v["walk"]);
    mark.point = text(v["point"]);
    // A state of a newer version is shown as needing a person: never as a pass.
    if (v["state"].isString())
        mark.state = parseMarkState(text(v["state"])).value_or(MarkState::Attention);
    mark.how = parseLookedHow(text(v["how"])).value_or(LookedHow::Glance);
    mark.reason = text(v["reason"]);
    mark.note = text(v["note"]);
    mark.readings = readings(v["readings"]);
    mark.at = time(v["at"]);
    mark.by = text(v["by"]);
    mark.where = geoFromValue(v["where"]);
    return mark;
}

Finding findingFromValue(const Value &v)
{
    Finding finding;
    finding.rig = idOf(v["rig"]);
    finding.point = text(v["point"]);
    finding.defect = text(v["defect"]);
    const Result<RigPlace> place = placeFromValue(v["place"]);
    if (place)
        finding.place = *place;
    finding.openedOn = idOf(v["opened_on"]);
    finding.opened = time(v["opened"]);
    return finding;
}

Look lookFromValue(const Value &v)
{
    Look look;
    look.finding = idOf(v["finding"]);
    look.walk = idOf(v["walk"]);
    look.at = time(v["at"]);
    look.by = text(v["by"]);
    look.grade = number(v["grade"], 0, 5, 5); // unknown counts as the worst
    if (v["extent"].isMap())
        look.extent = extent(v["extent"]);
    look.note = text(v["note"]);
    look.where = geoFromValue(v["where"]);
    look.readings = readings(v["readings"]);
    return look;
}

MendPart mendPartFromValue(const Value &v)
{
    if (v.isString())
        return {text(v), 1.0, ""};
    return {text(v["name"]), v["quantity"].asDouble().value_or(1.0), text(v["unit"])};
}

Stock stockFromValue(const Value &v)
{
    const Extent amount = extent(v["amount"]);
    return {Id{},      idOf(v["rig"]), text(v["item"]), amount.dimension,
            amount.si, amount.unit,    time(v["at"]),   text(v["by"])};
}

Mend mendFromValue(const Value &v)
{
    Mend mend;
    mend.rig = idOf(v["rig"]);
    mend.at = time(v["at"]);
    mend.by = text(v["by"]);
    for (const Value &item : v["findings"].list())
        mend.findings.push_back(idOf(item));
    mend.points = strings(v["points"]);
    mend.action = text(v["action"]);
    mend.what = text(v["what"]);
    for (const Value &item : v["parts"].list())
        mend.parts.push_back(mendPartFromValue(item));
    mend.cost = text(v["cost"]);
    mend.minutes = v["minutes"].asDouble();
    return mend;
}

Photo photoFromValue(const Value &v)
{
    Photo photo;
    photo.rig = idOf(v["rig"]);
    photo.finding = idOf(v["finding"]);
    photo.look = idOf(v["look"]);
    photo.hash = text(v["hash"]);
    photo.mime = text(v["mime"]);
    photo.width = number(v["width"], 0, 100000, 0);
    photo.height = number(v["height"], 0, 100000, 0);
    photo.orientation = number(v["orientation"], 1, 8, 1);
    photo.taken = maybeTime(v["taken"]);
    photo.takenText = text(v["taken_text"]);
    photo.where = geoFromValue(v["where"]);
    photo.added = time(v["added"]);
    photo.caption = text(v["caption"]);
    if (const int order = number(v["order"], 1, 100000, 0); order > 0)
        photo.order = order;
    return photo;
}

Happening happeningFromValue(const Value &v)
{
    return {Id{}, idOf(v["rig"]), text(v["kind"]), time(v["at"]), text(v["note"])};
}

Acceptance acceptanceFromValue(const Value &v)
{
    return {Id{},
            idOf(v["rig"]),
            idOf(v["walk"]),
            text(v["point"]),
            text(v["reason"]),
            text(v["knowing"]),
            text(v["by"]),
            time(v["at"])};
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Loading the catalogue: every fault names the point and the member.
#include "catalogue/catalogue.hpp"

#include <algorithm>

#include "base/value.hpp"

namespace snugwalk {
namespace {

std::vector<std::string> strings(const Value &list)
{
    std::vector<std::string> out;
    for (const Value &item : list.list()) {
        if (auto text = item.asString())
            out.push_back(std::move(*text));
    }
    return out;
}

Error wrong(const std::string &where, const std::string &what)
{
    return {Errc::Corrupt, "catalogue: " + what, where, "install the program again"};
}

Result<ReadingSpec> readingFrom(const Value &v, const std::string &where)
{
    ReadingSpec spec;
    spec.slug = v["slug"].asString().value_or("");
    spec.unit = v["unit"].asString().value_or("");
    spec.setBy = v["set_by"].asString().value_or("");
    spec.source = v["source"].asString().value_or("");
    const std::string quantity = v["quantity"].asString().value_or("");
    // A date is read as text by people and kept as a number of days nowhere: it has no limits.
    const auto dimension = quantity == "date" ? Dimension::Count : findDimension(quantity);
    if (spec.slug.empty() || !dimension)
        return wrong(where, "a reading without slug or with unknown quantity \"" + quantity + "\"");
    spec.dimension = *dimension;
    const auto unit = findUnit(spec.dimension, spec.unit);
    if (!unit && !spec.unit.empty())
        return wrong(where, "unknown unit \"" + spec.unit + "\"");
    const auto limit = [&](const char *key) -> std::optional<double> {
        const auto number = v[key].asDouble();
        return number && unit ? toSi(*unit, *number) : number;
    };
    spec.lowSi = limit("low");
    spec.highSi = limit("high");
    return spec;
}

Result<Point> pointFrom(const Value &v, const std::string &zone)
{
    Point p;
    p.slug = v["slug"].asString().value_or("");
    p.code = v["code"].asString().value_or("");
    p.zone = zone;
    p.stand = v["stand"].asString().value_or("");
    p.consequence = strings(v["consequence"]);
    if (const auto hold = v["hold"].asInt())
        p.hold = static_cast<int>(*hold);
    p.forbids = v["forbids"].asString().value_or("");
    if (const auto months = v["interval"]["months"].asInt())
        p.interval.months = static_cast<int>(*months);
    if (const auto distance = v["interval"]["miles"].asDouble())
        p.interval.distance = miles(*distance);
    p.interval.uses = strings(v["interval"]["uses"]);
    p.drivers = strings(v["drivers"]);
    p.applies = {strings(v["applies"]["kinds"]), strings(v["applies"]["practices"]),
                 strings(v["applies"]["needs"]), strings(v["applies"]["without"])};
    p.repeat = v["repeat"].asString().value_or("none");
    p.defects = strings(v["defects"]);
    p.photos = static_cast<int>(v["photos"].asInt().value_or(0));
    p.tools = strings(v["tools"]);
    p.minutes = v["minutes"].asDouble().value_or(1.0);
    p.cautions = strings(v["cautions"]);
    p.sourceTag = v["source"]["tag"].asString().value_or("");
    p.sourceKeys = strings(v["source"]["keys"]);
    if (p.slug.empty() || p.stand.empty() || p.consequence.empty() || p.sourceTag.empty())
        return wrong(zone + "/" + p.slug, "slug, stand, consequence or source is missing");
    for (const Value &reading : v["readings"].list()) {
        auto spec = readingFrom(reading, zone + "/" + p.slug);
        if (!spec)
            return spec.error();
        p.readings.push_back(std::move(spec).value());
    }
    return p;
}

// A file that parses, or where it does not: file and place in it.
Result<Value> parseFile(std::string_view bytes, const std::string &name)
{
    Result<Value> file = parseJson(bytes);
    if (!file)
        return wrong(name + ", " + file.error().where, file.error().what);
    return file;
}

TapeLine lineFrom(const Value &v) { return {v["line"].asString().value_or(""), strings(v["points"])}; }

} // namespace

std::string againSlug(std::string_view point) { return std::string(point) + "-again"; }

bool Point::isRoadOrFire() const
{
    return hold.has_value() || !forbids.empty() ||
           std::any_of(consequence.begin(), consequence.end(),
                       [](const std::string &c) { return c == "T" || c == "F"; });
}

const ReadingSpec *Point::reading(std::string_view wanted) const
{
    const auto found = std::find_if(readings.begin(), readings.end(),
                                    [&](const ReadingSpec &spec) { return spec.slug == wanted; });
    return found == readings.end() ? nullptr : &*found;
}

Result<Catalogue> Catalogue::load(const std::vector<std::string_view> &pointFiles, std::string_view setsBytes,
                                  std::string_view sourcesBytes, std::string_view holdsBytes)
{
    Catalogue catalogue;
    int number = 0;
    for (const std::string_view bytes : pointFiles)
        SNUG_TRY(catalogue.addPoints(bytes, "point file " + std::to_string(++number)));
    const Result<Value> sets = parseFile(setsBytes, "sets");
    if (!sets)
        return sets.error();
    const Result<Value> sources = parseFile(sourcesBytes, "sources");
    if (!sources)
        return sources.error();
    catalogue.addSets(*sets);
    for (const auto &[key, source] : sources->map())
        catalogue.m_sources[key] = {source["title"].asString().value_or(key),
                                    source["full"].asString().value_or(key)};
    Result<HoldRules> holds = HoldRules::load(holdsBytes);
    if (!holds)
        return holds.error();
    catalogue.m_holds = std::move(holds).value();
    SNUG_TRY(catalogue.checkNames());
    catalogue.addAgain();
    return catalogue;
}

Status Catalogue::addPoints(std::string_view bytes, const std::string &name)
{
    const Result<Value> file = parseFile(bytes, name);
    if (!file)
        return file.error();
    const std::string zone = (*file)["zone"].asString().value_or("");
    if (zone.empty() || (*file)["points"].list().empty())
        return wrong(name, "no zone or no points in it");
    for (const Value &item : (*file)["points"].list()) {
        Result<Point> point = pointFrom(item, zone);
        if (!point)
            return point.error();
        if (!m_index.emplace(point->slug, m_points.size()).second)
            return wrong(zone + "/" + point->slug, "the slug is used twice");
        m_points.push_back(std::move(point).value());
    }
    return done();
}

void Catalogue::addSets(const Value &sets)
{
    for (const Value &kind : sets["kinds"].list())
        m_kinds.push_back({kind["slug"].asString().value_or(""), strings(kind["sets"]),
                           kind["all"].asBool().value_or(false), kind["route"].asString().value_or("lap"),
                           kind["twice"].asString().value_or(""), strings(kind["while_open"])});
    for (const auto &[slug, lines] : sets["sets"].map()) {
        for (const Value &line : lines.list())
            m_sets[slug].push_back(lineFrom(line));
    }
    for (const auto &[slug, stands] : sets["routes"].map())
        m_routes[slug] = strings(stands);
    for (const auto &[slug, points] : sets["events"].map())
        m_events[slug] = strings(points);
    for (const auto &[slug, points] : sets["likes"].map())
        m_likes[slug] = strings(points);
}

// A name that leads nowhere would make a walk shorter without anyone being told.
Status Catalogue::checkNames() const
{
    if (m_points.empty() || m_kinds.empty())
        return wrong("sets", "no points or no kinds of walk");
    for (const WalkKind &kind : m_kinds) {
        if (route(kind.route).empty())
            return wrong("sets/kinds/" + kind.slug, "no route \"" + kind.route + "\"");
        for (const std::string &name : kind.sets) {
            if (set(name).empty())
                return wrong("sets/kinds/" + kind.slug, "no set \"" + name + "\"");
        }
    }
    const auto check = [&](const std::string &where, const std::vector<std::string> &points) -> Status {
        for (const std::string &point : points) {
            if (find(point) == nullptr)
                return wrong(where, "no point \"" + point + "\"");
        }
        return done();
    };
    for (const WalkKind &kind : m_kinds) {
        SNUG_TRY(check("sets/kinds/" + kind.slug, kind.whileOpen));
        if (!kind.twice.empty())
            SNUG_TRY(check("sets/kinds/" + kind.slug, {kind.twice}));
    }
    for (const auto &[name, lines] : m_sets) {
        for (const TapeLine &line : lines)
            SNUG_TRY(check("sets/sets/" + name, line.points));
    }
    for (const auto &[name, points] : m_events)
        SNUG_TRY(check("sets/events/" + name, points));
    for (const auto &[name, points] : m_likes)
        SNUG_TRY(check("sets/likes/" + name, points));
    return check("holds", m_holds.points());
}

const Point *Catalogue::find(std::string_view slug) const
{
    const auto found = m_index.find(slug);
    if (found != m_index.end())
        return &m_points[found->second];
    const auto again =
        std::find_if(m_again.begin(), m_again.end(), [&](const Point &point) { return point.slug == slug; });
    return again == m_again.end() ? nullptr : &*again;
}

void Catalogue::addAgain()
{
    for (const WalkKind &kind : m_kinds) {
        if (kind.twice.empty() || find(againSlug(kind.twice)) != nullptr)
            continue;
        Point again = *find(kind.twice);
        again.slug = againSlug(kind.twice);
        m_again.push_back(std::move(again));
    }
}

const WalkKind *Catalogue::kind(std::string_view slug) const
{
    const auto found =
        std::find_if(m_kinds.begin(), m_kinds.end(), [&](const WalkKind &kind) { return kind.slug == slug; });
    return found == m_kinds.end() ? nullptr : &*found;
}

const std::vector<TapeLine> &Catalogue::set(std::string_view slug) const
{
    static const std::vector<TapeLine> none;
    const auto found = m_sets.find(slug);
    return found == m_sets.end() ? none : found->second;
}

std::vector<std::string> Catalogue::setNames() const
{
    std::vector<std::string> names;
    for (const auto &[name, lines] : m_sets)
        names.push_back(name);
    return names;
}

const std::vector<std::string> &Catalogue::route(std::string_view slug) const
{
    static const std::vector<std::string> none;
    const auto found = m_routes.find(slug);
    return found == m_routes.end() ? none : found->second;
}

} // namespace snugwalk

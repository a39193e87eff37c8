// SPDX-License-Identifier: Apache-2.0
// Checking what an owner wants, and laying it over the product's catalogue.
#include "catalogue/own.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t longestTitle = 60;
constexpr std::array letters = {"W", "T", "F", "H", "P", "C", "K"};
constexpr std::array defects = {"crack", "gap",         "lifted", "loose",  "missing", "leaking",
                                "worn",  "corroded",    "bent",   "seized", "dead",    "expired",
                                "play",  "delaminated", "soft",   "other"};

Error refused(std::string what, std::string where, std::string act)
{
    return {Errc::InvalidInput, std::move(what), std::move(where), std::move(act)};
}

std::size_t characters(std::string_view utf8)
{
    return static_cast<std::size_t>(
        std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

template <typename List>
bool has(const List &list, std::string_view item)
{
    return std::any_of(list.begin(), list.end(), [&](const auto &i) { return i == item; });
}

bool isZone(const Catalogue &catalogue, std::string_view zone)
{
    return std::any_of(catalogue.points().begin(), catalogue.points().end(),
                       [&](const Point &point) { return point.zone == zone; });
}

bool isUse(const Catalogue &catalogue, const std::string &use)
{
    return !catalogue.set(use).empty() || catalogue.events().count(use) > 0;
}

Status checkLimits(const std::string &where, const std::optional<int> &months,
                   const std::optional<Distance> &distance)
{
    const Error error{Errc::OutOfRange, "an interval must be above zero", where,
                      "give months from 1 to 120, or a distance such as \"3000 mi\""};
    if (months && (*months < 1 || *months > 120))
        return error;
    if (distance && (*distance <= Distance() || *distance > kilometres(1e6)))
        return error;
    return done();
}

template <typename T>
bool isLonger(const std::optional<T> &wanted, const std::optional<T> &usual)
{
    return wanted && usual && *wanted > *usual;
}

} // namespace

std::string ownSlug(std::string_view title)
{
    std::string slug = "own";
    bool dash = true;
    for (const char c : lowerAscii(title)) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (plain && dash)
            slug += '-';
        if (plain)
            slug += c;
        dash = !plain;
    }
    return slug == "own" ? "own-point" : slug;
}

Status checkOwnPoint(const Catalogue &catalogue, const OwnPoint &point)
{
    if (trim(point.title).empty() || characters(point.title) > longestTitle)
        return refused("a point needs a title of 1 to 60 characters", "title", "say it in a few words");
    if (catalogue.find(point.slug) != nullptr)
        return Error{Errc::Conflict, "there is a point of this name", point.slug, "give another title"};
    if (!has(catalogue.route("lap"), point.stand))
        return refused("no such place to stand: \"" + point.stand + "\"", "stand",
                       "use one of " + join(catalogue.route("lap"), ", "));
    if (!isZone(catalogue, point.zone))
        return refused("no such zone: \"" + point.zone + "\"", "zone", "see `snugwalk points --all`");
    if (point.consequence.empty() ||
        !std::all_of(point.consequence.begin(), point.consequence.end(),
                     [](const std::string &letter) { return has(letters, letter); }))
        return refused(
            "what happens when it fails is not known", "consequence",
            "use letters of W water, T road, F fire or gas, H health, P injury, C comfort, K looks");
    for (const std::string &use : point.interval.uses) {
        if (!isUse(catalogue, use))
            return refused("no such set or event: \"" + use + "\"", "uses", "see `snugwalk event --help`");
    }
    if (!point.interval.months && !point.interval.distance && point.interval.uses.empty())
        return refused("nothing makes it due", "interval", "give months, a distance or an occasion");
    return checkLimits(point.slug, point.interval.months, point.interval.distance);
}

Status checkOwnInterval(const Catalogue &catalogue, const OwnInterval &every)
{
    const Point *point = catalogue.find(every.point);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", every.point, "see `snugwalk points`"};
    if (!every.months && !every.distance)
        return refused("no interval given", every.point, "give months or a distance");
    SNUG_TRY(checkLimits(every.point, every.months, every.distance));
    if (!isLonger(every.months, point->interval.months) &&
        !isLonger(every.distance, point->interval.distance))
        return done();
    if (point->isRoadOrFire())
        return refused(
            "this point is of the road, of fire or on the hold list: it is never looked at less often",
            every.point, "shorten it, or leave it as it is");
    if (point->isPublished())
        return refused("this interval is published or the maker's: it is not lengthened", every.point,
                       "shorten it, or leave it as it is");
    return done();
}

std::vector<std::string> cautionsAt(std::string_view stand, std::string_view zone)
{
    std::vector<std::string> cautions;
    const auto add = [&](bool wanted, const char *code) {
        if (wanted)
            cautions.emplace_back(code);
    };
    add(stand == "roof", "a");
    add(stand == "underneath", "b");
    add(zone == "gas", "c");
    add(zone == "lights-and-electrics" || stand == "utilities", "e");
    add(stand == "nose" || stand == "tow-vehicle", "h");
    // a point at the wheels is looked at on both sides
    add(stand.starts_with("road-") || stand == "kerb-wheels" || stand == "tow-vehicle", "l");
    return cautions;
}

Point pointOf(const OwnPoint &own)
{
    Point point;
    point.slug = own.slug;
    point.code = "OWN";
    point.zone = own.zone;
    point.stand = own.stand;
    point.consequence = own.consequence;
    point.interval = own.interval;
    point.repeat = "none";
    for (const OwnReading &reading : own.readings)
        point.readings.push_back(reading.spec);
    point.defects.assign(defects.begin(), defects.end());
    point.photos = 1;
    point.minutes = own.minutes;
    point.cautions = cautionsAt(own.stand, own.zone);
    point.sourceTag = "CP";
    point.sourceKeys = {"CP"};
    point.own = true;
    return point;
}

void Catalogue::addOwn(Point point)
{
    if (!m_index.emplace(point.slug, m_points.size()).second)
        return;
    for (const std::string &use : point.interval.uses) {
        if (const auto event = m_events.find(use); event != m_events.end())
            event->second.push_back(point.slug);
        const auto set = m_sets.find(use);
        if (set == m_sets.end())
            continue;
        // before the lap that closes a set
        auto &lines = set->second;
        const bool closes = !lines.empty() && lines.back().slug == "pull-away-lap";
        lines.insert(closes ? lines.end() - 1 : lines.end(), {point.slug, {point.slug}});
    }
    m_points.push_back(std::move(point));
}

Catalogue Catalogue::withOwn(const OwnChoices &choices) const
{
    Catalogue catalogue = *this;
    for (const OwnPoint &own : choices.added)
        catalogue.addOwn(pointOf(own));
    for (const OwnInterval &every : choices.every) {
        if (!checkOwnInterval(catalogue, every))
            continue;
        Interval &interval = catalogue.m_points[catalogue.m_index.find(every.point)->second].interval;
        interval.months = every.months ? every.months : interval.months;
        interval.distance = every.distance ? every.distance : interval.distance;
    }
    for (const HiddenPoint &hidden : choices.hidden) {
        const auto found = catalogue.m_index.find(hidden.point);
        if (found != catalogue.m_index.end())
            catalogue.m_points[found->second].hidden = HiddenBy{hidden.by, hidden.date, hidden.note};
    }
    return catalogue;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Picking points for a rig and laying them out as a tape.
#include "catalogue/pick.hpp"

#include <algorithm>
#include <set>

#include "base/text.hpp"
#include "rig/names.hpp"

namespace snugwalk {
namespace {

bool contains(const std::vector<std::string> &list, std::string_view item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

std::size_t standRank(const std::vector<std::string> &route, const std::string &stand)
{
    return static_cast<std::size_t>(std::find(route.begin(), route.end(), stand) - route.begin());
}

// Adds the parts of `line` that the rig has and the tape does not show yet.
void addLine(const Catalogue &catalogue, const Rig &rig, const TapeLine &line, std::set<std::string> &seen,
             std::vector<TapeLine> &tape)
{
    TapeLine kept{line.slug, {}};
    for (const std::string &slug : line.points) {
        const Point *point = catalogue.find(slug);
        if (point != nullptr && applies(*point, rig) && seen.insert(slug).second)
            kept.points.push_back(slug);
    }
    if (!kept.points.empty())
        tape.push_back(std::move(kept));
}

// A name nobody knows would leave its lines out without a word.
Status checkExtras(const Catalogue &catalogue, const std::vector<std::string> &sets,
                   const std::vector<std::string> &points)
{
    for (const std::string &set : sets) {
        if (catalogue.set(set).empty())
            return Error{Errc::NotFound, "no set is called \"" + set + "\"", "set",
                         "use one of " + join(catalogue.setNames(), ", ")};
    }
    for (const std::string &point : points) {
        if (catalogue.find(point) == nullptr)
            return Error{Errc::NotFound, "no point is called \"" + point + "\"", "point",
                         "see `snugwalk points`"};
    }
    return done();
}

std::string_view repeatOf(OpeningKind kind)
{
    switch (kind) {
    case OpeningKind::Door:
        return "door";
    case OpeningKind::Window:
        return "window";
    case OpeningKind::Hatch:
        return "hatch";
    case OpeningKind::Vent:
    case OpeningKind::Rooflight:
        return "vent";
    }
    return "none";
}

// A point that is walked twice comes first, before the house is warmed and aired, and once more last.
void addTwice(const Catalogue &catalogue, const Rig &rig, const std::string &slug,
              std::vector<TapeLine> &tape)
{
    const Point *point = slug.empty() ? nullptr : catalogue.find(slug);
    if (point == nullptr || !applies(*point, rig))
        return;
    std::erase_if(tape, [&](const TapeLine &line) { return line.points == std::vector{slug}; });
    tape.insert(tape.begin(), {slug, {slug}});
    tape.push_back({againSlug(slug), {againSlug(slug)}});
}

void sortByStand(const Catalogue &catalogue, const std::vector<std::string> &route,
                 std::vector<TapeLine> &tape)
{
    std::stable_sort(tape.begin(), tape.end(), [&](const TapeLine &a, const TapeLine &b) {
        return standRank(route, standOf(catalogue, a)) < standRank(route, standOf(catalogue, b));
    });
}

} // namespace

bool isOnRig(const Point &point, const Rig &rig)
{
    const Applies &a = point.applies;
    if (!a.kinds.empty() && !contains(a.kinds, slug(rig.kind)))
        return false;
    if (!a.practices.empty() && !contains(a.practices, slug(rig.practice)))
        return false;
    if (a.needs.empty() && a.without.empty())
        return true;
    const std::set<std::string> fitted = allFittings(rig);
    const auto has = [&](const std::string &fitting) { return fitted.count(fitting) > 0; };
    return std::all_of(a.needs.begin(), a.needs.end(), has) &&
           std::none_of(a.without.begin(), a.without.end(), has);
}

bool applies(const Point &point, const Rig &rig) { return !point.hidden && isOnRig(point, rig); }

std::vector<const Point *> hiddenInSight(const Catalogue &catalogue, const Rig &rig)
{
    std::vector<const Point *> hidden;
    for (const Point &point : catalogue.points()) {
        if (point.hidden && point.isRoadOrFire() && isOnRig(point, rig))
            hidden.push_back(&point);
    }
    return hidden;
}

std::vector<std::string> pointsFor(const Catalogue &catalogue, const Rig &rig)
{
    std::vector<std::string> slugs;
    for (const Point &point : catalogue.points()) {
        if (applies(point, rig))
            slugs.push_back(point.slug);
    }
    return slugs;
}

std::string standOf(const Catalogue &catalogue, const TapeLine &line)
{
    const Point *point = line.points.empty() ? nullptr : catalogue.find(line.points.front());
    return point == nullptr ? std::string() : point->stand;
}

Result<std::vector<TapeLine>> tapeFor(const Catalogue &catalogue, const Rig &rig, std::string_view kindSlug,
                                      const std::vector<std::string> &extraSets,
                                      const std::vector<std::string> &extraPoints)
{
    const WalkKind *kind = catalogue.kind(kindSlug);
    if (kind == nullptr) {
        std::string known;
        for (const WalkKind &k : catalogue.kinds())
            known += (known.empty() ? "" : ", ") + k.slug;
        return Error{Errc::NotFound, "no walk is called \"" + std::string(kindSlug) + "\"", "walk kind",
                     "use one of " + known};
    }
    SNUG_TRY(checkExtras(catalogue, extraSets, extraPoints));
    std::vector<TapeLine> tape;
    std::set<std::string> seen;
    for (const std::string &set : kind->sets) {
        for (const TapeLine &line : catalogue.set(set))
            addLine(catalogue, rig, line, seen, tape);
    }
    // What an occasion adds comes in walking order before the last look that closes a set.
    std::vector<TapeLine> added;
    for (const std::string &set : extraSets) {
        for (const TapeLine &line : catalogue.set(set))
            addLine(catalogue, rig, line, seen, added);
    }
    for (const std::string &slug : extraPoints)
        addLine(catalogue, rig, {slug, {slug}}, seen, added);
    if (kind->all) {
        for (const Point &point : catalogue.points())
            addLine(catalogue, rig, {point.slug, {point.slug}}, seen, added);
    }
    sortByStand(catalogue, catalogue.route(kind->route), added);
    const bool keepsLast = !tape.empty() && tape.back().slug == "pull-away-lap";
    tape.insert(keepsLast ? tape.end() - 1 : tape.end(), added.begin(), added.end());
    addTwice(catalogue, rig, kind->twice, tape);
    return tape;
}

std::vector<std::string> placesOf(const Point &point, const Rig &rig)
{
    if (point.repeat == "wheel")
        return wheelNames(rig);
    std::vector<std::string> names;
    for (const Opening &opening : rig.openings) {
        const std::string_view each = repeatOf(opening.kind);
        if (each == point.repeat || (point.repeat == "lock" && (each == "door" || each == "hatch")))
            names.push_back(opening.name);
    }
    return names;
}

} // namespace snugwalk

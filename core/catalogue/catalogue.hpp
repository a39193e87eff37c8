// SPDX-License-Identifier: Apache-2.0
// The inspection points of the trade as data, and the sets in which they are walked.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "base/time.hpp"
#include "base/units.hpp"
#include "base/value.hpp"
#include "catalogue/hold_rules.hpp"

namespace snugwalk {

/// A number that a point asks for, with the limits outside of which attention is proposed.
struct ReadingSpec {
    std::string slug;
    Dimension dimension = Dimension::Count;
    std::string unit; ///< as typed and shown by the trade, such as "mm"
    std::optional<double> lowSi;
    std::optional<double> highSi;
    std::string setBy;  ///< maker, published, common_practice
    std::string source; ///< key of `Catalogue::sources`, may be empty
};

/// Months, distance or events, whichever comes first.
struct Interval {
    std::optional<int> months;
    std::optional<Distance> distance;
    std::vector<std::string> uses; ///< slugs of events and sets that make the point due
};

/// Which rigs have a point. Empty lists mean any.
struct Applies {
    std::vector<std::string> kinds;
    std::vector<std::string> practices;
    std::vector<std::string> needs;   ///< fittings, all of which must be there
    std::vector<std::string> without; ///< fittings, none of which may be there
};

/// Who took a point out of the walks of a rig, and when.
struct HiddenBy {
    std::string by;
    CivilDate date{};
    std::string note;
    friend bool operator==(const HiddenBy &, const HiddenBy &) = default;
};

struct Point {
    std::string slug;
    std::string code;
    std::string zone;
    std::string stand;
    std::vector<std::string> consequence; ///< W T F H P C K, primary first
    std::optional<int> hold;              ///< number in the hold list
    std::string forbids;                  ///< move, sleep, plug, light, or empty
    Interval interval;
    std::vector<std::string> drivers;
    Applies applies;
    std::string repeat; ///< none, wheel, lamp, door, vent, window, hatch, lock
    std::vector<ReadingSpec> readings;
    std::vector<std::string> defects;
    int photos = 0;
    std::vector<std::string> tools;
    double minutes = 1.0;
    std::vector<std::string> cautions;
    std::string sourceTag; ///< P, FM, CP, calc
    std::vector<std::string> sourceKeys;
    bool own = false;                              ///< added by the owner of a rig
    std::optional<HiddenBy> hidden = std::nullopt; ///< left out of this rig's walks and due list

    /// A point whose first consequence or hold touches road safety or fire: data never lengthens it.
    [[nodiscard]] bool isRoadOrFire() const;
    /// A published or a maker's limit (source tags P and FM): neither data nor the owner lengthens it.
    [[nodiscard]] bool isPublished() const { return sourceTag == "P" || sourceTag == "FM"; }
    [[nodiscard]] const ReadingSpec *reading(std::string_view slug) const;
};

struct OwnChoices;

/// One line of the tape: a point, or several that are looked at in one go.
struct TapeLine {
    std::string slug;
    std::vector<std::string> points;
};

struct WalkKind {
    std::string slug;
    std::vector<std::string> sets;
    bool all = false;       ///< every point that the rig has
    std::string route;      ///< lap or inside_out
    std::string twice = {}; ///< a point walked first and once more last, such as the damp map when buying
    std::vector<std::string> whileOpen = {}; ///< points that join while a happening waits for them
};

/// The second look at a point that a walk has twice: "moisture-map" and "moisture-map-again".
[[nodiscard]] std::string againSlug(std::string_view point);

struct Source {
    std::string title;
    std::string full;
};

class Catalogue {
public:
    /// \param pointFiles bytes of each zone's file; \param sets bytes of sets.json;
    /// \param sources bytes of sources.json; \param holds bytes of holds.json.
    /// Format: core/catalogue/FORMAT.md.
    /// \returns `Corrupt` naming the file part and member that is wrong.
    [[nodiscard]] static Result<Catalogue> load(const std::vector<std::string_view> &pointFiles,
                                                std::string_view sets, std::string_view sources,
                                                std::string_view holds);

    [[nodiscard]] const std::vector<Point> &points() const { return m_points; }
    [[nodiscard]] const Point *find(std::string_view slug) const;
    [[nodiscard]] const std::vector<WalkKind> &kinds() const { return m_kinds; }
    [[nodiscard]] const WalkKind *kind(std::string_view slug) const;
    [[nodiscard]] const std::vector<TapeLine> &set(std::string_view slug) const;
    /// Stands in the order they are walked; empty for an unknown route.
    [[nodiscard]] const std::vector<std::string> &route(std::string_view slug) const;
    /// Points that an event makes due at once.
    [[nodiscard]] const std::map<std::string, std::vector<std::string>> &events() const { return m_events; }
    /// Classes of points that last alike on one rig: what is seen of one tells of the others.
    [[nodiscard]] const std::map<std::string, std::vector<std::string>> &likes() const { return m_likes; }
    [[nodiscard]] const std::map<std::string, Source> &sources() const { return m_sources; }

    /// This catalogue as one rig's owner has it: points added, hidden and looked at more often.
    /// Choices that this catalogue does not know or does not allow (see `checkOwnInterval`) change
    /// nothing: a later catalogue may be stricter than the one the choice was made with.
    [[nodiscard]] Catalogue withOwn(const OwnChoices &choices) const;
    [[nodiscard]] const HoldRules &holds() const { return m_holds; }

    /// Names of all sets, sorted.
    [[nodiscard]] std::vector<std::string> setNames() const;

private:
    [[nodiscard]] Status addPoints(std::string_view bytes, const std::string &name);
    void addSets(const Value &sets);
    [[nodiscard]] Status checkNames() const;
    void addAgain();
    void addOwn(Point point);

    std::vector<Point> m_points;
    std::vector<Point> m_again; ///< the second looks, found by name and on no list
    std::map<std::string, std::size_t, std::less<>> m_index;
    std::vector<WalkKind> m_kinds;
    std::map<std::string, std::vector<TapeLine>, std::less<>> m_sets;
    std::map<std::string, std::vector<std::string>, std::less<>> m_routes;
    std::map<std::string, std::vector<std::string>> m_events;
    std::map<std::string, Source> m_sources;
    HoldRules m_holds;
    std::map<std::string, std::vector<std::string>> m_likes;
};

} // namespace snugwalk

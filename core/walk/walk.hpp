// SPDX-License-Identifier: Apache-2.0
// What is written on a walk: marks, readings, findings, looks at findings, mends, photos.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/id.hpp"
#include "base/time.hpp"
#include "base/units.hpp"
#include "catalogue/catalogue.hpp"
#include "rig/place.hpp"

namespace snugwalk {

/// What a point got. Not looked is never stored: it is the absence of a mark.
enum class MarkState { NotLooked, Pass, Attention, NotFitted, CouldNotLook };
/// How a pass was looked at.
enum class LookedHow { Glance, Looked, Measured };

/// A measured quantity, kept in SI with the unit it was read in.
struct Reading {
    std::string slug;
    std::string place; ///< named place, such as "wheel 2R"; empty for the rig as a whole
    Dimension dimension = Dimension::Count;
    double si = 0.0;
    std::string unit;
    std::string tool = {}; ///< what it was read with, as the person calls it; empty when not said
    friend bool operator==(const Reading &, const Reading &) = default;
};

/// What a walk with a time limit was asked to fit into, and what it does not look at therefore.
struct WalkBudget {
    double minutes = 0.0;
    std::vector<std::string> leftOut; ///< points; those of the hold list first, then by expected harm
    friend bool operator==(const WalkBudget &, const WalkBudget &) = default;
};

/// One round of the rig. The tape is kept with it, so that a later catalogue never changes a walk.
struct Walk {
    Id id;
    Id rig;
    std::string kind;
    std::string by;
    LocalTime started;
    std::optional<LocalTime> finished;
    std::optional<GeoPoint> where;
    std::vector<TapeLine> tape;
    std::optional<WalkBudget> budget = std::nullopt;
    friend bool operator==(const Walk &a, const Walk &b)
    {
        return a.id == b.id && a.rig == b.rig && a.kind == b.kind && a.by == b.by && a.started == b.started &&
               a.finished == b.finished && a.where == b.where && a.tape.size() == b.tape.size() &&
               a.budget == b.budget;
    }
};

struct Mark {
    Id id;
    Id walk;
    std::string point;
    MarkState state = MarkState::NotLooked;
    LookedHow how = LookedHow::Looked;
    std::string reason; ///< slug, with could not look
    std::string note;
    std::vector<Reading> readings;
    LocalTime at;
    std::string by;
    std::optional<GeoPoint> where;
    friend bool operator==(const Mark &, const Mark &) = default;
};

/// How much: a length, a count, an area, or a reading such as 24 % or 0.3 V.
struct Extent {
    Dimension dimension = Dimension::Length;
    double si = 0.0;
    std::string unit;
    friend bool operator==(const Extent &, const Extent &) = default;
};

/// What an attention mark found. It lives until a mend closes it and a later pass confirms that.
struct Finding {
    Id id;
    Id rig;
    std::string point;
    std::string defect;
    RigPlace place;
    Id openedOn; ///< the walk; null when found between walks
    LocalTime opened;
    friend bool operator==(const Finding &, const Finding &) = default;
};

/// What was seen of a finding on one walk.
struct Look {
    Id id;
    Id finding;
    Id walk; ///< null for a look between walks
    LocalTime at;
    std::string by;
    int grade = 1; ///< 1 dulled … 5 a hold; 0 = gone
    std::optional<Extent> extent;
    std::string note;
    std::optional<GeoPoint> where;
    std::vector<Reading> readings = {}; ///< taken with it between walks, where no mark carries them
    friend bool operator==(const Look &, const Look &) = default;
};

/// Something a mend used up: "lap sealant, 2 cartridges".
struct MendPart {
    std::string name;
    double quantity = 1.0;
    std::string unit; ///< as typed, such as "cartridges" or "mL"; empty for pieces
    friend bool operator==(const MendPart &, const MendPart &) = default;
};

/// Work done: closes findings and restarts the clocks of their points.
struct Mend {
    Id id;
    Id rig;
    LocalTime at;
    std::string by;
    std::vector<Id> findings;
    std::vector<std::string> points; ///< worked on without a finding, such as bearings repacked
    std::string action;              ///< replace reseal retorque clean lubricate adjust other
    std::string what;
    std::vector<MendPart> parts;
    std::string cost; ///< as typed, with its currency
    std::optional<double> minutes;
    friend bool operator==(const Mend &, const Mend &) = default;
};

/// A photo's place in the logbook; its bytes lie in the photo folder under `hash`.
struct Photo {
    Id id;
    Id rig;
    Id finding; ///< null when it belongs to no finding
    Id look;    ///< the look it proves, null when none
    std::string hash;
    std::string mime;
    int width = 0;
    int height = 0;
    int orientation = 1; ///< EXIF, 1 to 8
    std::optional<LocalTime> taken;
    std::string takenText; ///< camera time without a zone, as the photo has it
    std::optional<GeoPoint> where;
    LocalTime added;
    std::string caption;
    std::optional<int> order = std::nullopt; ///< from 1, where a person has put it; else by the time taken
    friend bool operator==(const Photo &, const Photo &) = default;
};

/// Something that makes points due at once: a kerb struck, a wheel fitted, hail.
struct Happening {
    Id id;
    Id rig;
    std::string kind; ///< event slug of the catalogue
    LocalTime at;
    std::string note;
    friend bool operator==(const Happening &, const Happening &) = default;
};

/// How much of a supply is on hand, as counted at one moment; mends after it take from it.
struct Stock {
    Id id;
    Id rig;
    std::string item; ///< slug of the supplies' list
    Dimension dimension = Dimension::Count;
    double si = 0.0;
    std::string unit; ///< as typed
    LocalTime at;
    std::string by;
    friend bool operator==(const Stock &, const Stock &) = default;
};

[[nodiscard]] std::string_view slug(MarkState state);
[[nodiscard]] std::string_view slug(LookedHow how);
[[nodiscard]] std::optional<MarkState> parseMarkState(std::string_view slug);
[[nodiscard]] std::optional<LookedHow> parseLookedHow(std::string_view slug);
[[nodiscard]] const std::vector<std::string> &mendActions();

} // namespace snugwalk

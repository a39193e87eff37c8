// SPDX-License-Identifier: Apache-2.0
// What a person wants to write about one point, checked before it is written.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "walk/walk.hpp"

namespace snugwalk {

/// A reading as typed: "65 psi" at "wheel 1L".
struct TypedReading {
    std::string slug;
    std::string place;
    std::string text;
    std::string tool = {}; ///< what it was read with, may be empty
};

/// A finding to open, or to look at again when `same` names it.
struct FindingDraft {
    Id same;
    std::string defect;
    RigPlace place;
    int grade = 0;          ///< 1 to 5; 0 with `same` says it is gone
    std::string extentText; ///< "14 mm", "20 cm2", "3", "24 %", empty
    std::string note;
};

struct MarkDraft {
    std::string point;
    MarkState state = MarkState::NotLooked;
    LookedHow how = LookedHow::Looked;
    std::string reason;
    std::string note;
    std::vector<TypedReading> readings;
    std::vector<FindingDraft> findings;
};

/// Limits of a reading on this rig: the maker's figures typed in, else the catalogue's.
struct Limits {
    std::optional<double> lowSi;
    std::optional<double> highSi;
    std::string basis; ///< maker, published, common_practice; empty without a limit
};
[[nodiscard]] Limits limitsFor(const ReadingSpec &spec, const Point &point, const Rig &rig);
/// Below the low or above the high limit; one met exactly, whatever unit it was typed in, is within.
[[nodiscard]] bool isOutside(const Limits &limits, double si);

/// A reading outside its limits, told to the person who marks; never changes the mark by itself.
struct LimitWarning {
    std::string reading;
    std::string place;
    Dimension dimension = Dimension::Count;
    double si = 0.0;
    Limits limits;
};

struct CheckedMark {
    MarkState state = MarkState::NotLooked;
    std::vector<Reading> readings;
    std::vector<std::optional<Extent>> extents; ///< one for each finding of the draft
    std::vector<LimitWarning> warnings;
};

/// Checks a draft against its point and rig: readings parsed with their unit, a reason with could
/// not look, a finding with attention, defect and grade known, the place on the rig.
/// \returns `InvalidInput` or `OutOfRange` with the field in `where`.
[[nodiscard]] Result<CheckedMark> checkMark(const MarkDraft &draft, const Point &point, const Rig &rig);

/// "14 mm" as a length, "20 cm2" as an area, "3" as a count, "24 %" or "0.3 V" as a reading with its unit;
/// nothing for empty text.
[[nodiscard]] Result<std::optional<Extent>> parseExtent(std::string_view text);

/// Reasons for could not look, the first being the first offered.
[[nodiscard]] const std::vector<std::string> &reasons();

} // namespace snugwalk

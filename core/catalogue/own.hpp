// SPDX-License-Identifier: Apache-2.0
// What the owner of one rig changed in the catalogue: points added, hidden, looked at at other intervals.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/catalogue.hpp"

namespace snugwalk {

struct OwnReading {
    std::string title; ///< as the owner calls it, in every language
    ReadingSpec spec;  ///< its limits are the owner's
};

/// A point that only this rig has, in the owner's words.
struct OwnPoint {
    std::string slug; ///< from `ownSlug`; never changes
    std::string title;
    std::string look; ///< may be empty: a general sentence stands in
    std::string pass; ///< may be empty, as above
    std::string stand;
    std::string zone;
    std::vector<std::string> consequence; ///< W T F H P C K, primary first
    Interval interval;                    ///< `uses` may name sets and events of the catalogue
    std::vector<OwnReading> readings;
    double minutes = 2.0;
    std::string by;
    CivilDate date{};
};

struct HiddenPoint {
    std::string point;
    std::string by;
    CivilDate date{};
    std::string note;
};

/// An interval of the owner's; a limit not given stays as the catalogue has it.
struct OwnInterval {
    std::string point;
    std::optional<int> months;
    std::optional<Distance> distance;
    std::string by;
    CivilDate date{};
};

struct OwnChoices {
    std::vector<OwnPoint> added;
    std::vector<HiddenPoint> hidden;
    std::vector<OwnInterval> every;
    [[nodiscard]] bool isEmpty() const { return added.empty() && hidden.empty() && every.empty(); }
};

/// "own-step-light" from "Step light": lower-case letters and digits, the rest as dashes; what is
/// left of a title without any Latin letter is "own-point". The beginning keeps it apart from every
/// slug the catalogue will ever have.
[[nodiscard]] std::string ownSlug(std::string_view title);

/// `InvalidInput` for what cannot be shown or walked: no title or one over 60 characters, an unknown
/// stand, zone, consequence, set or event, a limit that is not above zero, nothing that makes it due;
/// `Conflict` when the catalogue has the slug already.
[[nodiscard]] Status checkOwnPoint(const Catalogue &catalogue, const OwnPoint &point);

/// Shortening is always allowed. Lengthening is refused for a point of the road, of fire or of the hold
/// list, and for a published or a maker's limit (source tags P and FM); adding a limit shortens.
/// \returns `NotFound` for an unknown point, `OutOfRange` for a limit not above zero, `InvalidInput`
/// with the reason for a refused lengthening.
[[nodiscard]] Status checkOwnInterval(const Catalogue &catalogue, const OwnInterval &every);

/// The caution letters that a place to stand and a zone always carry.
[[nodiscard]] std::vector<std::string> cautionsAt(std::string_view stand, std::string_view zone);

/// As the catalogue keeps it: one mark, any defect, no hold, common practice.
[[nodiscard]] Point pointOf(const OwnPoint &own);

} // namespace snugwalk

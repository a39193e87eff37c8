// SPDX-License-Identifier: Apache-2.0
// The numbers a line asks for: what was read last time, the limits, and what was typed so far.
#pragma once

#include <map>
#include <tuple>

#include <QVariantList>

#include "snapshot.hpp"
#include "walk/draft.hpp"

namespace snugwalk {

/// A reading as the person wrote it, and with its numbers plain and its unit, as the core takes it.
struct TypedText {
    QString shown;
    std::string plain;
};

/// What was typed on the current line and is not marked yet: point, reading, place → text.
using TypedReadings = std::map<std::tuple<std::string, std::string, std::string>, TypedText>;

/// [{point, slug, title, unit, units, signed, fractions, places, placeNames, last, limits, basis, typed}] of
/// the given points. `last` and `typed` go by place, "" for the whole rig. The last reading is shown, never
/// filled in. `unit` is what a bare number is taken in; `units` has it first, then that of the other system;
/// `fractions` tells whether the trade writes such a length in fractions of it.
[[nodiscard]] QVariantList readingFields(const Shown &shown, const Catalogue &catalogue,
                                         const std::vector<std::string> &points, const TypedReadings &typed);

struct ReadingCheck {
    bool understood = false;
    QString message;   ///< how to write it; or outside the limits; or the same in the unit the person reads
    std::string plain; ///< for the core, when understood
};
[[nodiscard]] ReadingCheck checkTyped(const Shown &shown, const Point &point, const ReadingSpec &spec,
                                      const QString &text);

/// Those of one point, for a draft.
[[nodiscard]] std::vector<TypedReading> typedFor(const TypedReadings &typed, const std::string &point);

} // namespace snugwalk

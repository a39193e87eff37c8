// SPDX-License-Identifier: Apache-2.0
// Where something is, seen from the nearest named place, in words that command line, reports and app share.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "base/units.hpp"
#include "catalogue/texts.hpp"
#include "map/gazetteer.hpp"
#include "report/rough_place.hpp"

namespace snugwalk {

/// The named place nearest to what may be told of `place`: with `Coarse` to the middle of its cell, so that
/// neither name nor distance tells more than the coarse place does. Nothing where that is left out, unknown,
/// or no places are at hand.
/// Tests: tests/unit/report/tst_near_words.cpp
[[nodiscard]] std::optional<NearPlace> nearToTell(const Gazetteer *places,
                                                  const std::optional<GeoPoint> &place, PlaceDetail detail);

/// "7 km north of Twizel", "near Twizel" under 1.5 km; with `Coarse` "about 10 km north of Twizel" in steps
/// of 5 km or miles, "near Twizel" under half such a step. \param number writes a number with so many
/// decimals
[[nodiscard]] std::string nearWords(const NearPlace &near, PlaceDetail detail, const Texts &texts,
                                    UnitSystem units, const std::function<std::string(double, int)> &number);
/// The same with plain numbers; "" for nothing.
[[nodiscard]] std::string nearWords(const std::optional<NearPlace> &near, PlaceDetail detail,
                                    const Texts &texts, UnitSystem units);

} // namespace snugwalk

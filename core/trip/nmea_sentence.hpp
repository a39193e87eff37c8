// SPDX-License-Identifier: Apache-2.0
// One RMC or GGA sentence, taken apart.
#pragma once

#include <chrono>
#include <optional>
#include <string_view>
#include <variant>

#include "base/geo.hpp"

namespace snugwalk::nmea {

/// What one sentence tells. GGA has no date.
struct Reading {
    std::chrono::milliseconds timeOfDay{};
    std::optional<CivilDate> date;
    GeoPoint point;
    std::optional<double> hdop;
    std::optional<Speed> speed;
};

/// A reading, or the reason there is none (see `Drop`).
using Outcome = std::variant<Reading, std::string_view>;

/// True for `$` + two letters or digits of a talker + RMC or GGA + comma; proprietary `$P` is not.
[[nodiscard]] bool isFixSentence(std::string_view fromDollar);

/// \param fromDollar  text from `$` on, with at least the whole sentence if there is one.
[[nodiscard]] Outcome readSentence(std::string_view fromDollar);

} // namespace snugwalk::nmea

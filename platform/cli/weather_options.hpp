// SPDX-License-Identifier: Apache-2.0
// What the weather commands share: reading plain numbers, and figures as JSON.
#pragma once

#include <string>
#include <string_view>

#include "base/quantity.hpp"
#include "base/value.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"

namespace snugwalk::cli {

/// A plain number of an option; `InvalidInput` naming it.
[[nodiscard]] Result<double> numberOf(const std::string &text, const char *option, const char *example);
/// °C unless a unit is written.
[[nodiscard]] Result<Temperature> temperatureOf(const std::string &text, const char *option);
/// Metres unless a unit is written.
[[nodiscard]] Result<Length> altitudeOf(const std::string &text, const char *option);
[[nodiscard]] Result<CivilDate> dateOf(const std::string &text, const char *option);
/// `OutOfRange` for what is no place on earth.
[[nodiscard]] Result<GeoPoint> placeOf(const std::string &latitude, const std::string &longitude);

[[nodiscard]] double inCelsius(Temperature t);
/// {"value", "unit"}
[[nodiscard]] Value figure(double value, std::string_view unit);
[[nodiscard]] Value textList(const std::vector<std::string> &texts);

} // namespace snugwalk::cli

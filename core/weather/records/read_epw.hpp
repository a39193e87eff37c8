// SPDX-License-Identifier: Apache-2.0
// Hours of a weather file as building simulations read it.
#pragma once

#include <optional>
#include <string_view>

#include "weather/records/read_weather.hpp"

namespace snugwalk {

/// True for text that begins with the first of the format's header lines.
[[nodiscard]] bool isEpw(std::string_view text);

/// See `readWeather`.
[[nodiscard]] Result<ReadWeather> readEpw(std::string_view text, const std::string &file,
                                          std::optional<int> year);

} // namespace snugwalk

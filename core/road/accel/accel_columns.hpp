// SPDX-License-Identifier: Apache-2.0
// Which column of a log is what, by the names in its header.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

enum class AccelUnit { Unknown, MetresPerSecondSquared, Gravities };

/// "m/s2", "m/s^2", "ms2" or "g"; nothing for anything else.
[[nodiscard]] std::optional<AccelUnit> findAccelUnit(std::string_view text);

struct AccelColumns {
    std::size_t time = 0;
    std::array<std::size_t, 3> axes{1, 2, 3};
    std::optional<std::size_t> speed;
    double timeFactor = 0.0;  ///< to seconds; 0 when the header names no unit
    double speedFactor = 1.0; ///< to m/s
    AccelUnit unit = AccelUnit::Unknown;
};

/// Understands `time`, `t`, `timestamp`, `seconds`, `elapsed`, `epoch` with s, ms, us or ns; `x`, `ax`,
/// `acc_x`, `acceleration x` with m/s2 or g; `speed`, `velocity` with m/s, km/h, mph, kn: the unit in
/// brackets or as the last part of the name. Gyroscope, magnetometer and other columns are passed over.
/// \returns `InvalidInput` naming what is missing, or a unit that is none.
[[nodiscard]] Result<AccelColumns> accelColumns(std::span<const std::string_view> header, long long line);

} // namespace snugwalk

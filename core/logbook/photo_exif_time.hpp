// SPDX-License-Identifier: Apache-2.0
// The time fields of Exif as text, and what they say together.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/time.hpp"

namespace snugwalk {

/// What a camera's clock showed, without a zone; the type is borrowed, it is not an instant in UTC.
struct CameraClock {
    Instant shown{};
};

/// "2026:11:24 21:10:00" with the fraction of a second apart ("25" = 0.25 s).
/// \returns nothing for blanks, zeros and impossible dates.
[[nodiscard]] std::optional<CameraClock> readCameraClock(std::string_view text, std::string_view fraction);
/// "2026-11-24 21:10:00".
[[nodiscard]] std::string clockText(CameraClock clock);

/// GPSDateStamp "2026:11:24" and hours, minutes, seconds, all UTC.
[[nodiscard]] std::optional<Instant> readGpsInstant(std::string_view date, double hours, double minutes,
                                                    double seconds);

/// The camera's clock with its offset ("+13:00") if it has one. Else the instant of the GPS; how far the
/// camera's clock is ahead of it, to the quarter hour, is then taken for the offset when it can be one.
[[nodiscard]] std::optional<LocalTime> settleTime(std::optional<CameraClock> clock, std::string_view offset,
                                                  std::optional<Instant> gps);

} // namespace snugwalk

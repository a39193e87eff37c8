// SPDX-License-Identifier: Apache-2.0
// The makers of position sources.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "position_source.hpp"

namespace snugwalk {

/// The machine's receiver, or null where it has none: then positions are typed by hand.
[[nodiscard]] std::unique_ptr<PositionSource> systemPosition();

/// Replays an NMEA 0183 log in the time it was recorded in. \returns `NotFound` or `Io`.
[[nodiscard]] Result<std::unique_ptr<PositionSource>> nmeaPosition(const std::string &file);

/// Gives all fixes at once when started, in their order: for tests and screenshots.
[[nodiscard]] std::unique_ptr<PositionSource> recordedPosition(std::vector<Fix> fixes);

/// The last fix of a log, given at once. \returns errors of `parseNmea` and of reading the file.
[[nodiscard]] Result<std::unique_ptr<PositionSource>> lastOfNmea(const std::string &file);

} // namespace snugwalk

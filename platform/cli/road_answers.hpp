// SPDX-License-Identifier: Apache-2.0
// What the road commands share: options of a sensor, reading logs.
#pragma once

#include <string>
#include <vector>

#include "base/estimate.hpp"
#include "base/value.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "road/accel/roughness_meter.hpp"

namespace snugwalk::cli {

/// How a log of a sensor is to be read.
struct SensorOptions {
    std::string unit;   ///< "m/s2", "g" or empty
    std::string track;  ///< a GPX or NMEA file that tells the speed
    std::string starts; ///< RFC 3339 time of second 0
    std::string location = "unknown";
    double speed = 0.0; ///< km/h, 0 for none
    double scale = 0.0; ///< 0 for the golden car's
    double exponent = 0.5;
    double rate = 0.0; ///< 0 for the log's own
};
void addSensorOptions(CLI::App &command, SensorOptions &options);

/// A log as it was understood.
struct LogRoughness {
    RoughnessOptions options;
    RoughnessResult result;
    std::vector<std::string> warnings;
    std::vector<std::string> defaulted;
    double from = 0.0, to = 0.0; ///< seconds, as the log counts
    std::string firstGap;        ///< "FILE, line 12", empty without any
};
using WindowSink = std::function<void(const RoughnessWindow &)>;

/// Reads logs that follow each other as one; `InvalidInput` when nothing could be analysed. `fallbackSpeed`
/// in m/s serves where neither the log nor a track tells the speed, `fallbackStart` in seconds where times
/// are counted from a start.
[[nodiscard]] Result<LogRoughness> roughnessOfLogs(const std::vector<std::string> &files,
                                                   const SensorOptions &options, double fallbackSpeed,
                                                   double fallbackStart, const WindowSink &onWindow);

/// The median with its range, and what to mind.
[[nodiscard]] Estimate roughnessEstimate(const LogRoughness &log);
[[nodiscard]] Value roughnessValue(const LogRoughness &log);
[[nodiscard]] std::string roughnessText(const LogRoughness &log);

} // namespace snugwalk::cli

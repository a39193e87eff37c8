// SPDX-License-Identifier: Apache-2.0
// Taking files in: tracks, accelerometer logs and weather records, read whole before anything is written.
#pragma once

#include <atomic>
#include <optional>
#include <string>
#include <vector>

#include "logbook/acts.hpp"
#include "road/accel/roughness_meter.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"

namespace snugwalk {

enum class IntakeKind { Track, Shake, Weather };

/// What a person asked for.
struct IntakeWish {
    IntakeKind kind = IntakeKind::Track;
    std::string file;
    RoadClass road = RoadClass::Unknown; ///< of a track
    std::optional<Trip> trip;            ///< the trip a log of shaking belongs to
    std::string speedFile;               ///< a track that tells its speed; may be empty
    std::string sensor = "unknown";      ///< rig, tow_vehicle, unknown
    std::optional<GeoPoint> place;       ///< of a weather record that does not say
    std::optional<int> year;             ///< of a weather file without one
    ZoneOffset offset;
};

/// How far reading has come; written by the reader, read by whoever looks on.
struct IntakeWatch {
    std::atomic<bool> stop{false};
    std::atomic<long long> read{0};
    std::atomic<long long> size{0}; ///< 0 until known
};

/// What was read; one of the three.
struct IntakeFound {
    std::optional<Trip> trip; ///< new, or the one that was measured
    std::optional<WeatherRecord> weather;
    std::optional<RoughnessResult> shake;
    bool speedAssumed = false; ///< nothing told the speed: the trip's mean was taken
    std::vector<Drop> drops;
    int gaps = 0;
};

/// Reads on the thread that calls; touches no logbook. A file of any size is read a portion at a time, tracks
/// to 64 MiB and weather to 16 MiB.
/// \returns errors of the readers with their line, `NotFound`, `Io`; whatever, once `watch.stop` is set.
[[nodiscard]] Result<IntakeFound> readIntake(const IntakeWish &wish, IntakeWatch &watch);

/// One act, on the disk when it returns. `Conflict` when it is there already.
[[nodiscard]] Result<Id> writeIntake(Logbook &book, const IntakeFound &found, const Id &rig,
                                     const Doer &doer);

} // namespace snugwalk

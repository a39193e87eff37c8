// SPDX-License-Identifier: Apache-2.0
// A journey of the rig, and a time it stood somewhere.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/id.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// What the wheels ran on; worse roads wear a rig sooner.
enum class RoadClass { Unknown, Smooth, Broken, Gravel, Washboard, Track };

/// Stable lower-case name, for instance `washboard`, and back.
[[nodiscard]] std::string_view roadClassName(RoadClass road);
[[nodiscard]] std::optional<RoadClass> findRoadClass(std::string_view name);

/// Part of a track that was left out, and why: `no_time`, `bad_position`, `poor_accuracy`,
/// `impossible_speed`, `time_backwards`, `bad_checksum`, `malformed`, `no_fix`, `too_long`.
struct Drop {
    std::string reason;
    long long count = 0;
    std::string firstWhere; ///< "line 12" of the file, or "fix 12" counted from 1
    friend bool operator==(const Drop &, const Drop &) = default;
};

/// A halt of five minutes or more.
struct StopOver {
    Instant from{};
    Instant to{};
    GeoPoint place;
    friend bool operator==(const StopOver &, const StopOver &) = default;
};

/// What a track comes to. An empty optional is not known, never zero.
struct TrackSummary {
    Distance length;
    Distance inferred; ///< the part of `length` that is a straight line over a gap
    std::optional<Instant> start, end;
    std::optional<GeoPoint> first, last;
    std::optional<Length> ascent, descent, lowest, highest;
    std::vector<StopOver> stops;
    long long fixesRead = 0;
    long long fixesKept = 0;
    std::vector<Drop> drops;
    int gaps = 0;
    friend bool operator==(const TrackSummary &, const TrackSummary &) = default;
};

/// Stretches of `RoadMeasure::along` at most.
inline constexpr std::size_t alongLimit = 128;

/// What an accelerometer on the way said. Roughness is in m/km on the scale of the international
/// roughness index; until a stretch of known index has set that scale it is an index of this rig alone.
struct RoadMeasure {
    Distance analysed; ///< the part of the way that could be used
    double medianRoughness = 0.0;
    double p90 = 0.0; ///< nine tenths of the analysed way are no rougher
    /// Mean over the analysed way of (roughness / 2 m/km)^m, for m of 2, 4 and 6.
    std::array<double, 3> dose{};
    double consumption = 1.0; ///< mean by which an interval of distance is used up, 1 on a smooth road
    std::string sensorLocation = "unknown"; ///< `rig`, `tow_vehicle` or `unknown`
    bool calibrated = false;
    bool clipped = false; ///< the sensor met its rails: a lower bound
    /// Means of stretches of `alongStep` from where the log began, by distance; nothing where none was
    /// analysed. At most `alongLimit`.
    std::vector<std::optional<double>> along;
    Distance alongStep;
    friend bool operator==(const RoadMeasure &, const RoadMeasure &) = default;
};

/// Points of `Trip::outline` at most.
inline constexpr std::size_t outlineLimit = 500;

struct Trip {
    Id id;
    Id rig;
    std::string title;
    RoadClass road = RoadClass::Unknown;
    LocalTime start;
    LocalTime end;
    TrackSummary summary;
    std::string sourceName;        ///< the file it was read from, empty when written by hand
    std::vector<GeoPoint> outline; ///< simplified, for a sketch only: never measured
    std::string note;
    std::optional<RoadMeasure> measured; ///< nothing where no log was read
    friend bool operator==(const Trip &, const Trip &) = default;
};

struct Stay {
    Id id;
    Id rig;
    LocalTime from;
    std::optional<LocalTime> to; ///< still there when empty
    GeoPoint place;
    bool covered = false; ///< under a roof or cover, out of sun and rain
    std::string name;
    friend bool operator==(const Stay &, const Stay &) = default;
};

} // namespace snugwalk

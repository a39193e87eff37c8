// SPDX-License-Identifier: Apache-2.0
// The roughness of a day's roads from its accelerometer log, in one pass and fixed memory.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "road/accel/along_way.hpp"
#include "road/accel/log_histogram.hpp"
#include "road/accel/resampler.hpp"
#include "road/accel/roughness.hpp"
#include "road/accel/shake_watch.hpp"
#include "road/accel/vertical.hpp"
#include "road/series/band_pass.hpp"
#include "trip/trip.hpp"

namespace snugwalk {

struct RoughnessOptions {
    double rate = 100.0; ///< even samples a second, at least 50
    double scale = goldenScale;
    double exponent = 0.5; ///< of speed
    bool calibrated = false;
    std::string sensorLocation = "unknown";
};

/// A stretch of about 100 m, or of 5 s where the speed is unknown.
struct RoughnessWindow {
    double from = 0.0, to = 0.0; ///< seconds, as the log counts
    double distance = 0.0;       ///< metres, 0 where the speed is unknown
    double speed = 0.0;          ///< mean, m/s, 0 where unknown
    double rms = 0.0;            ///< of the vertical, 0.5 to 20 Hz, m/s^2
    double index = 0.0;          ///< m/km
};

struct RoughnessResult {
    long long windows = 0;
    long long slow = 0;             ///< windows left out: under 20 km/h
    long long uneven = 0;           ///< left out: the speed changed by a fifth or more
    long long handled = 0;          ///< left out: somebody had the sensor in hand, or it was knocked
    double median = 0.0, p90 = 0.0; ///< m/km, weighed by distance
    std::array<double, 3> dose{};   ///< mean of (index / 2)^m for m 2, 4, 6
    double consumption = 1.0;
    Distance analysed, driven; ///< zero where no speed is known
    double seconds = 0.0;      ///< in the log, gaps left out
    double secondsAnalysed = 0.0;
    int gaps = 0;
    double firstGapAt = 0.0;   ///< seconds, as the log counts
    bool speedKnown = false;   ///< of any window
    bool speedUnknown = false; ///< of some window: its index is as at 80 km/h
    bool clipped = false;
    std::vector<std::optional<double>> along; ///< as in `RoadMeasure`
    Distance alongStep;
    [[nodiscard]] double coverage() const
    {
        return driven.si() > 0.0 ? analysed / driven : seconds > 0.0 ? secondsAnalysed / seconds : 0.0;
    }
};

/// Even steps, gravity by a low-pass of 10 s, the part along it, 0.5 to 20 Hz by a Butterworth filter of
/// order 4, windows, rms, index = scale * rms * (80 km/h / speed)^0.5.
///
/// Left out: the first 2 s of each run, in which the filters settle; windows slower than 20 km/h, or whose
/// speed spans a fifth of its mean; windows in which gravity's direction turned by more than 10 degrees
/// within 2 s, or with a single knock over 25 m/s^2 shorter than 30 ms.
///
/// Source:   pipeline and limits: common practice; filter [BUTTERWORTH-1930]
/// Accuracy: as `roughnessIndex`
/// Limits:   50 Hz or more; a sensor in the tow vehicle measures the tow vehicle
/// Tests:    tests/unit/road/tst_roughness_meter.cpp, tests/property/road/tst_road_laws.cpp
class RoughnessMeter {
public:
    /// \returns `OutOfRange` for a rate outside 50 to 10,000 or a scale that is none.
    [[nodiscard]] static Result<RoughnessMeter> make(const RoughnessOptions &options);

    /// Samples in order of time, as logged.
    void add(const AccelSample &sample);
    [[nodiscard]] RoughnessResult finish();

    /// Called for each window kept, and for each block of the filtered vertical, m/s^2.
    std::function<void(const RoughnessWindow &)> onWindow;
    std::function<void(std::span<const double>)> onVertical;

private:
    RoughnessMeter(const RoughnessOptions &options, BandPass4 filter);
    void takeEven(const AccelSample &sample);
    void takeBlock();
    void startRun();
    void walk(std::span<const double> vertical);
    std::size_t walkOn(std::span<const double> vertical, std::size_t from);
    void closeWindow();
    void keep(RoughnessWindow window);

    struct OpenWindow {
        double start = 0.0;  ///< seconds
        double speeds = 0.0; ///< sum
        double squares = 0.0;
        double slowest = 0.0, fastest = 0.0;
        long long samples = 0;
        bool known = false; ///< the speed
        ShakeEvents events;
    };

    RoughnessOptions m_options;
    Resampler m_resampler;
    Vertical m_vertical;
    BandPass4 m_filter;
    ShakeWatch m_watch;
    VerticalBlock m_block;
    std::vector<double> m_speeds;
    double m_blockStart = 0.0; ///< seconds
    OpenWindow m_open;
    ShakeEvents m_events;     ///< of the block at hand
    long long m_settling = 0; ///< samples still to pass
    long long m_samples = 0;
    double m_driven = 0.0, m_analysed = 0.0, m_weight = 0.0;
    double m_consumption = 0.0;
    std::array<double, 3> m_dose{};
    LogHistogram m_indices;
    AlongWay m_along;
    RoughnessResult m_result;
};

/// What a trip keeps of it; nothing when no way was analysed.
[[nodiscard]] std::optional<RoadMeasure> measureOf(const RoughnessResult &result,
                                                   const RoughnessOptions &options);

} // namespace snugwalk

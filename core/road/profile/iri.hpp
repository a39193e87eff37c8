// SPDX-License-Identifier: Apache-2.0
// The international roughness index of a measured profile, by the golden car.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "base/quantity.hpp"
#include "base/result.hpp"
#include "road/profile/golden_car.hpp"

namespace snugwalk {

/// A stretch of the profile that ends whole, or at a gap or the end.
struct IriSegment {
    Distance from, to;
    double iri = 0.0; ///< m/km
};

struct IriResult {
    double iri = 0.0;  ///< m/km over everything analysed
    Distance analysed; ///< without the 11 m after each gap
    long long points = 0;
    int gaps = 0;
    bool tooShort = false; ///< under 11 m: the car had no run-up
    std::vector<IriSegment> segments;
};

/// Takes elevations one by one and keeps no more than 11 m of them, whatever comes.
///
/// The slope over the 250 mm that a tire bridges, (y[i+k] - y[i]) / (k dx) with k = floor(0.25/dx + 0.5),
/// drives the car (k = 1 from a spacing of 0.167 m on); the car starts on the mean slope of the first 11 m,
/// half a second at 80 km/h; the mean of |body - wheel| over all slopes is the index. After a gap it starts
/// anew, and 11 m do not count.
///
/// Source:   [ASTM-E1926], [SAYERS-1986] World Bank Technical Paper 46; constants as read in open software
/// Accuracy: 1e-9 of the same method in another program; what spacing and interpolation of a profile
///           do to it is up to 9 %, so show one decimal
/// Limits:   spacing 0.01 to 0.6 m; waves of 1.2 to 30 m; independent of the speed driven by definition
/// Tests:    tests/published/road/tst_road_iri.cpp, tests/unit/road/tst_iri.cpp
class IriMeter {
public:
    /// \param segment length of the stretches told apart, 20 m and 100 m being common.
    /// \returns `OutOfRange` for a spacing outside 0.01 to 0.6 m or a segment shorter than the spacing.
    [[nodiscard]] static Result<IriMeter> make(Length spacing, Length segment);

    /// The next elevation in metres, one spacing further; must be finite.
    void add(double elevation);
    /// Elevations are missing here; the next one is `length` after the last.
    void gap(Distance length);
    /// \returns `InvalidInput` when nothing could be analysed: fewer than two points, or no run of points
    /// longer than 11 m after the gaps.
    [[nodiscard]] Result<IriResult> finish();

private:
    IriMeter(Length spacing, Length segment);
    void addSlope(double slope);
    void startCar();
    void ride(double slope);
    void count(double travel);
    void closeSegment();
    void closeRun();

    double m_dx;
    std::size_t m_box; ///< k
    std::size_t m_runUp;
    double m_segment;
    CarStep m_step;
    std::vector<double> m_recent; ///< ring of the last k elevations
    std::vector<double> m_first;  ///< slopes of the first 11 m, until the car starts
    CarState m_car{};
    bool m_started = false;
    bool m_afterGap = false;
    std::size_t m_held = 0;   ///< elevations since the run began
    std::size_t m_unused = 0; ///< slopes still to pass before counting
    double m_runStart = 0.0;  ///< metres from the beginning
    std::size_t m_slopes = 0; ///< slopes since the run began
    double m_segmentSum = 0.0;
    std::size_t m_segmentCount = 0;
    double m_segmentFrom = 0.0;
    double m_sum = 0.0;
    long long m_counted = 0;
    IriResult m_result;
};

/// The same of a whole profile.
[[nodiscard]] Result<IriResult> iriOf(const std::vector<double> &elevations, Length spacing,
                                      Length segment = Length::fromSi(100.0));

} // namespace snugwalk

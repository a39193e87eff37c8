// SPDX-License-Identifier: Apache-2.0
// Chances of wet hours.
#include "weather/laws/wetness.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/units.hpp"
#include "weather/laws/freeze_thaw.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/normal_share.hpp"

namespace snugwalk {
namespace {

constexpr double wetPercent = 80.0;
constexpr TemperatureDifference dewGapScatter = TemperatureDifference::fromSi(4.0);
constexpr int hours = 24;

// The dew point that makes this air 80 % humid.
Temperature wetDewPoint(Temperature air)
{
    const Temperature held = std::clamp(air, celsius(-40.0), celsius(50.0));
    return dewPoint(held, wetPercent).value();
}

} // namespace

bool isWetHour(Temperature air, double humidity) { return humidity > wetPercent && air > celsius(0.0); }

Result<int> wetnessClass(double hoursOfYear)
{
    if (!(hoursOfYear >= 0.0 && hoursOfYear <= 8784.0))
        return Error{Errc::OutOfRange, "no year has that many hours", "hours", "give 0 to 8,784"};
    constexpr std::array bounds = {10.0, 250.0, 2500.0, 5500.0};
    return 1 + static_cast<int>(std::lower_bound(bounds.begin(), bounds.end(), hoursOfYear) - bounds.begin());
}

double expectedWetHours(Temperature low, Temperature high, double meanHumidity)
{
    const Temperature middle = low + (high - low) / 2.0;
    const Temperature held = std::clamp(middle, celsius(-40.0), celsius(50.0));
    const Temperature dew = dewPoint(held, std::clamp(meanHumidity, 1.0, 100.0)).value();
    double wet = 0.0;
    for (int hour = 0; hour < hours; ++hour) {
        const double swing = std::cos(2.0 * std::numbers::pi * (hour + 0.5) / hours);
        const Temperature air = middle + (high - low) * (swing / 2.0);
        wet += normalShare((dew - wetDewPoint(air)) / dewGapScatter) *
               normalShare((air - celsius(0.0)) / dayScatter);
    }
    return wet;
}

} // namespace snugwalk

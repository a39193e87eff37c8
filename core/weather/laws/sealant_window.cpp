// SPDX-License-Identifier: Apache-2.0
// Three limits.
#include "weather/laws/sealant_window.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/units.hpp"
#include "weather/laws/humidity.hpp"

namespace snugwalk {
namespace {

constexpr int dayParts = 96; // quarters of an hour

SealantWindow judge(Temperature air, Temperature surface, Temperature dew)
{
    SealantWindow window;
    window.dewPoint = dew;
    window.aboveDew = surface - dew;
    window.tooCold = std::min(air, surface) < celsius(sealantColdest);
    window.tooHot = std::max(air, surface) > celsius(sealantHottest);
    window.tooDamp = window.aboveDew.si() < sealantAboveDew;
    return window;
}

} // namespace

Result<SealantWindow> sealantWindow(Temperature air, double humidity, std::optional<Temperature> surface)
{
    const Result<Temperature> dew = dewPoint(air, humidity);
    if (!dew)
        return dew.error();
    if (surface && !(*surface >= celsius(-40.0) && *surface <= celsius(90.0)))
        return Error{Errc::OutOfRange, "no surface is that cold or hot", "surface", "give -40 °C to 90 °C"};
    return judge(air, surface.value_or(air), *dew);
}

double sealantHours(Temperature low, Temperature high, double meanHumidity)
{
    const Temperature middle = low + (high - low) / 2.0;
    const Result<Temperature> dew = dewPoint(middle, meanHumidity);
    if (!dew)
        return 0.0;
    int open = 0;
    for (int i = 0; i < dayParts; ++i) {
        const double swing = std::cos(2.0 * std::numbers::pi * (i + 0.5) / dayParts);
        const Temperature air = middle + (high - low) * (swing / 2.0);
        open += judge(air, air, *dew).open() ? 1 : 0;
    }
    return 24.0 * open / dayParts;
}

} // namespace snugwalk

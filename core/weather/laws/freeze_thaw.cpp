// SPDX-License-Identifier: Apache-2.0
// A switch with hysteresis, fed twice a day.
#include "weather/laws/freeze_thaw.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "weather/laws/normal_share.hpp"

namespace snugwalk {
namespace {} // namespace

int FreezeThawCounter::take(Temperature t)
{
    if (t < m_limits.frozen) {
        m_joint = Joint::Frozen;
        return 0;
    }
    if (!(t > m_limits.thawed))
        return 0;
    const int ended = m_joint == Joint::Frozen ? 1 : 0;
    m_joint = Joint::Thawed;
    return ended;
}

int FreezeThawCounter::add(const DayRange &day, bool highFirst)
{
    const auto [low, high] = std::minmax(day.low, day.high);
    const int first = take(highFirst ? high : low);
    return first + take(highFirst ? low : high);
}

Result<FreezeThaw> freezeThaw(std::span<const std::optional<DayRange>> days, FrostLimits limits)
{
    if (!(limits.frozen <= limits.thawed))
        return Error{Errc::InvalidInput, "frozen above thawed", "limits", "give the lower limit first"};
    FreezeThaw out;
    FreezeThawCounter counter(limits);
    FreezeThawCounter other(limits);
    for (const auto &day : days) {
        if (!day) {
            ++out.missing;
            counter.forget();
            other.forget();
            continue;
        }
        ++out.days;
        out.swapped += day->low > day->high ? 1 : 0;
        out.cycles += counter.add(*day);
        out.highFirst += other.add(*day, true);
    }
    return out;
}

double expectedFreezeThaw(DayRange normal, FrostLimits limits, TemperatureDifference scatter)
{
    const double freezes = normalShare((limits.frozen - normal.low) / scatter);
    const double staysFrozen = normalShare((limits.thawed - normal.high) / scatter);
    return std::max(0.0, freezes - staysFrozen);
}

} // namespace snugwalk

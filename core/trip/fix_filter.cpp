// SPDX-License-Identifier: Apache-2.0
// The tests a fix has to pass, cheapest first.
#include "trip/fix_filter.hpp"

#include <algorithm>
#include <chrono>

#include "trip/geodesic.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;

constexpr double worstAccuracy = 25.0; // metres
constexpr double metresPerHdop = 5.0;
constexpr double topSpeed = 60.0; // metres a second; no trailer is faster
constexpr auto longestStep = minutes(10);
constexpr double widestStep = 2000.0; // metres
constexpr std::size_t jury = 10;

double secondsBetween(const Fix &a, const Fix &b) { return duration<double>(b.time - a.time).count(); }

std::optional<std::string_view> faultOf(const Fix &fix)
{
    if (!isValid(fix.point))
        return "bad_position";
    const auto accuracy = accuracyOf(fix);
    if (accuracy && !(*accuracy <= worstAccuracy)) // NaN is no accuracy either
        return "poor_accuracy";
    return std::nullopt;
}

std::optional<std::string_view> stepFault(const Fix &a, const Fix &b)
{
    const double seconds = secondsBetween(a, b);
    if (!(seconds > 0.0))
        return "time_backwards";
    if (stepBetween(a.point, b.point).si() > topSpeed * seconds)
        return "impossible_speed";
    return std::nullopt;
}

} // namespace

std::optional<double> accuracyOf(const Fix &fix)
{
    if (fix.point.accuracy)
        return fix.point.accuracy->si();
    return fix.hdop ? std::optional(*fix.hdop * metresPerHdop) : std::nullopt;
}

bool isGap(const Fix &a, const Fix &b)
{
    return b.time - a.time > longestStep || stepBetween(a.point, b.point).si() > widestStep;
}

// The most frequent fault between this fix and those after it, when that is most of them.
std::optional<std::string_view> FixFilter::disputed(std::size_t index) const
{
    std::size_t heard = 0;
    std::size_t tooFast = 0;
    std::size_t backwards = 0;
    for (std::size_t i = index + 1; i < m_fixes.size() && i <= index + jury; ++i) {
        if (faultOf(m_fixes[i]))
            continue;
        ++heard;
        // Equal times are a coarse clock, no quarrel.
        if (m_fixes[i].time < m_fixes[index].time)
            ++backwards;
        else if (stepFault(m_fixes[index], m_fixes[i]) == "impossible_speed")
            ++tooFast;
    }
    if (heard < 3 || 2 * (tooFast + backwards) <= heard)
        return std::nullopt;
    return tooFast > backwards ? "impossible_speed" : "time_backwards";
}

std::optional<std::string_view> FixFilter::judge(std::size_t index)
{
    const Fix &fix = m_fixes[index];
    if (const auto fault = faultOf(fix))
        return fault;
    if (m_last) {
        if (const auto fault = stepFault(*m_last, fix))
            return fault;
    }
    if (!m_last || isGap(*m_last, fix)) {
        if (const auto fault = disputed(index))
            return fault;
    }
    m_last = fix;
    return std::nullopt;
}

} // namespace snugwalk

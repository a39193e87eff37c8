// SPDX-License-Identifier: Apache-2.0
// Times of the trade, stretched by what the air holds.
#include "bench/joints/cure.hpp"

#include <algorithm>
#include <array>

#include "base/units.hpp"
#include "weather/laws/humidity.hpp"

namespace snugwalk {
namespace {

constexpr double minute = 60.0;
constexpr double day = 86400.0;
constexpr double year = 365.2425 * day;
constexpr Length usualBead = millimetres(6.0);
constexpr double fastest = 0.5;
constexpr double slowest = 4.0;

struct Times {
    double low, value, high;
};
constexpr Times skinTimes{10 * minute, 30 * minute, 60 * minute};
constexpr Times rainTimes{60 * minute, 60 * minute, day};
constexpr Times fullTimes{3 * day, 5 * day, 7 * day};
constexpr std::array lives = {Times{4, 5, 7}, Times{5, 6, 9}, Times{7, 8, 10}};

Estimate commonPractice(const Times &t, double factor)
{
    Estimate e;
    e.value = t.value * factor;
    e.low = t.low * factor;
    e.high = t.high * factor;
    e.unit = "s";
    e.basis = "common_practice";
    e.source = "CP";
    return e;
}

} // namespace

Result<CureTimes> cureTimes(Length depth, Temperature air, double humidity)
{
    if (!(depth >= millimetres(1.0) && depth <= millimetres(25.0)))
        return Error{Errc::OutOfRange, "no bead is that deep", "depth", "give 1 mm to 25 mm (1 in)"};
    if (!(air >= celsius(4.0) && air <= celsius(50.0)))
        return Error{Errc::OutOfRange, "sealant does not cure there as its label says", "temperature",
                     "give 4 °C to 50 °C (40 °F to 122 °F)"};
    const auto dew = dewPoint(air, humidity);
    if (!dew)
        return dew.error();
    const double usual = saturationPressure(celsius(23.0)).si() * 0.5;
    const double factor = std::clamp(usual / saturationPressure(*dew).si(), fastest, slowest);
    const double deep = std::max(1.0, depth / usualBead);
    CureTimes times{commonPractice(fullTimes, factor * deep * deep), commonPractice(skinTimes, factor),
                    commonPractice(rainTimes, factor)};
    if (factor >= slowest)
        times.full.warnings.emplace_back("slow_cure");
    return times;
}

std::optional<RoofClimate> parseRoofClimate(std::string_view text)
{
    constexpr auto slugs = std::to_array<std::string_view>({"hot", "mixed", "mild"});
    const auto *found = std::find(slugs.begin(), slugs.end(), text);
    if (found == slugs.end())
        return std::nullopt;
    return static_cast<RoofClimate>(found - slugs.begin());
}

Result<Estimate> sealantLife(Length height, RoofClimate climate)
{
    if (!(height >= millimetres(0.5) && height <= millimetres(100.0)))
        return Error{Errc::OutOfRange, "no bead is that thick", "height", "give 0.5 mm to 100 mm"};
    Estimate life = commonPractice(lives.at(static_cast<std::size_t>(climate)), year);
    if (height < usualBead * 0.95) { // 1/4 in and 6 mm are one bead
        life.low *= height / usualBead;
        life.warnings.emplace_back("thin_bead");
    }
    return life;
}

} // namespace snugwalk

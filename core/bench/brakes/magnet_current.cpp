// SPDX-License-Identifier: Apache-2.0
// One division and one band.
#include "bench/brakes/magnet_current.hpp"

#include <array>
#include <cmath>
#include <string>

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr auto callSlugs = std::to_array<std::string_view>({"within", "low", "high", "none"});
constexpr double mostOver = 0.20;
constexpr double mostUnder = -0.30;
constexpr double meterDoubt = 0.03; // common practice, no source
constexpr double noCurrent = 0.1;   // A, the hold list's
constexpr double ohmsDiffer = 0.15; // common practice, no source
constexpr double leastVolts = 12.0; // common practice, no source
constexpr double mostVolts = 13.5;
constexpr double rounding = 1e-12;
// What one magnet commonly draws at 12 to 13 V, A: 6.3 to 6.8 a pair, and 12 V over 3 to 4 ohm. No source.
struct Common {
    double low, high;
};
constexpr Common smallMagnet{3.15, 3.4};
constexpr Common largeMagnet{3.0, 4.0};

Status checkReading(const MagnetReading &r)
{
    SNUG_TRY(within(0.0, r.total.si(), 200.0,
                    {Errc::OutOfRange, "no trailer's brakes draw that", "total", "give it in ampere"}));
    SNUG_TRY(within(1, r.magnets, 12,
                    {Errc::OutOfRange, "no trailer has that many brakes", "magnets", "give 1 to 12"}));
    if (r.maker)
        SNUG_TRY(within(0.5, r.maker->si(), 10.0,
                        {Errc::OutOfRange, "no magnet draws that", "maker",
                         "give the maker's figure for one magnet, such as 3.75 A"}));
    if (r.volts)
        SNUG_TRY(within(6.0, r.volts->si(), 16.0,
                        {Errc::OutOfRange, "not a 12 V circuit", "volts", "give 6 to 16 V"}));
    if (r.resistance)
        SNUG_TRY(within(0.5, r.resistance->si(), 20.0,
                        {Errc::OutOfRange, "no magnet measures that", "resistance",
                         "give one magnet's, unplugged, such as 3.2 ohm"}));
    return done();
}

Estimate figureOf(const MagnetReading &r)
{
    if (r.maker)
        return around(r.maker->si(), 0.0, {"A", "maker", "brake maker"});
    const Common &common = r.size == MagnetSize::Small ? smallMagnet : largeMagnet;
    return between(common.low, (common.low + common.high) / 2.0, common.high, {"A", "common_practice", "CP"});
}

MagnetCall callOf(double each, double deviation)
{
    if (each < noCurrent)
        return MagnetCall::None;
    if (deviation < mostUnder - rounding)
        return MagnetCall::Low;
    return deviation > mostOver + rounding ? MagnetCall::High : MagnetCall::WithinMaker;
}

void addWarnings(const MagnetReading &r, MagnetDraw &draw)
{
    auto &warnings = draw.each.warnings;
    if (draw.call != MagnetCall::WithinMaker)
        warnings.push_back("magnet_" + std::string(slug(draw.call)));
    if (!r.maker)
        warnings.emplace_back("not_makers_figure");
    if (r.volts && (r.volts->si() < leastVolts || r.volts->si() > mostVolts))
        warnings.emplace_back("volts_outside");
    if (draw.expected &&
        std::fabs(draw.each.value - draw.expected->value) > ohmsDiffer * draw.expected->value)
        warnings.emplace_back("differs_from_ohms");
}

} // namespace

std::string_view slug(MagnetCall call) { return callSlugs.at(static_cast<std::size_t>(call)); }

Result<MagnetDraw> magnetDraw(const MagnetReading &r)
{
    SNUG_TRY(checkReading(r));
    MagnetDraw draw;
    const double each = r.total.si() / r.magnets;
    draw.figure = figureOf(r);
    const double deviation = each / draw.figure.value - 1.0;
    draw.each = around(each, meterDoubt * each, {"A", "measured", r.maker ? "PA-TRAILER" : "CP"});
    draw.deviation =
        around(deviation, meterDoubt * each / draw.figure.value, {"1", "computed", draw.figure.source});
    if (r.volts && r.resistance) {
        const double expected = r.volts->si() / r.resistance->si();
        draw.expected = around(expected, meterDoubt * expected, {"A", "computed", "Ohm's law"});
    }
    draw.call = callOf(each, deviation);
    addWarnings(r, draw);
    return draw;
}

} // namespace snugwalk

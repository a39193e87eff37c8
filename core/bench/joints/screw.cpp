// SPDX-License-Identifier: Apache-2.0
// Numbered screws: shank, snug, withdrawal.
#include "bench/joints/screw.hpp"

#include <array>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double inch = 0.0254;
constexpr double poundForce = 0.45359237 * 9.80665;
constexpr double number8Snug = 17.5 * poundForce * inch;
constexpr double snugDoubt = 2.5 / 17.5;
constexpr double pullDoubt = 0.25;
constexpr double wetShare = 0.75;
constexpr double wetFrom = 0.20;
constexpr std::array kept = {4, 6, 8, 10, 12, 14};

Status checkScrew(const Screw &s)
{
    if (s.number < kept.front() || s.number > kept.back())
        return Error{Errc::OutOfRange, "no such screw here", "screw",
                     "give a number from 4 to 14, such as #8"};
    if (!(s.thread >= millimetres(1.0) && s.thread <= millimetres(150.0)))
        return Error{Errc::OutOfRange, "no thread is that long", "thread", "give 1 to 150 mm (6 in)"};
    if (!(s.gravity >= 0.3 && s.gravity <= 0.7))
        return Error{Errc::OutOfRange, "the law of withdrawal does not reach there", "wood",
                     "give the wood's gravity from 0.3 to 0.7, such as 0.42"};
    if (!(s.moisture >= 0.0 && s.moisture <= 1.0))
        return Error{Errc::OutOfRange, "no wood is that damp", "moisture", "give 0 to 100 %"};
    if (s.makerTorque && !(s.makerTorque->si() > 0.0 && s.makerTorque->si() <= 100.0))
        return Error{Errc::OutOfRange, "no screw of that size takes it", "torque", "give up to 100 N·m"};
    return done();
}

Estimate figure(double value, double doubt, const char *unit, const char *basis, const char *source)
{
    Estimate e;
    e.value = value;
    e.low = value * (1.0 - doubt);
    e.high = value * (1.0 + doubt);
    e.unit = unit;
    e.basis = basis;
    e.source = source;
    return e;
}

Estimate snugOf(const Screw &s, Length shank, Length shank8)
{
    if (s.makerTorque)
        return figure(s.makerTorque->si(), 0.0, "N·m", "maker", "maker");
    return figure(number8Snug * std::pow(shank / shank8, 3.0), snugDoubt, "N·m", "common_practice", "CP");
}

} // namespace

Result<Length> screwDiameter(int number)
{
    if (number < 0 || number > 24)
        return Error{Errc::OutOfRange, "no such screw", "screw", "give a number from 0 to 24, such as #8"};
    return metres((0.060 + 0.013 * number) * inch);
}

Result<int> nextScrew(int number)
{
    for (const int n : kept) {
        if (n > number)
            return n;
    }
    return Error{Errc::NotFound, "no thicker screw is kept", "screw",
                 "plug the hole with a glued hardwood dowel and drill it again"};
}

Result<ScrewHold> screwHold(const Screw &screw)
{
    SNUG_TRY(checkScrew(screw));
    const Length shank = screwDiameter(screw.number).value();
    const double inchesOfThread = screw.thread.si() / inch;
    double pounds = 15700.0 * screw.gravity * screw.gravity * (shank.si() / inch) * inchesOfThread;
    const bool wet = screw.moisture > wetFrom;
    if (wet)
        pounds *= wetShare;
    ScrewHold hold;
    hold.snug = snugOf(screw, shank, screwDiameter(8).value());
    hold.pull = figure(pounds * poundForce, pullDoubt, "N", "published", "WOOD-HANDBOOK");
    hold.design = figure(pounds * poundForce / 5.0, 0.0, "N", "common_practice", "WOOD-HANDBOOK; CP");
    hold.design.high = pounds * poundForce / 4.0;
    hold.nextThread = screw.thread + metres(0.5 * inch);
    if (wet)
        hold.pull.warnings.emplace_back("wet_wood");
    return hold;
}

} // namespace snugwalk

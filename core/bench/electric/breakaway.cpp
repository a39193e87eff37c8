// SPDX-License-Identifier: Apache-2.0
// Peukert's law with the doubt of its exponent.
#include "bench/electric/breakaway.hpp"

#include <algorithm>
#include <cmath>

#include "base/units.hpp"
#include "bench/electric/battery.hpp"

namespace snugwalk {
namespace {

constexpr double usualLow = 1.1;
constexpr double usualHigh = 1.2;
constexpr double ageDoubt = 0.25;

Status checkBreakaway(const Breakaway &b)
{
    if (!(b.capacity.si() >= 1800.0 && b.capacity.si() <= 200 * 3600.0))
        return Error{Errc::OutOfRange, "no breakaway battery holds that", "capacity",
                     "give the label's figure, 0.5 to 200 A·h"};
    if (!(b.current.si() >= 0.1 && b.current.si() <= 100.0))
        return Error{Errc::OutOfRange, "no set of magnets draws that", "current",
                     "give all magnets together, 0.1 to 100 A; commonly 3 A each"};
    if (!(b.rating.si() >= 3600.0 && b.rating.si() <= 100 * 3600.0))
        return Error{Errc::OutOfRange, "no battery is rated over that", "rating",
                     "give 1 to 100 h, such as 20 h"};
    if (!(b.exponent >= 1.0 && b.exponent <= 1.4))
        return Error{Errc::OutOfRange, "no battery follows that", "exponent",
                     "give 1.0 to 1.4, such as 1.15"};
    if (!(b.battery >= celsius(-40.0) && b.battery <= celsius(60.0)))
        return Error{Errc::OutOfRange, "no battery is that cold or hot", "temperature", "give -40 to 60 °C"};
    if (!(b.charge >= 0.01 && b.charge <= 1.0))
        return Error{Errc::OutOfRange, "no such charge", "charge", "give 1 to 100 %"};
    return done();
}

double seconds(const Breakaway &b, double exponent)
{
    const double capacity = b.capacity.si() * b.charge * coldShare(b.battery);
    return b.rating.si() * std::pow(capacity / (b.current.si() * b.rating.si()), exponent);
}

} // namespace

Result<Estimate> breakawayHold(const Breakaway &battery)
{
    SNUG_TRY(checkBreakaway(battery));
    const double ends[] = {seconds(battery, std::min(usualLow, battery.exponent)),
                           seconds(battery, std::max(usualHigh, battery.exponent))};
    Estimate e;
    e.value = seconds(battery, battery.exponent);
    e.low = std::min({ends[0], ends[1], e.value}) * (1.0 - ageDoubt);
    e.high = std::max({ends[0], ends[1], e.value});
    e.unit = "s";
    e.basis = "computed";
    e.source = "PEUKERT-1897; CP";
    if (e.low < breakawayAsked.si())
        e.warnings.emplace_back("under_fifteen");
    return e;
}

} // namespace snugwalk

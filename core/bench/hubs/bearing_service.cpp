// SPDX-License-Identifier: Apache-2.0
// The stricter of two clocks.
#include "bench/hubs/bearing_service.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

// Common practice, no source.
constexpr int usualMonths = 12;
constexpr Distance strictDistance = miles(6000.0);
constexpr Distance laxDistance = miles(8000.0);
constexpr double secondsADay = 86400.0;
constexpr Distance mostDriven = kilometres(1e6);

Status checkClock(const BearingClock &c)
{
    if (!c.served.ok() || !c.today.ok() || c.served > c.today)
        return Error{Errc::InvalidInput, "the bearings cannot have been served after today", "served",
                     "give the date of the last service, such as 2026-03-14"};
    if (c.driven)
        SNUG_TRY(within(0.0, c.driven->si(), mostDriven.si(),
                        {Errc::OutOfRange, "no trailer drove that far since", "driven",
                         "give the distance since the last service, such as 3,200 mi"}));
    if (c.makerMonths)
        SNUG_TRY(within(1.0, *c.makerMonths, 120.0,
                        {Errc::OutOfRange, "no maker gives that many months", "months", "give 1 to 120"}));
    if (c.makerDistance)
        SNUG_TRY(within(1e5, c.makerDistance->si(), mostDriven.si(),
                        {Errc::OutOfRange, "no maker gives that distance", "distance",
                         "give it with its unit, such as 12,000 mi"}));
    return done();
}

} // namespace

Result<BearingDue> bearingDue(const BearingClock &c)
{
    SNUG_TRY(checkClock(c));
    const int months = c.makerMonths.value_or(usualMonths);
    const int counted = c.underWater ? std::max(1, months / 2) : months;
    const Distance strict = c.makerDistance.value_or(strictDistance);
    const Distance lax = c.makerDistance.value_or(laxDistance);

    BearingDue due;
    due.dueBy = addMonths(c.served, counted);
    const auto whole = static_cast<double>(daysBetween(c.served, due.dueBy));
    const auto gone = static_cast<double>(daysBetween(c.served, c.today));
    double share = gone / whole;
    double leastShare = share;
    if (c.driven) {
        due.distance = between(
            (strict - *c.driven).si(), (strict - *c.driven).si(), (lax - *c.driven).si(),
            {"m", c.makerDistance ? "maker" : "common_practice", c.makerDistance ? "axle maker" : "CP"});
        due.distanceFirst = *c.driven / strict > share;
        share = std::max(share, *c.driven / strict);
        leastShare = std::max(leastShare, *c.driven / lax);
    }
    const bool makers = due.distanceFirst ? c.makerDistance.has_value() : c.makerMonths.has_value();
    const char *basis = makers ? "maker" : "common_practice";
    const char *source = makers ? "axle maker" : "CP";
    due.share = between(leastShare, share, share, {"1", basis, source});
    const double left = (whole - gone) * secondsADay;
    due.time = around(
        left, 0.0, {"s", c.makerMonths ? "maker" : "common_practice", c.makerMonths ? "axle maker" : "CP"});
    if (share >= 1.0)
        due.share.warnings.emplace_back("service_due");
    if (c.underWater)
        due.share.warnings.emplace_back("under_water");
    if (!c.driven)
        due.share.warnings.emplace_back("distance_unknown");
    return due;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Two readings and what follows from their difference.
#include "bench/tires/tire_wear.hpp"

#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double thirtySecond = 0.0254 / 32.0;
constexpr double hair = 1e-9;                     // "7/32 in" less "6/32 in" is 1/32 in
constexpr double eightInTen = 1.2815515655446004; // normal quantile of 0.9
constexpr double gaugeDoubtPsi = 1.0;             // common practice, no source
constexpr double daysAMonth = 365.2425 / 12.0;
constexpr double leakShare = 0.05; // common practice, no source

Status checkDepth(Length depth, const char *where)
{
    if (depth.si() >= 0.0 && depth.si() <= 0.03)
        return done();
    return Error{Errc::OutOfRange, "no tread is that deep", where,
                 "give the depth with its unit, such as 7/32 in"};
}

} // namespace

Result<Estimate> treadLeft(const TreadReadings &r)
{
    SNUG_TRY(checkDepth(r.before, "before"));
    SNUG_TRY(checkDepth(r.now, "now"));
    SNUG_TRY(checkDepth(r.limit, "limit"));
    const double worn = (r.before - r.now).si();
    if (!(worn >= thirtySecond * (1.0 - hair)))
        return Error{Errc::OutOfRange, "less than 1/32 in was worn off, too little to tell a rate", "before",
                     "measure again after more miles, at the same groove"};
    if (!(r.driven >= miles(1000) * (1.0 - hair) && r.driven <= miles(500'000)))
        return Error{Errc::OutOfRange, "the distance is outside 1,000 to 500,000 miles", "driven",
                     "give the distance between the two readings"};
    Estimate e;
    e.unit = "m";
    e.basis = "computed";
    e.source = "49CFR570";
    const double left = (r.now - r.limit).si();
    if (left <= thirtySecond * hair) {
        e.warnings.emplace_back("at_limit");
        return e;
    }
    e.value = left / worn * r.driven.si();
    const double u = thirtySecond / std::sqrt(3.0);
    const double sd = std::sqrt(2.0 * std::pow(u / worn, 2.0) + std::pow(u / left, 2.0));
    e.low = e.value * std::exp(-eightInTen * sd);
    e.high = e.value * std::exp(eightInTen * sd);
    return e;
}

Result<Estimate> leakRate(const ColdReading &first, const ColdReading &second)
{
    const TirePlace reference{celsius(20), {}};
    const auto before = pressureElsewhere(first.pressure, first.place, reference);
    if (!before)
        return Error{before.error().code, before.error().what, "first-" + before.error().where,
                     before.error().act};
    const auto after = pressureElsewhere(second.pressure, second.place, reference);
    if (!after)
        return Error{after.error().code, after.error().what, "second-" + after.error().where,
                     after.error().act};
    const long long days = daysBetween(first.date, second.date);
    if (days < 3 || days > 3660)
        return Error{Errc::OutOfRange, "the readings are not three days to ten years apart", "second-date",
                     "give the day of each reading, the first one first"};
    if (!(before->si() > 0.0))
        return Error{Errc::OutOfRange, "the tire was empty at the first reading", "first-pressure",
                     "fill it, then read twice"};
    const double months = static_cast<double>(days) / daysAMonth;
    const double doubt = std::sqrt(2.0) * gaugeDoubtPsi * pascalsPerPsi / before->si() / months;
    Estimate e;
    e.value = (*before - *after).si() / before->si() / months;
    e.low = e.value - doubt;
    e.high = e.value + doubt;
    e.unit = "1/month";
    e.basis = "computed";
    e.source = "ideal gas law; USSA-1976";
    if (e.value > leakShare)
        e.warnings.emplace_back("leaking");
    if (e.high < 0.0)
        e.warnings.emplace_back("gained");
    return e;
}

} // namespace snugwalk

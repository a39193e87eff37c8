// SPDX-License-Identifier: Apache-2.0
// Wear by distance, and what is left at that pace.
#include "bench/brakes/lining_life.hpp"

#include <algorithm>
#include <cmath>

#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double readingDoubt = 0.0002; // m, common practice, no source
constexpr double mostLining = 0.025;
constexpr double longest = 1.6e8; // m, farther than anybody plans
constexpr double rounding = 1e-9;

Status checkReadings(const LiningReadings &r)
{
    const char *act = "give the lining's thickness at its thinnest, such as 4.5 mm or 3/16 in";
    SNUG_TRY(
        within(0.0, r.before.si(), mostLining, {Errc::OutOfRange, "no lining is that thick", "before", act}));
    SNUG_TRY(within(0.0, r.now.si(), mostLining, {Errc::OutOfRange, "no lining is that thick", "now", act}));
    SNUG_TRY(within(1e5, r.driven.si(), 5e8,
                    {Errc::OutOfRange, "between 100 km and 500,000 km shows a pace of wear", "driven",
                     "give the distance between the two readings"}));
    if (r.maker)
        SNUG_TRY(
            within(0.0, r.maker->si(), mostLining, {Errc::OutOfRange, "no maker gives that", "maker", act}));
    if (!(r.now < r.before))
        return Error{Errc::InvalidInput, "the lining did not wear", "now",
                     "if it was replaced, start from its first reading; else read it again"};
    return done();
}

} // namespace

Result<LiningLife> liningLife(const LiningReadings &r)
{
    SNUG_TRY(checkReadings(r));
    const double least = std::max(liningHold, r.maker.value_or(liningHold)).si();
    const double worn = (r.before - r.now).si();
    const double spread = readingDoubt * std::sqrt(2.0);
    const double remaining = std::max(0.0, r.now.si() - least);
    const auto reach = [&](double wear, double lining) {
        return wear > 0.0 ? std::min(longest, std::max(0.0, lining) * r.driven.si() / wear) : longest;
    };
    const char *basis = r.maker && *r.maker > liningHold ? "maker" : "published";
    const char *source = r.maker && *r.maker > liningHold ? "brake maker" : "CFR49-570";
    LiningLife life;
    const double low = reach(worn + spread, remaining - readingDoubt);
    const double value = reach(worn, remaining);
    const double high = remaining > 0.0 ? reach(worn - spread, remaining + readingDoubt) : 0.0;
    life.left = between(std::min(low, value), value, std::max(high, value), {"m", basis, source});
    life.rate = around(worn / r.driven.si(), spread / r.driven.si(), {"1", "measured", "CP"});
    life.rate.low = std::max(0.0, life.rate.low);
    if (r.now.si() <= least + rounding)
        life.left.warnings.emplace_back("lining_hold");
    else if (r.now < liningPlan)
        life.left.warnings.emplace_back("lining_plan");
    if (worn <= spread)
        life.left.warnings.emplace_back("wear_within_doubt");
    return life;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Margins by subtraction.
#include "bench/weights/ratings.hpp"

#include <algorithm>
#include <cmath>

#include "bench/make_estimate.hpp"
#include "bench/weights/weighing.hpp"

namespace snugwalk {
namespace {

constexpr double mostKilograms = 50'000.0;
constexpr double sideWatch = 0.05;
constexpr double sideMendSoon = 0.10;
constexpr double rounding = 1e-12;

Status checkLoad(const RatedLoad &l)
{
    SNUG_TRY(within(0.0, l.load.si(), mostKilograms,
                    {Errc::OutOfRange, "no load on a scale is that large", l.name, "give 0 to 50 t"}));
    return within(1.0, l.rating.si(), mostKilograms,
                  {Errc::OutOfRange, "no label gives such a rating", l.name,
                   "give the figure of the label with its unit, such as 7,400 lb"});
}

Margin marginOf(const RatedLoad &l)
{
    const double share = l.load / l.rating;
    Margin m;
    m.name = l.name;
    m.left = around((l.rating - l.load).si(), l.doubt.si(), {"kg", "maker", "label", 0.95});
    m.share = around(share, l.doubt / l.rating, {"1", "maker", "label", 0.95});
    if (share > 1.0 + rounding)
        m.left.warnings.emplace_back("over_rating");
    else if (m.left.low < 0.0)
        m.left.warnings.emplace_back("near_rating");
    return m;
}

} // namespace

Result<Margins> marginsOf(std::span<const RatedLoad> loads)
{
    if (loads.empty())
        return Error{Errc::InvalidInput, "no rating was given", "ratings", "give one figure of a label"};
    Margins out;
    for (const RatedLoad &l : loads) {
        SNUG_TRY(checkLoad(l));
        out.each.push_back(marginOf(l));
    }
    const auto largest =
        std::max_element(out.each.begin(), out.each.end(),
                         [](const Margin &a, const Margin &b) { return a.share.value < b.share.value; });
    out.binding = static_cast<std::size_t>(largest - out.each.begin());
    return out;
}

Result<Sides> sideToSide(Mass left, Mass right, int tiresASide, Mass division)
{
    const Error weight{Errc::OutOfRange, "no side of an axle weighs that", "left",
                       "give what the wheels of one side weigh, with the unit"};
    SNUG_TRY(within(0.0, left.si(), mostKilograms, weight));
    Error other = weight;
    other.where = "right";
    SNUG_TRY(within(0.0, right.si(), mostKilograms, other));
    if (!((left + right).si() >= 1.0))
        return weight;
    SNUG_TRY(within(1, tiresASide, 12,
                    {Errc::OutOfRange, "no side has that many tires", "tires", "give 1 to 12"}));
    SNUG_TRY(within(0.1, division.si(), 500.0,
                    {Errc::OutOfRange, "no scale has such a step", "division", "such as 20 lb or 20 kg"}));
    const double sum = (left + right).si();
    const double imbalance = std::fabs((left - right).si()) / sum;
    // d(L-R)/(L+R): 2R/(L+R)² and 2L/(L+R)² times the doubt of a reading
    const double doubt = 2.0 * std::hypot(left.si(), right.si()) / (sum * sum) * scaleDoubt(division, 1).si();
    Sides out;
    out.leftHeavier = left > right;
    out.imbalance = around(imbalance, doubt, {"1", "measured", "CP", 0.95});
    out.imbalance.low = std::max(0.0, out.imbalance.low);
    out.heavierTire = around(std::max(left, right).si() / tiresASide,
                             scaleDoubt(division, 1).si() / tiresASide, {"kg", "measured", "CP", 0.95});
    if (imbalance > sideMendSoon + rounding)
        out.imbalance.warnings.emplace_back("side_mend_soon");
    else if (imbalance > sideWatch + rounding)
        out.imbalance.warnings.emplace_back("side_watch");
    return out;
}

} // namespace snugwalk

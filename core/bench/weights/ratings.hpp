// SPDX-License-Identifier: Apache-2.0
// What is left of every rating, and the one that binds.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

struct RatedLoad {
    std::string name; ///< slug, such as "gross" or "rear-axle"
    Mass load;
    Mass rating;
    Mass doubt = {}; ///< of the load, k = 2
};

struct Margin {
    std::string name;
    Estimate left;  ///< kg, below 0 when over
    Estimate share; ///< of the rating that is used
};

struct Margins {
    std::vector<Margin> each; ///< in the order given
    std::size_t binding = 0;  ///< the one with the largest share
};

/// rating - load, and load / rating, of each.
///
/// \returns warnings on a margin: `over_rating`, or `near_rating` when the scale's doubt reaches it;
///          `InvalidInput` naming "ratings" for none, `OutOfRange` naming the rating for a load outside 0 to
///          50 t or a rating outside 1 kg to 50 t.
/// Basis:    maker; a rating is exact, the load's doubt is the range
/// Tests:    tests/published/bench/weights/tst_ratings.cpp
[[nodiscard]] Result<Margins> marginsOf(std::span<const RatedLoad> loads);

struct Sides {
    Estimate imbalance;   ///< |L - R| / (L + R)
    Estimate heavierTire; ///< kg on each tire of the heavier side
    bool leftHeavier = false;
};

/// \param tiresASide 1 to 12, alike loaded
/// \returns warnings `side_watch` over 5 % and `side_mend_soon` over 10 % of the axle group (common
///          practice); `OutOfRange` naming "left", "right" or "tires".
/// Tests:    tests/published/bench/weights/tst_ratings.cpp
[[nodiscard]] Result<Sides> sideToSide(Mass left, Mass right, int tiresASide, Mass division);

} // namespace snugwalk

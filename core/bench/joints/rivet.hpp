// SPDX-License-Identifier: Apache-2.0
// Which rivet goes into a pair of sheets, and how far from the edge and from the next one.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// One size of the trade. Drills as commonly listed, from memory.
struct RivetSize {
    std::string_view inches; ///< "3/16"
    Length diameter;
    std::string_view drill; ///< number or letter
    Length hole;
};
/// 3/32, 1/8, 5/32, 3/16, 1/4 in.
[[nodiscard]] std::span<const RivetSize> rivetSizes();

struct RivetJoint {
    std::span<const Length> sheets;      ///< thicknesses, one to six
    bool countersunk = false;            ///< the head lies flush
    std::optional<Length> enlargedHole;  ///< what an old rivet left
    std::optional<Length> makerDiameter; ///< the maker's size goes before the rule
};

struct RivetChoice {
    RivetSize size;
    Estimate diameter;    ///< m; low and high are what the sheets allow
    Estimate grip;        ///< m, all sheets together
    Estimate edge;        ///< m, hole center to the edge, at least
    Estimate pitch;       ///< m, center to center, at least; high is the most
    Estimate solidLength; ///< m, shank of a solid rivet before it is set
    Length blindGrip;     ///< grip of a blind rivet, up to the next 1/16 in
};

/// Diameter: the size nearest 3 times the thickest sheet. Edge 2 D, 2.5 D with a flush head; pitch 3 D to
/// 8 D; solid shank grip + 1.5 D. An enlarged hole takes the next size whose drill is no smaller than it.
///
/// \returns `OutOfRange` naming sheets (0.2 to 6 mm each), hole, or diameter; `Unsupported` for a hole
///          above the largest size. Warns `sheets_too_thick` where 3 t is above 1/4 in, `hole_enlarged`,
///          `beyond_three_sheets` where the size is above 3 t by more than a tenth.
/// Source:   [NAVEDTRA-14018] L = 1.5 D + G, diameter between t and 3 t, spacing 3 D, seldom above 8 D;
///           [AC-43.13-1B] 4-57 next larger size for an enlarged hole; edge as others restate it; flush head
///           as a study guide restates it; the blind grip's sixteenths are common practice
/// Accuracy: rules for aircraft sheet, used for skins of rigs; the maker's rivet goes before them
/// Tests:    tests/published/bench/joints/tst_rivet.cpp
[[nodiscard]] Result<RivetChoice> chooseRivet(const RivetJoint &joint);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The question "what do I need to buy?": open findings and due points against what is on hand.
#pragma once

#include <string>
#include <vector>

#include "catalogue/supplies.hpp"
#include "due/band.hpp"
#include "due/rig_history.hpp"

namespace snugwalk {

/// Why a line needs what it needs: an open finding, or a point that is due.
struct SupplyUse {
    Id finding; ///< null for a due point
    std::string point;
    double si = 0.0;
    bool assumed = false; ///< the joint's length was not measured: the rig's, the opening's or a usual one
};

/// One item of the list. Amounts are in the item's SI unit.
struct SupplyLine {
    std::string item;
    Dimension dimension = Dimension::Count;
    double neededSi = 0.0;
    double onHandSi = 0.0;
    double packSi = 1.0;
    int packs = 0; ///< to get: rounded up, less what is on hand
    std::vector<SupplyUse> uses;
};

/// What is on hand of one item, as far as anyone counted it.
struct OnHand {
    std::string item;
    double si = 0.0; ///< never below zero
    LocalTime counted;
};

/// The last count of each item, less the parts of later mends that name it. A part that no item answers to,
/// or in a unit that the item does not know, takes nothing. The order of the history never matters.
[[nodiscard]] std::vector<OnHand> onHandOf(const SupplyList &list, const RigHistory &history, LocalTime now);

/// The shopping list: what the open findings need (not those mended and waiting), and the points that are
/// due now or may fall due within `days`. One line an item, in the list's order.
///
/// Formula: need = Σ over uses; bead A·L·(1 + waste) as bench/joints/sealant, with 25 mm of lap at each end
/// of a
///          measured crack (common practice); counts ⌈each·n·(1 + waste)⌉; hubs each·wheels·(1 + waste) +
///          spare; packs = ⌈(need − on hand) / (pack·fill)⌉
/// Basis:   common practice, see supplies.json; the bead is computed
/// Tests:   tests/unit/supplies/tst_supplies.cpp
[[nodiscard]] std::vector<SupplyLine> suppliesFor(const SupplyList &list, const RigHistory &history,
                                                  const std::vector<DueBand> &bands, LocalTime now, int days);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Spots of a map that would lie over each other, gathered under the one that matters most.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace snugwalk {

/// A spot on paper or on a screen; any unit of length.
struct PaperSpot {
    double x = 0.0;
    double y = 0.0;
    int weight = 0; ///< the heavier one gives its place to a cluster
};

/// One shape on the map.
struct SpotCluster {
    std::size_t head = 0;             ///< index of the spot at whose place it is drawn: the heaviest
    std::vector<std::size_t> members; ///< all of them, the head too, ascending
};

/// Every spot is in exactly one cluster, within `least` of its head, and no nearer head exists; two heads are
/// at least `least` apart. Distance is the larger of the differences in x and y, for what is pressed is a
/// square. Clustering the heads again changes nothing. Heads come heaviest first, of equal weight from the
/// left, then from the top; so the order of the spots matters only for those at the very same place.
///
/// Method:   a spot becomes a head unless one is within `least`, the heaviest first; then each joins the
///           nearest head, of two alike the earlier; by cells of `least`, so spots x heads around
/// Tests:    tests/property/map/tst_cluster_laws.cpp
/// \param least over 0, finite, as the spots are
[[nodiscard]] std::vector<SpotCluster> clustersOf(std::span<const PaperSpot> spots, double least);

} // namespace snugwalk

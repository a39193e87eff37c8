// SPDX-License-Identifier: Apache-2.0
// What is believed of a point's life before anyone looks: the catalogue's interval and its class.
#pragma once

#include <array>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/imperfect_looks.hpp"
#include "due/severity.hpp"
#include "due/usage.hpp"

namespace snugwalk {

/// One cell of the prior: a life and its weight; the weights add up to 1.
struct LifeCell {
    WeibullLife life; ///< scale in months
    double weight = 0.0;
};
/// 7 scales by 3 shapes at the nodes of Gauss-Hermite quadrature.
using LifeGrid = std::array<LifeCell, 21>;

/// Share that has failed when the catalogue's interval is over: 0.01, 0.03, 0.10, 0.25 for severity
/// I to IV. Common practice, no source.
[[nodiscard]] double failedAtInterval(Severity severity);

/// How a point fails. log shape ~ N: wear and age (ln 1.5, 0.35), chance damage (0, 0.25), fatigue
/// (ln 2.5, 0.3). Common practice, no source.
enum class Failing { Wear, Chance, Fatigue };
/// How a part that was new on a known day fails: fatigue when vibration ages it first and it cracks;
/// chance when only use and events call for a look; else wear.
[[nodiscard]] Failing failingOf(const Point &point);
/// Mean and sd of the logarithm of the shape.
struct ShapeBelief {
    double mean = 0.0;
    double sd = 0.0;
};
[[nodiscard]] ShapeBelief shapeBelief(Failing failing);

/// The catalogue's interval in months: of months and distance at the rig's own yearly distance,
/// whichever is shorter; nothing for what is looked at each move; 12 for what only events call for.
[[nodiscard]] std::optional<double> nominalMonths(const Point &point, const UsageForecast &usage);

/// log scale ~ N(m, 0.6). The lives of each shape have F(nominal) = one figure at their middle, which is
/// set so that over all lives F(nominal) = `failedAtInterval`: a point of which nothing is known has
/// failed by the end of the catalogue's interval with just that chance.
[[nodiscard]] LifeGrid priorGrid(double nominal, Severity severity, Failing failing);

/// Nodes and weights for the mean of f(z), z standard normal; exact to degree 13 and 5.
/// Source: Abramowitz and Stegun, table 25.10 (from memory), checked by moments in tests/published/due.
struct NormalNode {
    double z = 0.0;
    double weight = 0.0;
};
[[nodiscard]] const std::array<NormalNode, 7> &sevenNodes();
[[nodiscard]] const std::array<NormalNode, 3> &threeNodes();

} // namespace snugwalk

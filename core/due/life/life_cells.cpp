// SPDX-License-Identifier: Apache-2.0
// Cutting the prior into cells.
#include "due/life/life_cells.hpp"

#include <algorithm>
#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double leastShape = 0.3;
constexpr double mostShape = 8.0;

// The i-th of n points from -reach to reach.
double evenly(std::size_t i, std::size_t n, double reach)
{
    return n == 1 ? 0.0 : reach * (2.0 * static_cast<double>(i) / static_cast<double>(n - 1) - 1.0);
}

} // namespace

LifeCells::LifeCells(const LifePrior &prior, LifeGridSize size) : m_prior(prior), m_size(size)
{
    SNUG_ASSERT(size.ages > 0 && size.shapes > 0 && size.reach > 0.0 && prior.middleShape > 0.0);
    SNUG_ASSERT(prior.anchor > 0.0 && prior.anchor < 1.0);
    const double logHazard = std::log(-std::log1p(-prior.anchor)); // at the anchor
    double sum = 0.0;
    for (std::size_t j = 0; j < size.shapes; ++j) {
        const double y = evenly(j, size.shapes, size.reach);
        const double shape =
            std::clamp(prior.middleShape * std::exp(prior.logShapeSd * y), leastShape, mostShape);
        m_shapes.push_back(shape);
        for (std::size_t i = 0; i < size.ages; ++i) {
            const double logScale = prior.logAgeSd * deviation(i) - logHazard / shape;
            const double logWeight = -(deviation(i) * deviation(i) + y * y) / 2.0;
            m_rates.push_back(std::exp(-shape * logScale));
            m_scales.push_back(std::exp(logScale));
            m_logWeights.push_back(logWeight);
            sum += std::exp(logWeight);
        }
    }
    for (double &logWeight : m_logWeights)
        logWeight -= std::log(sum);
}

double LifeCells::deviation(std::size_t age) const { return evenly(age, m_size.ages, m_size.reach); }

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A fixed grid of Weibull lives with their prior weights, shared by all points that fail alike.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace snugwalk {

/// What is believed of a kind of life before anyone looks: the log of an age is normal around a middle
/// that each point sets, the log of the shape is normal and independent of it. Spreads are common
/// practice, no source: 0.6 is a factor of 1.8 either way.
struct LifePrior {
    /// The age meant is the one by which this share has failed. With 1 - 1/e, the default, it is the
    /// scale itself. With a point's own due threshold it is the point's interval, whatever the shape.
    double anchor = 0.63212055882855768;
    double logAgeSd = 0.6;
    double middleShape = 1.5;
    double logShapeSd = 0.35;
};

/// How finely it is cut: ages by shapes, each evenly over `reach` standard deviations either way.
/// 61 x 41 integrates to 1e-6, 21 x 15 to 1e-5 of chances (tests/published/due/tst_life_posterior.cpp).
struct LifeGridSize {
    std::size_t ages = 61;
    std::size_t shapes = 41;
    double reach = 4.5;
    [[nodiscard]] std::size_t cells() const { return ages * shapes; }
};
/// For the bands of a whole rig.
inline constexpr LifeGridSize coarseGrid{21, 15, 4.5};

/// Lives whose middle age is 1; a point multiplies all ages by its own. Cells lie shape by shape, ages
/// rising within each, so that one power an age and shape serves a whole run of cells:
/// hazard(u) = u^shape * rate.
class LifeCells {
public:
    explicit LifeCells(const LifePrior &prior, LifeGridSize size = {});

    [[nodiscard]] const LifePrior &prior() const { return m_prior; }
    [[nodiscard]] LifeGridSize size() const { return m_size; }
    /// Of each run of cells; held within 0.3 to 8.
    [[nodiscard]] std::span<const double> shapes() const { return m_shapes; }
    /// One a cell: scale^-shape, and the log of its share of the prior.
    [[nodiscard]] std::span<const double> rates() const { return m_rates; }
    [[nodiscard]] std::span<const double> scales() const { return m_scales; }
    [[nodiscard]] std::span<const double> logWeights() const { return m_logWeights; }
    /// Standard deviations from the middle age at a place in a run.
    [[nodiscard]] double deviation(std::size_t age) const;

private:
    LifePrior m_prior;
    LifeGridSize m_size;
    std::vector<double> m_shapes;
    std::vector<double> m_rates;
    std::vector<double> m_scales;
    std::vector<double> m_logWeights;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// What looks leave of a prior over lives: weights of a fixed grid, and what follows from them.
#pragma once

#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "due/imperfect_looks.hpp"
#include "due/life/life_cells.hpp"

namespace snugwalk {

/// One life as it was seen: the looks that passed, and the one that found it failed, if any.
struct SeenLife {
    LooksOfLife looks;
    std::optional<LookAtAge> found;
    double alarm = falseAlarm; ///< chance that a look tells of what is not there; counts for `found`
};

/// Lives of one point (or of like ones) weighed on a grid. What is over is added once and kept; the life
/// under way is set anew with each look; `settle` makes weights of both.
/// Formula: Bayes' rule on the cells, interval-censored Weibull likelihood with imperfect looks
///          (due/imperfect_looks); hazards in logarithms, the largest taken out before exponentials
/// Cost:    of a look one exponential a cell and one power a shape, of a life one logarithm a cell more;
///          of a life whose last pass was sure none of both; memory is taken once, at construction
/// Tests:   tests/published/due/tst_life_posterior.cpp
class LifePosterior {
public:
    /// \param cells outlives this
    /// \param middle age that the prior is centred on, in the point's own unit, above 0
    LifePosterior(const LifeCells &cells, double middle);

    /// A life that is over. With a weight below 1 it counts for less than one of its own would.
    void add(const SeenLife &life, double weight = 1.0);
    /// The life under way, in place of what was set before. Nobody looked yet: no passes.
    void setNow(LooksOfLife looks);
    /// Weighs the cells; call it after adding and before asking.
    void settle();

    [[nodiscard]] const LifeCells &cells() const { return *m_cells; }
    [[nodiscard]] double middle() const { return m_middle; }
    [[nodiscard]] std::span<const double> weights() const { return m_weights; }
    [[nodiscard]] WeibullLife life(std::size_t cell) const;
    [[nodiscard]] double meanScale() const;
    [[nodiscard]] double meanShape() const;
    /// Standard deviations of the prior from its middle to the median age of the posterior.
    [[nodiscard]] double medianDeviation() const { return m_medianDeviation; }
    /// The looks contradict the prior: over 2 deviations away, or impossible in every cell.
    [[nodiscard]] bool conflict() const { return m_conflict; }

    /// Chance that the life under way has a defect by `age`, at or after its last look; one that looks
    /// have missed counts.
    [[nodiscard]] double presentBy(double age) const;
    /// The age at which that reaches `p`: not before the last look; nothing when not by `most`.
    [[nodiscard]] std::optional<double> ageWhenPresent(double p, double most) const;
    /// The same in each cell by itself, 1 - S(age) / L = p, without end; one for each weight. It may lie
    /// before the last look: the chance was over p already.
    void agesWhenPresent(double p, std::span<double> ages) const;
    /// Chance that a life renewed now fails within `age`.
    [[nodiscard]] double renewedFailsBy(double age) const;

private:
    template <typename F>
    void eachCell(F f) const;
    void addTo(std::vector<double> &logs, const SeenLife &life, double weight);
    void addPasses(std::vector<double> &logs, LooksOfLife looks, double weight);
    void addFinding(std::vector<double> &logs, const SeenLife &life, double weight);
    [[nodiscard]] double passedAll(LooksOfLife looks, std::size_t shape, double rate) const;
    [[nodiscard]] double logOfFinding(const SeenLife &life, std::size_t shape, double rate) const;
    void takePowers(LooksOfLife looks, double last);
    double findMedianDeviation();

    const LifeCells *m_cells;
    double m_middle;
    double m_born = 0.0;        ///< of the life under way
    double m_lastLook = 0.0;    ///< or its birth
    std::vector<double> m_over; ///< log-likelihood of lives that are over, one a cell
    std::vector<double> m_now;  ///< of the life under way
    std::vector<double> m_weights;
    std::vector<double> m_powers; ///< (age / middle)^shape: birth, each pass, the end; shapes within each
    double m_medianDeviation = 0.0;
    bool m_conflict = false;
};

/// Ages at rising shares of weight, between the middles of neighbouring cells on a line.
/// \param scratch is written over, and kept by the caller so that nothing is allocated each time
void weightedQuantiles(std::span<const double> values, std::span<const double> weights,
                       std::span<const double> shares, std::span<double> out,
                       std::vector<std::pair<double, double>> &scratch);

} // namespace snugwalk

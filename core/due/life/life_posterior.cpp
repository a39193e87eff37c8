// SPDX-License-Identifier: Apache-2.0
// Weighing cells: powers once a shape, one exponential a look and cell.
#include "due/life/life_posterior.hpp"

#include <algorithm>
#include <cmath>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr double conflictDeviations = 2.0;
constexpr double leastChance = 1e-300; // of all looks passing: keeps the logarithm finite
constexpr double mostHazard = 1e300;
constexpr double plainAlarm = 1e-3; // above it the chance of a finding is no small difference
constexpr std::size_t usualLooks = 16;

// The age at which the rising `f` reaches `target`, between two that enclose it: regula falsi with the
// Illinois rule, to 1e-13 of the age.
template <typename F>
double crossing(F f, double target, double low, double high)
{
    double below = f(low) - target;
    double above = f(high) - target;
    for (int i = 0; i < 200 && high - low > 1e-13 * high; ++i) {
        const double next = std::clamp(low + (high - low) * (below / (below - above)), low, high);
        const double off = f(next) - target;
        if (off == 0.0)
            return next;
        if (off < 0.0) {
            low = next;
            below = off;
            above /= 2.0;
        } else {
            high = next;
            above = off;
            below /= 2.0;
        }
    }
    return high;
}

} // namespace

LifePosterior::LifePosterior(const LifeCells &cells, double middle)
    : m_cells(&cells), m_middle(middle), m_over(cells.size().cells(), 0.0), m_now(m_over), m_weights(m_over)
{
    SNUG_ASSERT(middle > 0.0);
    m_powers.reserve(std::max(cells.size().shapes * usualLooks, cells.size().ages));
    settle();
}

// f(cell, shape, run), runs of one shape after another
template <typename F>
void LifePosterior::eachCell(F f) const
{
    const LifeGridSize size = m_cells->size();
    std::size_t cell = 0;
    for (std::size_t j = 0; j < size.shapes; ++j) {
        for (std::size_t i = 0; i < size.ages; ++i, ++cell)
            f(cell, j, i);
    }
}

// m_powers: all shapes at birth, at each pass, at `last`.
void LifePosterior::takePowers(LooksOfLife looks, double last)
{
    const auto shapes = m_cells->shapes();
    m_powers.clear();
    const auto take = [&](double age) {
        const double logAge = std::log(age / m_middle);
        for (const double shape : shapes)
            m_powers.push_back(std::exp(shape * logAge)); // 0 at age 0
    };
    take(looks.born);
    for (const LookAtAge &pass : looks.passes)
        take(pass.age);
    take(last);
}

// With M_j the chance that all looks from j on miss, L = M_1 + the sum of S(t_j) q_j M_(j+1): terms that
// are never negative, so that nothing cancels.
double LifePosterior::passedAll(LooksOfLife looks, std::size_t shape, double rate) const
{
    const std::size_t shapes = m_cells->size().shapes;
    double seen = 0.0;
    double missed = 1.0;
    for (std::size_t k = looks.passes.size(); k > 0 && missed > 0.0; --k) {
        const double q = looks.passes[k - 1].sensitivity;
        seen += std::exp((m_powers[shape] - m_powers[k * shapes + shape]) * rate) * q * missed;
        missed *= 1.0 - q;
    }
    return seen + missed;
}

void LifePosterior::addPasses(std::vector<double> &logs, LooksOfLife looks, double weight)
{
    if (looks.passes.empty())
        return;
    takePowers(looks, 0.0);
    const auto rates = m_cells->rates();
    const std::size_t last = looks.passes.size() * m_cells->size().shapes;
    if (looks.passes.back().sensitivity >= 1.0) { // only the last pass counts
        eachCell([&](std::size_t cell, std::size_t j, std::size_t) {
            logs[cell] -= weight * std::min((m_powers[last + j] - m_powers[j]) * rates[cell], mostHazard);
        });
        return;
    }
    eachCell([&](std::size_t cell, std::size_t j, std::size_t) {
        logs[cell] += weight * std::log(std::max(passedAll(looks, j, rates[cell]), leastChance));
    });
}

void LifePosterior::addFinding(std::vector<double> &logs, const SeenLife &life, double weight)
{
    takePowers(life.looks, life.found->age);
    const auto rates = m_cells->rates();
    const std::size_t end = (life.looks.passes.size() + 1) * m_cells->size().shapes;
    const double q = life.found->sensitivity;
    eachCell([&](std::size_t cell, std::size_t j, std::size_t) {
        if (life.alarm < plainAlarm) {
            logs[cell] += weight * logOfFinding(life, j, rates[cell]);
            return;
        }
        const double survived = std::exp((m_powers[j] - m_powers[end + j]) * rates[cell]);
        const double failed = passedAll(life.looks, j, rates[cell]) - survived;
        logs[cell] += weight * std::log(std::max(failed * q + life.alarm * survived, leastChance));
    });
}

// Without false alarms a finding may be ever so unlikely, and its logarithm must keep its digits.
double LifePosterior::logOfFinding(const SeenLife &life, std::size_t shape, double rate) const
{
    const auto hazardAt = [&](std::size_t look) { // 0 is the first pass
        return (m_powers[(look + 1) * m_cells->size().shapes + shape] - m_powers[shape]) * rate;
    };
    const MissedLooks missed = missedBy(life.looks.passes, hazardAt);
    const double hazard = hazardAt(life.looks.passes.size());
    const double failed = -std::expm1(missed.hazard - hazard);
    if (missed.mass <= 0.0 && life.alarm <= 0.0) // stays finite where all have failed long before
        return std::log(life.found->sensitivity) - missed.hazard + std::log(failed);
    return std::log((std::exp(-missed.hazard) * failed + missed.mass) * life.found->sensitivity +
                    life.alarm * std::exp(-hazard));
}

void LifePosterior::addTo(std::vector<double> &logs, const SeenLife &life, double weight)
{
    SNUG_ASSERT(weight >= 0.0);
    if (weight <= 0.0)
        return;
    if (life.found)
        addFinding(logs, life, weight);
    else
        addPasses(logs, life.looks, weight);
}

void LifePosterior::add(const SeenLife &life, double weight) { addTo(m_over, life, weight); }

void LifePosterior::setNow(LooksOfLife looks)
{
    std::fill(m_now.begin(), m_now.end(), 0.0);
    m_born = looks.born;
    m_lastLook = looks.passes.empty() ? looks.born : looks.passes.back().age;
    addPasses(m_now, looks, 1.0);
}

void LifePosterior::settle()
{
    const auto prior = m_cells->logWeights();
    const auto logOf = [&](std::size_t cell) { return prior[cell] + m_over[cell] + m_now[cell]; };
    double most = -HUGE_VAL;
    for (std::size_t cell = 0; cell < m_weights.size(); ++cell)
        most = std::max(most, logOf(cell));
    const bool possible = std::isfinite(most);
    double sum = 0.0;
    for (std::size_t cell = 0; cell < m_weights.size(); ++cell) {
        m_weights[cell] = std::exp(possible ? logOf(cell) - most : prior[cell]);
        sum += m_weights[cell];
    }
    for (double &weight : m_weights)
        weight /= sum;
    m_medianDeviation = findMedianDeviation();
    m_conflict = !possible || std::abs(m_medianDeviation) > conflictDeviations;
}

double LifePosterior::findMedianDeviation()
{
    std::vector<double> &byAge = m_powers; // room that is there already
    byAge.assign(m_cells->size().ages, 0.0);
    eachCell([&](std::size_t cell, std::size_t, std::size_t i) { byAge[i] += m_weights[cell]; });
    std::size_t i = 0;
    double before = 0.0;
    while (i + 1 < byAge.size() && before + byAge[i] < 0.5)
        before += byAge[i++];
    const double step = byAge.size() > 1 ? m_cells->deviation(1) - m_cells->deviation(0) : 0.0;
    return m_cells->deviation(i) + step * ((0.5 - before) / byAge[i] - 0.5);
}

WeibullLife LifePosterior::life(std::size_t cell) const
{
    return {m_cells->scales()[cell] * m_middle, m_cells->shapes()[cell / m_cells->size().ages]};
}

double LifePosterior::meanScale() const
{
    double mean = 0.0;
    for (std::size_t cell = 0; cell < m_weights.size(); ++cell)
        mean += m_weights[cell] * m_cells->scales()[cell];
    return mean * m_middle;
}

double LifePosterior::meanShape() const
{
    double mean = 0.0;
    eachCell([&](std::size_t cell, std::size_t j, std::size_t) {
        mean += m_weights[cell] * m_cells->shapes()[j];
    });
    return mean;
}

double LifePosterior::presentBy(double age) const
{
    SNUG_ASSERT(age >= m_lastLook);
    double chance = 0.0;
    double power = 0.0;
    eachCell([&](std::size_t cell, std::size_t j, std::size_t i) {
        if (i == 0) {
            const double shape = m_cells->shapes()[j];
            power = std::pow(age / m_middle, shape) - std::pow(m_born / m_middle, shape);
        }
        chance += m_weights[cell] * -std::expm1(-power * m_cells->rates()[cell] - m_now[cell]);
    });
    return std::clamp(chance, 0.0, 1.0);
}

std::optional<double> LifePosterior::ageWhenPresent(double p, double most) const
{
    SNUG_ASSERT(p > 0.0 && p < 1.0);
    if (presentBy(m_lastLook) >= p)
        return m_lastLook;
    if (most <= m_lastLook || presentBy(most) < p)
        return std::nullopt;
    return crossing([&](double age) { return presentBy(age); }, p, m_lastLook, most);
}

void LifePosterior::agesWhenPresent(double p, std::span<double> ages) const
{
    SNUG_ASSERT(p > 0.0 && p < 1.0 && ages.size() == m_weights.size());
    const double failed = -std::log1p(-p);
    double born = 0.0;
    double perShape = 0.0;
    eachCell([&](std::size_t cell, std::size_t j, std::size_t i) {
        if (i == 0) {
            born = std::pow(m_born / m_middle, m_cells->shapes()[j]);
            perShape = 1.0 / m_cells->shapes()[j];
        }
        const double hazard = born * m_cells->rates()[cell] + failed - m_now[cell];
        ages[cell] = m_middle * m_cells->scales()[cell] * std::exp(perShape * std::log(hazard));
    });
}

double LifePosterior::renewedFailsBy(double age) const
{
    double chance = 0.0;
    double power = 0.0;
    eachCell([&](std::size_t cell, std::size_t j, std::size_t i) {
        if (i == 0)
            power = std::pow(age / m_middle, m_cells->shapes()[j]);
        chance += m_weights[cell] * -std::expm1(-power * m_cells->rates()[cell]);
    });
    return chance;
}

void weightedQuantiles(std::span<const double> values, std::span<const double> weights,
                       std::span<const double> shares, std::span<double> out,
                       std::vector<std::pair<double, double>> &scratch)
{
    SNUG_ASSERT(values.size() == weights.size() && shares.size() == out.size());
    scratch.clear();
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (weights[i] > 0.0)
            scratch.emplace_back(values[i], weights[i]);
    }
    SNUG_ASSERT(!scratch.empty());
    std::sort(scratch.begin(), scratch.end());
    std::size_t q = 0;
    double before = 0.0; // weight up to the middle of the cell before
    double total = 0.0;
    for (std::size_t i = 0; i < scratch.size() && q < shares.size(); ++i) {
        const double here = total + scratch[i].second / 2.0;
        for (; q < shares.size() && shares[q] <= here; ++q) {
            const double share = i == 0 ? 1.0 : (shares[q] - before) / (here - before);
            const double from = i == 0 ? scratch[i].first : scratch[i - 1].first;
            out[q] = from + share * (scratch[i].first - from);
        }
        before = here;
        total += scratch[i].second;
    }
    for (; q < shares.size(); ++q)
        out[q] = scratch.back().first;
}

} // namespace snugwalk

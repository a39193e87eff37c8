// SPDX-License-Identifier: Apache-2.0
// Newton's method with halved steps; the checks before it say when there is no maximum to find.
#include "due/life/weibull_fit.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

#include "due/life/symmetric_matrix.hpp"
#include "due/life/weibull_terms.hpp"

namespace snugwalk {
namespace {

constexpr int mostSteps = 100;
constexpr double mostLogSigma = 6.0; // shapes from 1/400 to 400
constexpr double enough = 1e-18;     // of the log-likelihood still to gain, for each unit of its size

struct Row {
    LogAges ages;
    double weight = 0.0;
    std::span<const double> covariates;
};

// Parameters: log scale, coefficients, log sigma.
struct Point {
    std::vector<double> theta;
    double logLikelihood = 0.0;
    std::vector<double> slope;
    SymmetricMatrix information; ///< minus the second derivatives
};

Error noMaximum(std::string why, std::string act)
{
    return {Errc::OutOfRange, "no Weibull law fits these lives best: " + std::move(why), "", std::move(act)};
}

Status checkMaximum(const CensoredLives &data)
{
    double lastPass = 0.0;
    double firstFound = HUGE_VAL;
    std::size_t counted = 0;
    for (const CensoredLife &life : data.lives) {
        if (life.weight <= 0.0)
            continue;
        ++counted;
        lastPass = std::max(lastPass, life.lower);
        firstFound = std::min(firstFound, life.upper);
    }
    if (counted < data.names.size() + 2)
        return noMaximum(std::to_string(counted) + " lives for " + std::to_string(data.names.size() + 2) +
                             " figures to fit",
                         "add lives, or take covariates out");
    if (!std::isfinite(firstFound))
        return noMaximum("none of them failed, so a longer life is always likelier",
                         "use `due posterior` with the usual interval");
    if (lastPass <= firstFound)
        return noMaximum("one age agrees with all of them, such as when all have the same interval",
                         "use `due posterior`, or add lives that differ");
    return done();
}

std::vector<Row> rowsOf(const CensoredLives &data)
{
    std::vector<Row> rows;
    rows.reserve(data.lives.size());
    const std::size_t k = data.names.size();
    for (std::size_t i = 0; i < data.lives.size(); ++i) {
        if (data.lives[i].weight > 0.0)
            rows.push_back({logAgesOf(data.lives[i]), data.lives[i].weight,
                            std::span(data.covariates).subspan(i * k, k)});
    }
    return rows;
}

std::optional<std::string> constantCovariate(const CensoredLives &data, std::span<const Row> rows)
{
    for (std::size_t j = 0; j < data.names.size(); ++j) {
        const bool varies = std::any_of(rows.begin(), rows.end(), [&](const Row &row) {
            return row.covariates[j] != rows.front().covariates[j];
        });
        if (!varies)
            return data.names[j];
    }
    return std::nullopt;
}

// The exponential law on the middles of intervals, and a shape of 1.2.
std::vector<double> startOf(const CensoredLives &data)
{
    double time = 0.0;
    double found = 0.0;
    for (const CensoredLife &life : data.lives) {
        time += life.weight * (life.found() ? (life.lower + life.upper) / 2.0 : life.lower);
        found += life.found() ? life.weight : 0.0;
    }
    std::vector<double> theta(data.names.size() + 2, 0.0);
    theta.front() = std::log(time / found);
    theta.back() = -std::log(1.2);
    return theta;
}

double locationOf(const Row &row, std::span<const double> theta)
{
    double location = theta.front();
    for (std::size_t j = 0; j < row.covariates.size(); ++j)
        location += theta[j + 1] * row.covariates[j];
    return location;
}

void evaluate(std::span<const Row> rows, Point &at)
{
    const std::size_t n = at.theta.size();
    at.logLikelihood = 0.0;
    at.slope.assign(n, 0.0);
    at.information = SymmetricMatrix(n);
    for (const Row &row : rows) {
        const LifeTerm term = lifeTerm(row.ages, locationOf(row, at.theta), at.theta.back());
        at.logLikelihood += row.weight * term.value;
        const auto x = [&](std::size_t i) { return i == 0 ? 1.0 : row.covariates[i - 1]; };
        for (std::size_t i = 0; i + 1 < n; ++i) {
            at.slope[i] += row.weight * term.byLocation * x(i);
            at.information(n - 1, i) -= row.weight * term.byBoth * x(i);
            for (std::size_t j = 0; j <= i; ++j)
                at.information(i, j) -= row.weight * term.byLocationTwice * x(i) * x(j);
        }
        at.slope[n - 1] += row.weight * term.byLogSigma;
        at.information(n - 1, n - 1) -= row.weight * term.byLogSigmaTwice;
    }
}

// Uphill even where the surface bends upward: the diagonal is raised until the matrix can be inverted.
std::vector<double> stepFrom(const Point &at)
{
    double raised = 0.0;
    for (int tries = 0; tries < 60; ++tries) {
        SymmetricMatrix m = at.information;
        for (std::size_t i = 0; i < m.size(); ++i)
            m(i, i) += raised * (std::abs(m(i, i)) + 1.0);
        if (const auto factor = CholeskyFactor::of(m))
            return factor->solve(at.slope);
        raised = raised > 0.0 ? raised * 4.0 : 1e-4;
    }
    return {};
}

// One step that gains; false when none does. Near the top, where the gain drowns in rounding, the whole
// step is taken.
bool climb(std::span<const Row> rows, Point &at, Point &next, const std::vector<double> &step, double gain)
{
    const double rounding = gain < 1e-6 ? 1e-12 * (1.0 + std::abs(at.logLikelihood)) : 0.0;
    for (double share = 1.0; share > 1e-9; share /= 2.0) {
        next.theta = at.theta;
        for (std::size_t i = 0; i < step.size(); ++i)
            next.theta[i] += share * step[i];
        if (std::abs(next.theta.back()) > 2.0 * mostLogSigma)
            continue;
        evaluate(rows, next);
        if (next.logLikelihood >= at.logLikelihood - rounding) { // false for NaN
            std::swap(at, next);
            return true;
        }
    }
    return false;
}

// Goes to the top, or as far as it can.
int climbAll(std::span<const Row> rows, Point &at)
{
    evaluate(rows, at);
    Point next = at;
    int steps = 0;
    bool settled = false;
    while (!settled && steps < mostSteps && std::abs(at.theta.back()) < mostLogSigma) {
        const std::vector<double> step = stepFrom(at);
        double gain = 0.0;
        for (std::size_t i = 0; i < step.size(); ++i)
            gain += step[i] * at.slope[i];
        settled = gain < enough * (1.0 + std::abs(at.logLikelihood));
        if (step.empty() || !climb(rows, at, next, step, gain))
            break;
        ++steps;
    }
    return steps;
}

// Log shape is minus log sigma, so what it shares with the others changes sign.
std::vector<double> covarianceOf(const CholeskyFactor &information, std::size_t n)
{
    std::vector<double> covariance = information.inverse();
    for (std::size_t i = 0; i + 1 < n; ++i) {
        covariance[i * n + n - 1] *= -1.0;
        covariance[(n - 1) * n + i] *= -1.0;
    }
    return covariance;
}

} // namespace

double WeibullFit::scale() const { return std::exp(logScale); }
double WeibullFit::shape() const { return std::exp(logShape); }
double WeibullFit::logScaleError() const { return std::sqrt(covariance.front()); }
double WeibullFit::logShapeError() const { return std::sqrt(covariance.back()); }
double WeibullFit::coefficientError(std::size_t i) const
{
    const std::size_t n = names.size() + 2;
    return std::sqrt(covariance[(i + 1) * n + i + 1]);
}

Result<WeibullFit> fitWeibull(const CensoredLives &data)
{
    SNUG_TRY(checkLives(data, ExactAges::Allowed));
    SNUG_TRY(checkMaximum(data));
    const std::vector<Row> rows = rowsOf(data);
    if (const auto name = constantCovariate(data, rows))
        return noMaximum("covariate " + *name + " is the same for all", "take it out");
    Point at{startOf(data), 0.0, {}, SymmetricMatrix(0)};
    const int steps = climbAll(rows, at);
    const auto factor = CholeskyFactor::of(at.information);
    if (std::abs(at.theta.back()) >= mostLogSigma)
        return noMaximum("the shape runs to an end", "use `due posterior`, or add lives");
    if (!factor || steps >= mostSteps)
        return noMaximum("the lives do not tell its figures apart",
                         "take out covariates that follow from one another, or add lives");
    WeibullFit fit;
    fit.steps = steps;
    fit.covariance = covarianceOf(*factor, at.theta.size());
    fit.logScale = at.theta.front();
    fit.logShape = -at.theta.back();
    fit.names = data.names;
    fit.coefficients.assign(at.theta.begin() + 1, at.theta.end() - 1);
    fit.logLikelihood = at.logLikelihood;
    for (const CensoredLife &life : data.lives) {
        fit.lives += life.weight;
        fit.found += life.found() ? life.weight : 0.0;
    }
    return fit;
}

LogAge logAgeAt(const WeibullFit &fit, double p)
{
    SNUG_ASSERT(p > 0.0 && p < 1.0);
    // log t = log scale + z / shape; by log shape it changes by -z / shape
    const double reach = std::log(-std::log1p(-p)) / fit.shape();
    const std::size_t last = fit.names.size() + 1;
    const double variance =
        fit.covariance.front() - 2.0 * reach * fit.covariance[last] + reach * reach * fit.covariance.back();
    return {fit.logScale + reach, std::sqrt(std::max(variance, 0.0))};
}

} // namespace snugwalk

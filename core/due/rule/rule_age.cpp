// SPDX-License-Identifier: Apache-2.0
// A grid of lives weighed by what was seen.
#include "due/rule/rule_age.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double logScaleSd = 0.6; // a factor of 1.8 either way; common practice
constexpr int scales = 41;
constexpr int shapes = 7;
constexpr double scaleReach = 4.0; // sd
constexpr double shapeReach = 3.0;

struct Node {
    double z = 0.0;
    double weight = 0.0;
};

template <int count>
std::array<Node, count> normalNodes(double reach)
{
    std::array<Node, count> nodes{};
    double sum = 0.0;
    for (int i = 0; i < count; ++i) {
        const double z = reach * (2.0 * i / (count - 1) - 1.0);
        nodes[static_cast<std::size_t>(i)] = {z, std::exp(-0.5 * z * z)};
        sum += nodes[static_cast<std::size_t>(i)].weight;
    }
    for (Node &node : nodes)
        node.weight /= sum;
    return nodes;
}

const std::array<Node, scales> &scaleNodes()
{
    static const auto nodes = normalNodes<scales>(scaleReach);
    return nodes;
}
const std::array<Node, shapes> &shapeNodes()
{
    static const auto nodes = normalNodes<shapes>(shapeReach);
    return nodes;
}

// The life of the cell (length, shape): F(length) = p* whatever the shape.
WeibullLife lifeOf(double length, double shape, double hazard)
{
    return {length / std::pow(hazard, 1.0 / shape), shape};
}

double likelihoodOf(const WeibullLife &life, const IntervalLife &seen)
{
    const LooksOfLife looks{seen.passes, seen.born};
    return seen.found ? likelihoodOfFinding(life, looks, *seen.found) : likelihoodOfPasses(life, looks);
}

bool isAging(const IntervalLives &lives)
{
    return lives.now.known || std::any_of(lives.earlier.begin(), lives.earlier.end(),
                                          [](const IntervalLife &life) { return life.known; });
}

// By how much like points favor each cell, the best of them by 1; empty when they tell nothing.
std::vector<double> favorOf(const LikeLives &like)
{
    const double most = like.logs.empty() ? -HUGE_VAL : *std::max_element(like.logs.begin(), like.logs.end());
    std::vector<double> favor;
    if (!std::isfinite(most)) // impossible in every cell: as if nothing had been seen
        return favor;
    favor.reserve(like.logs.size());
    for (const double log : like.logs)
        favor.push_back(std::exp(log - most));
    return favor;
}

} // namespace

RuleAges::RuleAges(std::vector<Cell> cells)
{
    std::sort(cells.begin(), cells.end(), [](const Cell &a, const Cell &b) { return a.age < b.age; });
    double sum = 0.0;
    for (const Cell &cell : cells)
        sum += cell.weight;
    double below = 0.0;
    for (const Cell &cell : cells) {
        m_ages.push_back(cell.age);
        m_fired.push_back((below + cell.weight / 2.0) / sum);
        below += cell.weight;
    }
}

double RuleAges::firedBy(double age) const
{
    if (age < m_ages.front())
        return 0.0;
    if (age >= m_ages.back())
        return 1.0;
    const auto after = std::upper_bound(m_ages.begin(), m_ages.end(), age);
    const auto i = static_cast<std::size_t>(after - m_ages.begin());
    const double share = (age - m_ages[i - 1]) / (m_ages[i] - m_ages[i - 1]);
    return m_fired[i - 1] + share * (m_fired[i] - m_fired[i - 1]);
}

const RuleAges &unseenAges()
{
    static const RuleAges ages = [] {
        std::vector<RuleAges::Cell> cells;
        for (const Node &node : scaleNodes())
            cells.push_back({std::exp(logScaleSd * node.z), node.weight});
        return RuleAges(std::move(cells));
    }();
    return ages;
}

void LikeLives::add(const LikeLives &other, double weight)
{
    if (other.logs.empty())
        return;
    logs.resize(other.logs.size(), 0.0);
    for (std::size_t i = 0; i < logs.size(); ++i)
        logs[i] += weight * other.logs[i];
    aging = aging || other.aging;
    found = found || other.found;
}

LikeLives likeLives(const IntervalLives &lives, Severity severity, Failing failing)
{
    LikeLives like{{}, isAging(lives), lives.found};
    if (lives.earlier.empty() && lives.now.passes.empty())
        return like;
    const double hazard = -std::log1p(-failedAtInterval(severity));
    const ShapeBelief belief = shapeBelief(failing);
    like.logs.reserve(static_cast<std::size_t>(scales * shapes));
    for (const Node &shapeNode : shapeNodes()) {
        const double shape = std::exp(belief.mean + belief.sd * shapeNode.z);
        for (const Node &scaleNode : scaleNodes()) {
            const double length = std::exp(logScaleSd * scaleNode.z);
            const WeibullLife ages = lifeOf(length, shape, hazard);
            const WeibullLife chance = lifeOf(length, 1.0, hazard);
            double log = std::log(likelihoodOf(lives.now.known ? ages : chance, lives.now));
            for (const IntervalLife &earlier : lives.earlier)
                log += std::log(likelihoodOf(earlier.known ? ages : chance, earlier));
            like.logs.push_back(log);
        }
    }
    return like;
}

RuleAges seenAges(const IntervalLives &lives, Severity severity, Failing failing, const LikeLives &like)
{
    const double hazard = -std::log1p(-failedAtInterval(severity));
    const ShapeBelief belief = shapeBelief(failing);
    const std::vector<double> favor = favorOf(like);
    const bool aging = isAging(lives) || (like.aging && !favor.empty());
    std::vector<RuleAges::Cell> cells;
    cells.reserve(static_cast<std::size_t>(scales * (aging ? shapes : 1)));
    std::size_t cell = 0;
    for (const Node &shapeNode : shapeNodes()) {
        const double shape = aging ? std::exp(belief.mean + belief.sd * shapeNode.z) : 1.0;
        for (const Node &scaleNode : scaleNodes()) {
            const double length = std::exp(logScaleSd * scaleNode.z);
            const WeibullLife ages = lifeOf(length, shape, hazard);
            const WeibullLife chance = lifeOf(length, 1.0, hazard);
            double weight = scaleNode.weight * (aging ? shapeNode.weight : 1.0);
            weight *= favor.empty() ? 1.0 : favor[cell++];
            for (const IntervalLife &earlier : lives.earlier)
                weight *= likelihoodOf(earlier.known ? ages : chance, earlier);
            const WeibullLife &life = lives.now.known ? ages : chance;
            const double passed = likelihoodOf(life, lives.now);
            weight *= passed;
            if (!(weight > 0.0))
                continue;
            const double needed = life.hazard(lives.now.born) + hazard - std::log(passed);
            const double fires = life.scale * std::pow(std::max(needed, 0.0), 1.0 / life.shape);
            cells.push_back({std::max(fires, lives.age), weight});
        }
        if (!aging)
            break;
    }
    if (cells.empty()) // every life finds it impossible: as if nothing had been seen
        return unseenAges();
    return RuleAges(std::move(cells));
}

} // namespace snugwalk

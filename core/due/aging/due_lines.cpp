// SPDX-License-Identifier: Apache-2.0
// Making each line once.
#include "due/aging/due_lines.hpp"

namespace snugwalk {
namespace {

DueLines::UseCases casesOf(const RigHistory &history, const UsageForecast &usage, LocalTime now, Roads roads,
                           const Ahead &ahead)
{
    return {UseLine(history, usage, now, UseCase::Much, roads, ahead),
            UseLine(history, usage, now, UseCase::Likely, roads, ahead),
            UseLine(history, usage, now, UseCase::Little, roads, ahead)};
}

DueLines::UseCases alike(const UseLine &line) { return {line, line, line}; }

} // namespace

DueLines::DueLines(const RigHistory &history, const UsageForecast &usage, LocalTime now, const Ahead &ahead)
    : m_history(history),
      m_usage(usage),
      m_now(now),
      m_ahead(ahead),
      m_exposure(exposureOf(history, usage, now, ahead))
{}

const DueLines::AgeCases &DueLines::age(const AgeWeights &weights)
{
    auto found = m_ages.find(weights);
    if (found == m_ages.end())
        found = m_ages
                    .emplace(weights, AgeCases{AgeLine(m_exposure, weights, Doubt::Slow),
                                               AgeLine(m_exposure, weights, Doubt::Middle),
                                               AgeLine(m_exposure, weights, Doubt::Fast)})
                    .first;
    return found->second;
}

const DueLines::UseCases &DueLines::use(const Causes &causes)
{
    const bool road = causes.drivers[static_cast<std::size_t>(AgeDriver::Shake)];
    auto &cases = m_uses[(causes.use ? 0U : 2U) + (road ? 0U : 1U)];
    if (cases)
        return *cases;
    if (causes.use) {
        cases = casesOf(m_history, m_usage, m_now, road ? Roads::AsDriven : Roads::Smooth, m_ahead);
    } else {
        const double consumption = road ? use({}).front().consumption() : 1.0;
        cases = alike(UseLine::reference(consumption));
    }
    return *cases;
}

AgeWeights kept(const AgeWeights &weights, const Causes &causes)
{
    AgeWeights out;
    for (std::size_t k = 0; k < ageDriverCount; ++k)
        out.gamma[k] = causes.drivers[k] ? weights.gamma[k] : 0.0;
    return out;
}

} // namespace snugwalk

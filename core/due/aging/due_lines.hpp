// SPDX-License-Identifier: Apache-2.0
// The lines that all points of a rig share: how it aged and was used, each made once.
#pragma once

#include <array>
#include <map>
#include <optional>

#include "due/aging/age_line.hpp"
#include "due/aging/use_line.hpp"

namespace snugwalk {

/// What is taken as it was; what is left out is taken as the catalogue assumes. For telling causes apart.
struct Causes {
    std::array<bool, ageDriverCount> drivers{true, true, true, true, true, true};
    bool use = true;  ///< the rig's own distance, not 10,000 km a year
    bool seen = true; ///< looks and mends before the last one
};

/// Not for use by two threads at once: lines are made when first asked for. Holds the history by reference.
class DueLines {
public:
    DueLines(const RigHistory &history, const UsageForecast &usage, LocalTime now, const Ahead &ahead = {});

    using AgeCases = std::array<AgeLine, 3>; ///< slow, middle, fast
    [[nodiscard]] const AgeCases &age(const AgeWeights &weights);
    using UseCases = std::array<UseLine, 3>; ///< much, likely, little
    [[nodiscard]] const UseCases &use(const Causes &causes);
    [[nodiscard]] const Exposure &exposure() const { return m_exposure; }

private:
    const RigHistory &m_history;
    UsageForecast m_usage;
    LocalTime m_now;
    Ahead m_ahead;
    Exposure m_exposure;
    std::map<AgeWeights, AgeCases> m_ages;
    std::array<std::optional<UseCases>, 4> m_uses; ///< own or reference distance, roads as driven or smooth
};

/// The weights of the drivers that are taken as they were.
[[nodiscard]] AgeWeights kept(const AgeWeights &weights, const Causes &causes);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Interval distance used up against days: what was driven, then what will be, each road at its own rate.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "due/aging/ahead.hpp"
#include "due/driven_log.hpp"
#include "due/usage.hpp"

namespace snugwalk {

/// The three cases of driving to come: more than likely, likely, less; a distance is reached within their
/// times with probability 0.1, 0.5 and 0.9. With `caseWeights` they have mean 0 and variance 1.
enum class UseCase { Much, Likely, Little };
inline constexpr std::array useCases = {UseCase::Much, UseCase::Likely, UseCase::Little};
/// 1 / (2 z^2) at z = 1.2816, the rest in the middle.
inline constexpr std::array caseWeights = {0.30443, 0.39114, 0.30443};

/// Roads as they were driven, or as if all had been smooth.
enum class Roads { AsDriven, Smooth };

/// A broken line that only rises. Distance counts by the road it was driven on: 1,000 km of gravel use up
/// 2,500 km of an interval (see `TripShake::consumption`). Ahead it goes by the mean of the log so far.
class UseLine {
public:
    UseLine(const RigHistory &history, const UsageForecast &usage, LocalTime now, UseCase which, Roads roads,
            const Ahead &ahead = {});
    /// 10,000 km a year since ever: what the catalogue's intervals were made for.
    [[nodiscard]] static UseLine reference(double consumption);

    /// Interval distance over distance, mean of the log.
    [[nodiscard]] double consumption() const { return m_consumption; }

    /// Metres used up at a day, from an arbitrary start.
    [[nodiscard]] double at(double day) const;
    /// The day by which `metres` more than at `from` are used up; nothing within sixty years.
    [[nodiscard]] std::optional<double> dayWhen(double from, double metres) const;

private:
    UseLine() = default;
    [[nodiscard]] double usualAt(double days) const;

    std::vector<double> m_days; ///< of the log and the plan
    std::vector<double> m_used;
    // ahead: even days by the season, then metres by even days
    std::vector<double> m_season;
    std::vector<double> m_even;
    std::vector<double> m_evenKnots;
    std::vector<double> m_metres;
    double m_consumption = 1.0;
};

} // namespace snugwalk

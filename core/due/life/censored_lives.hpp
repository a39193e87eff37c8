// SPDX-License-Identifier: Apache-2.0
// Lives known only by looks: passed at one age, failed by another, and their CSV form.
#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// Failed after `lower` and by `upper`, in any one unit of time.
struct CensoredLife {
    double lower = 0.0;                                     ///< last pass; 0 when it never passed
    double upper = std::numeric_limits<double>::infinity(); ///< infinite: still passing
    double weight = 1.0;                                    ///< so many alike
    std::size_t line = 0;                                   ///< in its file, from 1; 0 without one

    [[nodiscard]] bool found() const { return upper < std::numeric_limits<double>::infinity(); }
};

struct CensoredLives {
    std::vector<CensoredLife> lives;
    std::vector<std::string> names; ///< of the covariates
    std::vector<double> covariates; ///< life after life, as many each as names

    /// "line 12", or "life 3" when it came from no file.
    [[nodiscard]] std::string where(std::size_t life) const;
};

/// Whether an exactly known age (lower = upper) may stand among the lives.
enum class ExactAges { Allowed, Refused };

/// Every figure finite (upper may be infinite), 0 <= lower, lower < upper, weight >= 0.
[[nodiscard]] Status checkLives(const CensoredLives &data, ExactAges exact);

/// Columns `lower`, `upper` (empty or `inf`: still passing), `weight` (1 without the column); every
/// other column is a covariate by its name.
/// \returns `InvalidInput` or `OutOfRange` with file, line and column.
[[nodiscard]] Result<CensoredLives> censoredLivesFromCsv(std::string_view text, const std::string &file,
                                                         ExactAges exact);

} // namespace snugwalk

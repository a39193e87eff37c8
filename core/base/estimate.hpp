// SPDX-License-Identifier: Apache-2.0
// What every computation gives: a value with its range, where it comes from, and what to mind.
#pragma once

#include <string>
#include <vector>

namespace snugwalk {

/// Value and range are in the SI unit named by `unit`. `basis` is one of maker, measured, fitted,
/// prior, published, common_practice, computed. Warnings are slugs that texts turn into sentences.
struct Estimate {
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    double level = 0.8; ///< share of cases in which the truth lies between low and high
    std::string unit;
    std::string basis;
    std::string source; ///< key of a source, or words for one
    std::vector<std::string> warnings;
    std::vector<std::string> inputsDefaulted; ///< inputs nobody gave, by name
};

} // namespace snugwalk

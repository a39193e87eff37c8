// SPDX-License-Identifier: Apache-2.0
// Every figure of a concern opened: what it is, in words, with its basis and where that is from.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "catalogue/texts.hpp"
#include "round/state.hpp"

namespace snugwalk {

struct WhyLine {
    std::string figure; ///< slug: consequence, grade, months_ahead, chance, risk …
    std::string text;
    std::optional<double> value;
    std::optional<double> low;
    std::optional<double> high;
    std::string unit;  ///< month; empty for plain numbers
    std::string basis; ///< maker, measured, fitted, prior, published, common_practice, computed
    std::vector<std::string> sources; ///< full names
};

[[nodiscard]] std::vector<WhyLine> whyOfFinding(const Standing &standing, const Catalogue &catalogue,
                                                const OpenFinding &finding, const Texts &texts);
[[nodiscard]] std::vector<WhyLine> whyOfPoint(const Standing &standing, const Catalogue &catalogue,
                                              const PointConcern &point, const Texts &texts);
/// "basis: common practice; source: …", or nothing where the line is computed from those above.
[[nodiscard]] std::string basisWords(const WhyLine &line, const Texts &texts);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The rig's drawing as SVG: side elevation over plan, findings by shape with numbered balloons.
#pragma once

#include <string>
#include <vector>

#include "report/report.hpp"

namespace snugwalk::html {

/// Ink on paper, in millimetre-like user units; scales to the width it is given.
[[nodiscard]] std::string drawingSvg(const Rig &rig, const std::vector<ReportFinding> &findings,
                                     const std::string &sideWords, const std::string &planWords);
/// The shape of a call alone, 20 x 20.
[[nodiscard]] std::string glyphSvg(Call call);

} // namespace snugwalk::html

// SPDX-License-Identifier: Apache-2.0
// A plot as the bytes of a file.
#pragma once

#include <string>

#include "base/result.hpp"
#include "report/plot/plot.hpp"

namespace snugwalk {

/// png: drawn from the same SVG, 2,000 pixels wide; svg; csv. `Unsupported` for another ending.
[[nodiscard]] Result<std::string> plotFile(const Plot &plot, const std::string &ending);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A report or a plot as a file, without a window.
#pragma once

#include "base/result.hpp"
#include "options.hpp"

namespace snugwalk {

/// Reads `options.book`, writes `options.paperFile` as its ending says.
/// \returns `NotFound` without that logbook or a rig in it, the errors of `ReportDesk::bytes`, `Io`.
[[nodiscard]] Status writePaper(const Options &options);

/// The same of `options.plot`. \returns `NotFound` where no plot has the words asked for, `Usage` for another
/// kind.
[[nodiscard]] Status writePlot(const Options &options);

} // namespace snugwalk

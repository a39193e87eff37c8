// SPDX-License-Identifier: Apache-2.0
// One run of the program, by its options.
#pragma once

#include <QStringList>

namespace snugwalk {

/// \returns the exit code; see `exitCode` of base/result.hpp.
[[nodiscard]] int runApp(const QStringList &arguments);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A picture of every page in every size, theme and language.
#pragma once

#include <QString>

#include "base/result.hpp"

namespace snugwalk {

class Wiring;

/// Writes page-size-theme-language.png into `folder`. \returns `Io` when a picture cannot be written or a
/// page never stands still.
/// \param only pages whose name begins so; empty for all
[[nodiscard]] Status drawScreens(Wiring &wiring, const QString &folder, const QString &only);

} // namespace snugwalk

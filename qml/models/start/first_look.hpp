// SPDX-License-Identifier: Apache-2.0
// The first walk of a rig that nobody has looked at: short, by what matters most.
#pragma once

#include <QVariantMap>

#include "round/budget.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// Minutes that a first look may take; common practice, no source.
inline constexpr int firstLookMinutes = 15;

/// Whether no point of the rig has a mark yet.
[[nodiscard]] bool wantsFirstLook(const Shown &shown);

/// As an entry of `walkKinds`: a full round within its minutes, with `walk` and `budget` to start it by.
[[nodiscard]] QVariantMap firstLookKind(const BudgetedTape &fitted);

} // namespace snugwalk

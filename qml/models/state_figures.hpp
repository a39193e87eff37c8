// SPDX-License-Identifier: Apache-2.0
// The three figures of a rig's state, each with its grounds in plain words. Never an average.
#pragma once

#include <QVariantList>

#include "snapshot.hpp"

namespace snugwalk {

/// [{title, brief, text, why: [text]}]: the worst item, the chance that one serious item fails before its
/// next look, the share of the weight that was looked at. Empty before anything was looked at.
[[nodiscard]] QVariantList stateFigures(const Shown &shown);

} // namespace snugwalk

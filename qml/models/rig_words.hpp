// SPDX-License-Identifier: Apache-2.0
// Sentences and lists about a rig as a whole.
#pragma once

#include <QVariantList>

#include "snapshot.hpp"

namespace snugwalk {

/// "twin-axle travel trailer, 6.4 m, 2500 kg; 412 km logged".
[[nodiscard]] QString aboutWords(const Shown &shown);

/// "No hold among the 24 points looked at since 08:10 today by A. … This says what was looked at,
/// not that nothing will fail."
[[nodiscard]] QString stateSentence(const Shown &shown);

/// [{title, why, forbids, findingId}]
[[nodiscard]] QVariantList holdList(const Shown &shown);

/// "Wheel nuts, hidden by A., 3 May 2026": points that stay in sight although they are hidden.
[[nodiscard]] QStringList hiddenInSightWords(const Shown &shown, const Catalogue &product);

/// [{slug, name, about, lines, minutes, jobs, suggested}] for a rig; minutes of
/// looking, `jobs` says how many points are more than that.
[[nodiscard]] QVariantList walkKinds(const Shown &shown, const Catalogue &catalogue);

/// "Before the road, 14 lines, about 9 minutes": the kind that is suggested.
[[nodiscard]] QString suggestionWords(const QVariantList &kinds);

} // namespace snugwalk

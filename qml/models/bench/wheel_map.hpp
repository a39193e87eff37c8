// SPDX-License-Identifier: Apache-2.0
// The rig's wheels from above with what each read last, and before.
#pragma once

#include <QVariantMap>

#include "bench/ask/question.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// {kind: "wheels", title, point, limits, wheels: [{place, name, axle (from 0), left, value, date, out, told,
/// history: [{label, value}]}], axles}, of the reading that the question is kept as; tires fall back to the
/// cold pressure. Newest first, six at most a wheel. Empty without a rig with wheels or such a reading.
[[nodiscard]] QVariantMap wheelMap(const Shown &shown, const Catalogue &catalogue,
                                   const BenchQuestion &question);

} // namespace snugwalk

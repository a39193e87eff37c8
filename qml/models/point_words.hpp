// SPDX-License-Identifier: Apache-2.0
// A point's interval in words and from words, and whose choice it is.
#pragma once

#include "catalogue/own.hpp"
#include "points_model.hpp"

namespace snugwalk {

/// "every 12 months or 10 000 km"; "before each move" where nothing is counted.
[[nodiscard]] QString intervalWords(const Voice &voice, const Interval &interval);
[[nodiscard]] PointEntry pointEntry(const Voice &voice, const Point &point, const Catalogue &product,
                                    const OwnChoices &own);
/// Either may be empty. A bare distance is kilometres or miles. `InvalidInput` for what is not understood.
[[nodiscard]] Result<Interval> readInterval(const QString &months, const QString &distance,
                                            const Voice &voice);
/// [{slug, name}] of what may fail with a point of one's own.
[[nodiscard]] QVariantList consequenceChoices();

} // namespace snugwalk

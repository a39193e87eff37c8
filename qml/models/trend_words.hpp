// SPDX-License-Identifier: Apache-2.0
// A trend as its page shows it: figures in the unit it was read in, days from today, one sentence.
#pragma once

#include <QVariantMap>

#include "due/trend/trend.hpp"
#include "voice.hpp"

namespace snugwalk {

/// {title, sentence, basis, points, before: [{leftOut, date, text}], spoken}; its plot is `readingPlot`'s.
[[nodiscard]] QVariantMap trendMap(const Voice &voice, const Trend &trend);

} // namespace snugwalk

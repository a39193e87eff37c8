// SPDX-License-Identifier: Apache-2.0
// A trend as its page shows it: figures in the unit it was read in, days from today, one sentence.
#pragma once

#include <QVariantMap>

#include "due/trend/trend.hpp"
#include "voice.hpp"

namespace snugwalk {

/// {title, sentence, basis, points, before: [{day, value, leftOut, date, text}], low, high,
/// line: [{day, value}], early, likely, late, firstDay, lastDay, least, most, ticks: [{value, text}],
/// dates: [{day, text}], limits: [{value, text}], spoken}; NaN where there is none.
[[nodiscard]] QVariantMap trendMap(const Voice &voice, const Trend &trend, CivilDate today);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The axes of the small pictures beside a road and a date: round figures up, months or years along.
#pragma once

#include <QVariantList>

#include "voice.hpp"

namespace snugwalk {

/// Steps of 1, 2 or 5 times a power of ten, about four of them; all within `least` and `most`.
[[nodiscard]] std::vector<double> roundSteps(double least, double most);

/// [{day, text}]: years over a span of more than 30 months, else months; days from `today`, five at most.
[[nodiscard]] QVariantList dateTicks(const Voice &voice, CivilDate today, double firstDay, double lastDay);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// When a point is due, and why, in words.
#pragma once

#include <QStringList>

#include "due/band.hpp"
#include "voice.hpp"

namespace snugwalk {

/// "likely 4 Aug 2027, from 2 Jun 2027 to 1 Nov 2027", "before each move", "past due 12 days".
[[nodiscard]] QString dueWhen(const Voice &voice, const DueBand &band, CivilDate today);
/// A sentence a reason.
[[nodiscard]] QStringList dueWhy(const Voice &voice, const DueBand &band);

} // namespace snugwalk

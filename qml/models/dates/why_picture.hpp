// SPDX-License-Identifier: Apache-2.0
// The steps from the catalogue's date to the likely one, as the page draws them.
#pragma once

#include <QVariantMap>

#include "due/shift.hpp"
#include "voice.hpp"

namespace snugwalk {

/// {nominal, likely, early, late, firstDay, lastDay: days from today; nominalText, likelyText;
/// steps: [{name, text, from, to}], largest first; ticks: [{day, text}]; spoken}. Causes that moved nothing
/// that shows are one step together, so that the line ends at the likely date.
[[nodiscard]] QVariantMap whyPicture(const Voice &voice, const DueBand &band, const DueShift &shift,
                                     CivilDate today);

} // namespace snugwalk

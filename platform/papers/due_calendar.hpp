// SPDX-License-Identifier: Apache-2.0
// Due dates as entries of a calendar.
#pragma once

#include <vector>

#include "catalogue/texts.hpp"
#include "report/calendar.hpp"
#include "round/state.hpp"

namespace snugwalk::papers {

/// One entry a point that may fall due within `days` of now, on its likely date, or today where that is past;
/// the alarm on the day its band speaks up.
[[nodiscard]] std::vector<CalendarEntry> dueCalendar(const Standing &standing, const Texts &texts, int days);

} // namespace snugwalk::papers

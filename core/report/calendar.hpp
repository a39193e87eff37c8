// SPDX-License-Identifier: Apache-2.0
// Dates for other people's calendars: iCalendar text with an alarm each.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.hpp"
#include "base/time.hpp"

namespace snugwalk {

/// A whole day in a calendar.
struct CalendarEntry {
    std::string uid; ///< the same each time it is written, so that a calendar replaces what it has
    CivilDate day{};
    std::optional<CivilDate> alarm; ///< the day on which it speaks up, at nine in the morning there
    std::string title;
    std::string description; ///< lines end in \n
};

/// Name of a rig's entry, from the rig's id and the point's or job's name: unique wherever rigs meet.
[[nodiscard]] std::string calendarUid(const Id &rig, std::string_view name);

/// One VCALENDAR of all-day VEVENTs, each with a VALARM where it has one. Days carry no zone; the alarm
/// counts from the day's beginning wherever the calendar is read. Format: [RFC5545]: CRLF, lines of 75 octets
/// at most that never part a character, text escaped; control
///         characters but tab and line end are left out
/// Tests:  tests/unit/report/tst_calendar.cpp, tests/journey/calendar_dates.py (read by another library)
[[nodiscard]] std::string calendarText(const std::vector<CalendarEntry> &entries, LocalTime now);

} // namespace snugwalk

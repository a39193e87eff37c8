// SPDX-License-Identifier: Apache-2.0
// Reads a calendar on standard input with libical and tells what it holds: a line an event, parts parted by
// tabs.
#include <libical/ical.h>

#include <cstdio>
#include <iostream>
#include <iterator>
#include <string>

namespace {

std::string textOf(const char *text) { return text == nullptr ? "" : text; }

// Seconds from the beginning of the day to the first alarm; "-" without one.
std::string alarmOf(icalcomponent *event)
{
    icalcomponent *alarm = icalcomponent_get_first_component(event, ICAL_VALARM_COMPONENT);
    icalproperty *trigger =
        alarm == nullptr ? nullptr : icalcomponent_get_first_property(alarm, ICAL_TRIGGER_PROPERTY);
    if (trigger == nullptr)
        return "-";
    return std::to_string(icaldurationtype_as_int(icalproperty_get_trigger(trigger).duration));
}

} // namespace

int main()
{
    const std::string text((std::istreambuf_iterator<char>(std::cin)), std::istreambuf_iterator<char>());
    icalcomponent *calendar = icalparser_parse_string(text.c_str());
    if (calendar == nullptr || icalcomponent_isa(calendar) != ICAL_VCALENDAR_COMPONENT) {
        std::fputs("no calendar\n", stderr);
        return 1;
    }
    const int faults = icalcomponent_count_errors(calendar);
    const int allowed = icalrestriction_check(calendar);
    if (faults != 0 || allowed == 0) {
        std::fprintf(stderr, "%d errors, restrictions %s\n", faults, allowed == 0 ? "broken" : "kept");
        std::fputs(icalcomponent_as_ical_string(calendar), stderr);
        return 1;
    }
    for (icalcomponent *event = icalcomponent_get_first_component(calendar, ICAL_VEVENT_COMPONENT);
         event != nullptr; event = icalcomponent_get_next_component(calendar, ICAL_VEVENT_COMPONENT)) {
        const icaltimetype start = icalcomponent_get_dtstart(event);
        std::printf("%s\t%04d-%02d-%02d\t%d\t%s\t%s\n", textOf(icalcomponent_get_uid(event)).c_str(),
                    start.year, start.month, start.day, start.is_date, alarmOf(event).c_str(),
                    textOf(icalcomponent_get_summary(event)).c_str());
    }
    icalcomponent_free(calendar);
    return 0;
}

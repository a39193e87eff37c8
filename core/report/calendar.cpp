// SPDX-License-Identifier: Apache-2.0
// Lines of iCalendar: escaped, folded, ended.
#include "report/calendar.hpp"

#include <cstdlib>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t octetsAtMost = 75;
constexpr int alarmHour = 9;

// TEXT of section 3.3.11.
std::string escaped(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '\n')
            out += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            out += std::string("\\") + c;
        else if ((byte >= 0x20 && byte != 0x7f) || c == '\t')
            out += c;
    }
    return out;
}

bool isInsideCharacter(char c) { return (static_cast<unsigned char>(c) & 0xc0U) == 0x80U; }

// Folding of section 3.1: a line goes on after CRLF and a blank, which counts.
void addLine(std::string &out, std::string_view line)
{
    std::size_t room = octetsAtMost;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 1 && isInsideCharacter(line[cut]))
            --cut;
        out.append(line.substr(0, cut)).append("\r\n ");
        line.remove_prefix(cut);
        room = octetsAtMost - 1;
    }
    out.append(line).append("\r\n");
}

std::string dayText(CivilDate day) { return replaceAll(formatDate(day), "-", ""); }

std::string momentText(Instant moment)
{
    const Instant second = std::chrono::floor<std::chrono::seconds>(moment);
    return replaceAll(replaceAll(formatInstant(second), "-", ""), ":", "");
}

// From the beginning of `day` to the alarm's hour on `alarm`, as a duration.
std::string triggerText(CivilDate day, CivilDate alarm)
{
    const long long hours = daysBetween(day, alarm) * 24 + alarmHour;
    const long long whole = std::llabs(hours) / 24;
    const long long rest = std::llabs(hours) % 24;
    return std::string(hours < 0 ? "-P" : "P") + (whole > 0 ? std::to_string(whole) + "D" : "") +
           (rest > 0 || whole == 0 ? "T" + std::to_string(rest) + "H" : "");
}

void addEntry(std::string &out, const CalendarEntry &entry, const std::string &stamp)
{
    addLine(out, "BEGIN:VEVENT");
    addLine(out, "UID:" + escaped(entry.uid));
    addLine(out, "DTSTAMP:" + stamp);
    addLine(out, "DTSTART;VALUE=DATE:" + dayText(entry.day));
    addLine(out, "SUMMARY:" + escaped(entry.title));
    if (!entry.description.empty())
        addLine(out, "DESCRIPTION:" + escaped(entry.description));
    addLine(out, "TRANSP:TRANSPARENT");
    if (entry.alarm) {
        addLine(out, "BEGIN:VALARM");
        addLine(out, "ACTION:DISPLAY");
        addLine(out, "DESCRIPTION:" + escaped(entry.title));
        addLine(out, "TRIGGER:" + triggerText(entry.day, *entry.alarm));
        addLine(out, "END:VALARM");
    }
    addLine(out, "END:VEVENT");
}

} // namespace

std::string calendarUid(const Id &rig, std::string_view name)
{
    return std::string(name) + "." + rig.text() + "@snugwalk";
}

std::string calendarText(const std::vector<CalendarEntry> &entries, LocalTime now)
{
    std::string out;
    addLine(out, "BEGIN:VCALENDAR");
    addLine(out, "VERSION:2.0");
    addLine(out, "PRODID:-//Snugwalk//Due dates//EN");
    addLine(out, "CALSCALE:GREGORIAN");
    const std::string stamp = momentText(now.instant);
    for (const CalendarEntry &entry : entries)
        addEntry(out, entry, stamp);
    addLine(out, "END:VCALENDAR");
    return out;
}

} // namespace snugwalk

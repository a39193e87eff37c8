// SPDX-License-Identifier: Apache-2.0
// iCalendar text against the rules of [RFC5545].
#include <doctest/doctest.h>

#include <random>

#include "base/text.hpp"
#include "report/calendar.hpp"
#include "support/book.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2027-01-10T22:15:30+13:00");

CivilDate day(std::string_view text) { return parseDate(text).value(); }

std::vector<std::string> linesOf(const std::string &text)
{
    std::vector<std::string> lines;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = text.find("\r\n", at);
        REQUIRE(end != std::string::npos);
        lines.push_back(text.substr(at, end - at));
        at = end + 2;
    }
    return lines;
}

// Section 3.1: a line end followed by a blank is no line end.
std::string unfolded(const std::string &text) { return replaceAll(text, "\r\n ", ""); }

} // namespace

TEST_CASE("one day with its alarm, line by line")
{
    const std::string text =
        calendarText({{"roof-membrane.00ff@snugwalk", day("2027-03-12"), day("2027-03-01"),
                       "Heron: roof, membrane", "early; likely\nlate \\ never"}},
                     now);
    // the example of section 3.6.1 for whole days, alarms of 3.6.6, TEXT of 3.3.11
    CHECK(linesOf(unfolded(text)) ==
          std::vector<std::string>{"BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Snugwalk//Due dates//EN",
                                   "CALSCALE:GREGORIAN", "BEGIN:VEVENT", "UID:roof-membrane.00ff@snugwalk",
                                   "DTSTAMP:20270110T091530Z", "DTSTART;VALUE=DATE:20270312",
                                   "SUMMARY:Heron: roof\\, membrane",
                                   "DESCRIPTION:early\\; likely\\nlate \\\\ never", "TRANSP:TRANSPARENT",
                                   "BEGIN:VALARM", "ACTION:DISPLAY", "DESCRIPTION:Heron: roof\\, membrane",
                                   "TRIGGER:-P10DT15H", "END:VALARM", "END:VEVENT", "END:VCALENDAR"});
}

TEST_CASE("alarms at nine, on the day, before and after it")
{
    const auto trigger = [](std::string_view alarm) {
        const std::string text = calendarText({{"a", day("2027-03-12"), day(alarm), "t", ""}}, now);
        const std::size_t at = text.find("TRIGGER:") + 8;
        return text.substr(at, text.find("\r\n", at) - at);
    };
    CHECK(trigger("2027-03-12") == "PT9H");
    CHECK(trigger("2027-03-11") == "-PT15H");
    CHECK(trigger("2027-03-10") == "-P1DT15H");
    CHECK(trigger("2027-03-13") == "P1DT9H");
    CHECK(calendarText({{"a", day("2027-03-12"), std::nullopt, "t", ""}}, now).find("VALARM") ==
          std::string::npos);
}

TEST_CASE("names stay the same for a rig and a point")
{
    const Id rig = Id::fromBytes(std::string(16, 'r'));
    CHECK(calendarUid(rig, "roof-membrane") == "roof-membrane." + rig.text() + "@snugwalk");
    CHECK(calendarUid(rig, "roof-membrane") !=
          calendarUid(Id::fromBytes(std::string(16, 's')), "roof-membrane"));
}

TEST_CASE("no line is longer than 75 octets, no character is parted, and nothing is lost by folding")
{
    std::mt19937 random(5545);
    const std::vector<std::string> pieces = {"a", "Z", " ", ",",  ";",    "\\", "\n",
                                             "ñ", "é", "€", "漢", "🛞", "\t"};
    for (int round = 0; round < 300; ++round) {
        std::string title;
        for (std::size_t i = 0; i < random() % 200; ++i)
            title += pieces[random() % pieces.size()];
        const std::string text = calendarText({{"u", day("2027-03-12"), std::nullopt, title, ""}}, now);
        for (const std::string &line : linesOf(text)) {
            CHECK(line.size() <= 75);
            CHECK(isUtf8(line));
        }
        std::string back;
        const std::string flat = unfolded(text);
        const std::size_t at = flat.find("SUMMARY:") + 8;
        for (std::size_t i = at; flat[i] != '\r'; ++i) {
            if (flat[i] != '\\') {
                back += flat[i];
                continue;
            }
            ++i;
            back += flat[i] == 'n' ? '\n' : flat[i];
        }
        CHECK(back == title);
    }
}

TEST_CASE("control characters are left out: section 3.3.11 knows none but the tab")
{
    const std::string text =
        calendarText({{"u", day("2027-03-12"), std::nullopt, std::string("a\x01\x7f\r") + "b\tc", ""}}, now);
    CHECK(text.find("SUMMARY:ab\tc\r\n") != std::string::npos);
}

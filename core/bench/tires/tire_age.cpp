// SPDX-License-Identifier: Apache-2.0
// Weeks and years of a date code.
#include "bench/tires/tire_age.hpp"

#include <cctype>
#include <string>

#include "base/text.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;

constexpr double daysAYear = 365.2425;
constexpr double reviewYears = 6.0;  // common practice, no source
constexpr double retireYears = 10.0; // common practice, no source

Error notACode(std::string_view text)
{
    return {Errc::InvalidInput, "not a date code: \"" + std::string(text.substr(0, 40)) + "\"", "code",
            "give the last four digits of the tire's code, week and year, such as 2319"};
}

CivilDate startOfWeek(int year, int week)
{
    const sys_days first = sys_days(std::chrono::year(year) / January / Sunday[1]);
    return CivilDate(first + days(7 * (week - 1)));
}

} // namespace

Result<TireMade> tireMade(std::string_view text)
{
    const std::string_view code = trim(text);
    std::size_t digits = 0;
    while (digits < code.size() &&
           std::isdigit(static_cast<unsigned char>(code[code.size() - 1 - digits])) != 0)
        ++digits;
    const bool isWhole = digits == code.size() || code[code.size() - 1 - digits] == ' ' ||
                         std::isalpha(static_cast<unsigned char>(code[code.size() - 1 - digits])) != 0;
    if (!isWhole || (digits != 3 && digits < 4) || code.size() > 40)
        return notACode(text);
    const std::string_view tail = code.substr(code.size() - (digits == 3 ? 3 : 4));
    const int week = (tail[0] - '0') * 10 + (tail[1] - '0');
    if (week < 1 || week > 53)
        return Error{Errc::OutOfRange, "no year has a week " + std::to_string(week), "code",
                     "read the four digits again: week 01 to 53, then the year"};
    if (digits == 3)
        return TireMade{startOfWeek(1990 + (tail[2] - '0'), week), true};
    return TireMade{startOfWeek(2000 + (tail[2] - '0') * 10 + (tail[3] - '0'), week), false};
}

Result<Estimate> tireAge(const TireMade &made, CivilDate on)
{
    const CivilDate latest = std::chrono::year(1999) / December / 31;
    const long long days = daysBetween(made.beforeTwoThousand ? latest : made.date, on);
    if (days < -7)
        return Error{Errc::OutOfRange, "made after the day asked for", "code",
                     "read the code again: week first, then the year"};
    const auto years = [](long long d) { return static_cast<double>(d < 0 ? 0 : d) / daysAYear; };
    Estimate e;
    e.value = years(days);
    e.low = years(days - 7);
    e.high = years(days + 7);
    e.unit = "year";
    e.basis = "published";
    e.source = "49CFR574";
    if (made.beforeTwoThousand) {
        e.high = e.value + 10.0; // which of the ten years before, nobody can tell
        e.warnings.emplace_back("before_2000");
    }
    if (e.value >= retireYears)
        e.warnings.emplace_back("tire_retire");
    else if (e.value >= reviewYears)
        e.warnings.emplace_back("tire_review");
    return e;
}

} // namespace snugwalk

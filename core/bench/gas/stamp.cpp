// SPDX-License-Identifier: Apache-2.0
// Months and years, whichever comes first.
#include "bench/gas/stamp.hpp"

#include <utility>

#include "base/text.hpp"

namespace snugwalk {

std::optional<CivilDate> parseStamp(std::string_view typed)
{
    const std::string_view text = trim(typed);
    if (text.size() > 10)
        return std::nullopt;
    if (const auto whole = parseDate(text))
        return whole;
    const auto mark = text.find_first_of("-/. ");
    if (mark == std::string_view::npos)
        return std::nullopt;
    std::string_view month = text.substr(0, mark);
    std::string_view year = text.substr(mark + 1);
    if (month.size() == 4)
        std::swap(month, year);
    const auto m = parseInteger(month);
    auto y = parseInteger(year);
    if (!m || !y || *m < 1 || *m > 12 || *y < 0 || month.size() > 2 || (year.size() != 2 && year.size() != 4))
        return std::nullopt;
    if (year.size() == 2)
        *y += *y >= 50 ? 1900 : 2000;
    return CivilDate(std::chrono::year(static_cast<int>(*y)), std::chrono::month(static_cast<unsigned>(*m)),
                     std::chrono::day(1));
}

} // namespace snugwalk

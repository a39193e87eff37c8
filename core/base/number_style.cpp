// SPDX-License-Identifier: Apache-2.0
// One pass over the text; a number is a run of digits with marks between them.
#include "base/number_style.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isMark(char c) { return c == '.' || c == ','; }

// Spaces that are written inside numbers only. A plain space is one where the style groups by it.
constexpr std::array<std::string_view, 3> groupingSpaces = {"\u00a0", "\u202f", "\u2009"};

std::size_t spaceAt(std::string_view text, std::size_t at, NumberStyle style)
{
    for (const std::string_view space : groupingSpaces) {
        if (text.substr(at).starts_with(space))
            return space.size();
    }
    if (text.substr(at).starts_with("\u2019")) // the apostrophe of Swiss numbers
        return std::string_view("\u2019").size();
    return style.grouping == ' ' && text[at] == ' ' ? 1 : 0;
}

std::size_t digitsAt(std::string_view text, std::size_t at)
{
    std::size_t end = at;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    return end - at;
}

// "1 250,5" without its spaces; only groups of three after one to three digits are joined, and never the
// whole part of "2 125/1000".
std::string withoutSpaces(std::string_view text, NumberStyle style)
{
    std::string out;
    std::size_t front = 0; // digits since the number began, 0 when none did
    bool inDecimals = false;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t space = front >= 1 && front <= 3 ? spaceAt(text, i, style) : 0;
        const std::size_t after = i + space;
        if (space > 0 && digitsAt(text, after) == 3 && (after + 3 == text.size() || text[after + 3] != '/')) {
            out += text.substr(after, 3);
            i = after + 3;
            front = 3; // a further group may follow
            continue;
        }
        inDecimals = isMark(text[i]) || (inDecimals && isDigit(text[i]));
        front = isDigit(text[i]) && !inDecimals ? front + 1 : 0;
        out += text[i++];
    }
    return out;
}

// Groups of three after one to three digits.
bool isGrouped(std::string_view whole, char mark)
{
    const auto groups = split(whole, mark);
    const bool allThree =
        std::all_of(groups.begin() + 1, groups.end(), [](std::string_view g) { return g.size() == 3; });
    return allThree && !groups.front().empty() && groups.front().size() <= 3 && groups.front() != "0";
}

std::string joined(std::string_view whole, char mark)
{
    return replaceAll(std::string(whole), std::string_view(&mark, 1), "");
}

// Both marks: the last one splits off the decimals, the other groups.
std::string withBoth(std::string_view number)
{
    const std::size_t last = number.find_last_of(".,");
    const char decimal = number[last];
    const char grouping = decimal == '.' ? ',' : '.';
    const std::string_view whole = number.substr(0, last);
    if (whole.find(decimal) != std::string_view::npos || !isGrouped(whole, grouping))
        return std::string(number);
    return joined(whole, grouping) + "." + std::string(number.substr(last + 1));
}

std::string withOne(std::string_view number, NumberStyle style, std::optional<DoubtfulNumber> &doubtful)
{
    const std::size_t at = number.find_first_of(".,");
    const char mark = number[at];
    const std::string decimal = std::string(number.substr(0, at)) + "." + std::string(number.substr(at + 1));
    if (mark == style.decimal || !isGrouped(number, mark))
        return decimal;
    const bool groups = mark == style.grouping;
    std::string taken = groups ? joined(number, mark) : decimal;
    if (style.decimal != '.') { // in English a comma has one meaning before three digits
        std::string other =
            groups ? replaceAll(decimal, ".", std::string_view(&style.decimal, 1)) : joined(number, mark);
        if (!doubtful)
            doubtful = DoubtfulNumber{std::string(number), taken, std::move(other)};
    }
    return taken;
}

std::string plainNumber(std::string_view number, NumberStyle style, std::optional<DoubtfulNumber> &doubtful)
{
    const auto marks = std::count_if(number.begin(), number.end(), isMark);
    if (marks == 0)
        return std::string(number);
    const bool both =
        number.find('.') != std::string_view::npos && number.find(',') != std::string_view::npos;
    if (both)
        return withBoth(number);
    if (marks == 1)
        return withOne(number, style, doubtful);
    const char mark = number[number.find_first_of(".,")];
    return isGrouped(number, mark) ? joined(number, mark) : std::string(number);
}

} // namespace

PlainNumbers plainNumbers(std::string_view typed, NumberStyle style)
{
    const std::string text = withoutSpaces(typed, style);
    PlainNumbers plain;
    for (std::size_t i = 0; i < text.size();) {
        const bool begins =
            isDigit(text[i]) || (isMark(text[i]) && i + 1 < text.size() && isDigit(text[i + 1]));
        if (!begins) {
            plain.text += text[i++];
            continue;
        }
        std::size_t end = i;
        while (end < text.size() &&
               (isDigit(text[end]) || (isMark(text[end]) && end + 1 < text.size() && isDigit(text[end + 1]))))
            ++end;
        plain.text += plainNumber(std::string_view(text).substr(i, end - i), style, plain.doubtful);
        i = end;
    }
    return plain;
}

} // namespace snugwalk

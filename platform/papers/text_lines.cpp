// SPDX-License-Identifier: Apache-2.0
// Wrapping and columns.
#include "papers/text_lines.hpp"

#include <algorithm>
#include <numeric>

#include "base/text.hpp"

namespace snugwalk::papers {
namespace {

constexpr std::size_t gap = 2;

bool startsCharacter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

// The first `count` characters of `text`, in bytes.
std::size_t bytesOf(std::string_view text, std::size_t count)
{
    std::size_t at = 0;
    while (at < text.size() && (count > 0 || !startsCharacter(text[at]))) {
        if (startsCharacter(text[at]))
            --count;
        ++at;
    }
    return at;
}

std::string filled(const std::string &text, std::size_t width, bool right)
{
    const std::size_t have = charactersIn(text);
    const std::string blanks(have < width ? width - have : 0, ' ');
    return right ? blanks + text : text + blanks;
}

std::size_t longestWord(std::string_view text)
{
    std::size_t longest = 0;
    for (const std::string_view word : split(text, ' '))
        longest = std::max(longest, charactersIn(word));
    return longest;
}

// Columns give way where their words still fit, the widest first; words are cut only when none can.
void narrow(std::vector<std::size_t> &widths, const std::vector<std::size_t> &words)
{
    std::size_t at = widths.size();
    for (std::size_t i = 0; i < widths.size(); ++i) {
        if (widths[i] > words[i] && (at == widths.size() || widths[i] > widths[at]))
            at = i;
    }
    if (at == widths.size())
        at = static_cast<std::size_t>(std::max_element(widths.begin(), widths.end()) - widths.begin());
    --widths[at];
}

std::vector<std::size_t> widthsOf(const TableBlock &table, std::size_t columns)
{
    std::vector<std::size_t> widths(table.head.size(), 1);
    std::vector<std::size_t> words(table.head.size(), 1);
    const auto take = [&](const std::vector<std::string> &row) {
        for (std::size_t i = 0; i < row.size() && i < widths.size(); ++i) {
            widths[i] = std::max(widths[i], charactersIn(row[i]));
            words[i] = std::max(words[i], longestWord(row[i]));
        }
    };
    take(table.head);
    for (const auto &row : table.rows)
        take(row);
    const std::size_t room = columns - std::min(columns - 1, gap * (widths.size() - 1));
    while (std::accumulate(widths.begin(), widths.end(), std::size_t{0}) > std::max(room, widths.size()))
        narrow(widths, words);
    return widths;
}

std::string rowLines(const std::vector<std::string> &cells, const std::vector<bool> &numeric,
                     const std::vector<std::size_t> &widths)
{
    std::vector<std::vector<std::string>> parts;
    std::size_t height = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        parts.push_back(wrapped(i < cells.size() ? cells[i] : "", std::max<std::size_t>(widths[i], 1)));
        height = std::max(height, parts.back().size());
    }
    std::string out;
    for (std::size_t y = 0; y < height; ++y) {
        std::string line;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const bool right = i < numeric.size() && numeric[i];
            line += filled(y < parts[i].size() ? parts[i][y] : "", widths[i], right) +
                    (i + 1 < parts.size() ? std::string(gap, ' ') : "");
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + "\n";
    }
    return out;
}

} // namespace

std::size_t charactersIn(std::string_view text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), startsCharacter));
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width)
{
    std::vector<std::string> lines;
    std::string line;
    for (std::string_view word : split(text, ' ')) {
        if (word.empty())
            continue;
        if (!line.empty() && charactersIn(line) + 1 + charactersIn(word) > width) {
            lines.push_back(line);
            line.clear();
        }
        while (line.empty() && charactersIn(word) > width) {
            const std::size_t cut = bytesOf(word, width);
            lines.emplace_back(word.substr(0, cut));
            word.remove_prefix(cut);
        }
        line += (line.empty() ? "" : " ") + std::string(word);
    }
    if (!line.empty() || lines.empty())
        lines.push_back(line);
    return lines;
}

std::string tableLines(const TableBlock &table, std::size_t columns)
{
    if (table.head.empty())
        return {};
    const std::vector<std::size_t> widths = widthsOf(table, columns);
    std::string out = rowLines(table.head, table.numeric, widths);
    const std::size_t wide = std::accumulate(widths.begin(), widths.end(), gap * (widths.size() - 1));
    out += std::string(std::min(wide, columns), '-') + "\n";
    for (const auto &row : table.rows)
        out += rowLines(row, table.numeric, widths);
    return out;
}

} // namespace snugwalk::papers

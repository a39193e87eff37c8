// SPDX-License-Identifier: Apache-2.0
// Lines, cells, and the numbers in them.
#include "road/series/cell_reader.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t longestLine = 4096;
constexpr std::size_t mostCells = 64;

Error atLine(std::string what, long long line, std::string act)
{
    return {Errc::InvalidInput, std::move(what), lineText(line), std::move(act)};
}

char separatorOf(std::string_view line)
{
    for (const char c : {';', '\t', ','}) {
        if (line.find(c) != std::string_view::npos)
            return c;
    }
    return ',';
}

std::string_view unquoted(std::string_view cell)
{
    cell = trim(cell);
    if (cell.size() >= 2 && cell.front() == '"' && cell.back() == '"')
        cell = trim(cell.substr(1, cell.size() - 2));
    return cell;
}

} // namespace

std::string lineText(long long line) { return "line " + std::to_string(line); }

std::string cellText(long long line, std::size_t column)
{
    return lineText(line) + ", column " + std::to_string(column + 1);
}

Status CellReader::feed(std::string_view bytes)
{
    for (auto end = bytes.find('\n'); end != std::string_view::npos; end = bytes.find('\n')) {
        std::string_view line = bytes.substr(0, end);
        bytes.remove_prefix(end + 1);
        if (m_rest.empty()) {
            SNUG_TRY(takeLine(line));
            continue;
        }
        m_rest += line.substr(0, longestLine + 1);
        const std::string whole = std::move(m_rest);
        m_rest.clear();
        SNUG_TRY(takeLine(whole));
    }
    m_rest += bytes.substr(0, longestLine + 1);
    if (m_rest.size() > longestLine)
        return atLine("a line over 4,096 bytes", m_line + 1, "give one row a line");
    return done();
}

Status CellReader::finish()
{
    const std::string last = std::move(m_rest);
    m_rest.clear();
    return last.empty() ? done() : takeLine(last);
}

Status CellReader::takeLine(std::string_view line)
{
    ++m_line;
    if (line.size() > longestLine)
        return atLine("a line over 4,096 bytes", m_line, "give one row a line");
    if (m_line == 1 && line.starts_with("\xEF\xBB\xBF"))
        line.remove_prefix(3);
    line = trim(line);
    if (line.starts_with('#'))
        return done();
    if (line.empty()) {
        m_emptyLine = m_emptyLine == 0 ? m_line : m_emptyLine;
        return done();
    }
    if (m_separator == 0)
        m_separator = separatorOf(line);
    else if (m_emptyLine > 0)
        return atLine("an empty line among the numbers", m_emptyLine,
                      "take the line out, or give one file a run");
    m_emptyLine = 0;
    m_cells.clear();
    for (;;) {
        const auto at = line.find(m_separator);
        m_cells.push_back(unquoted(line.substr(0, at)));
        if (at == std::string_view::npos)
            break;
        if (m_cells.size() == mostCells)
            return atLine("more than 64 columns", m_line, "give the columns needed alone");
        line.remove_prefix(at + 1);
    }
    return m_row(m_cells, m_line);
}

Result<double> numberIn(std::string_view cell, long long line, std::size_t column)
{
    if (const auto number = parseDouble(cell))
        return *number;
    const std::string where = cellText(line, column);
    if (cell.empty())
        return Error{Errc::InvalidInput, "an empty cell: a gap", where, "fill it, or take the line out"};
    const std::string lower = lowerAscii(cell);
    const std::string bare = lower.starts_with('-') || lower.starts_with('+') ? lower.substr(1) : lower;
    if (bare.starts_with("nan") || bare.starts_with("inf"))
        return Error{Errc::InvalidInput, "not a finite number: " + std::string(cell), where,
                     "take the line out; nothing is put in its place"};
    return Error{Errc::InvalidInput, "not a number: \"" + std::string(cell.substr(0, 40)) + "\"", where,
                 "write it with a decimal point and without a unit"};
}

bool isHeader(std::span<const std::string_view> cells)
{
    const auto number = [](std::string_view cell) { return parseDouble(cell).has_value(); };
    const auto named = [](std::string_view cell) {
        const std::string lower = lowerAscii(cell.substr(0, 1));
        const std::string whole = lowerAscii(cell);
        return !lower.empty() && lower >= "a" && lower <= "z" && whole != "nan" && whole != "inf" &&
               whole != "infinity";
    };
    return std::none_of(cells.begin(), cells.end(), number) && std::any_of(cells.begin(), cells.end(), named);
}

} // namespace snugwalk

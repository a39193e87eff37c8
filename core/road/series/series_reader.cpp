// SPDX-License-Identifier: Apache-2.0
// Choosing the column, and checking that it goes on.
#include "road/series/series_reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr double largest = 1e150; // so that sums of squares stay finite

// "time (s)" and "time_s" are time.
bool isAlong(std::string_view name)
{
    constexpr std::array names = {"time", "t", "seconds", "distance", "x", "s", "position", "station"};
    const std::string lower = lowerAscii(name);
    const std::string first = lower.substr(0, lower.find_first_of(" _([/"));
    return std::find(names.begin(), names.end(), first) != names.end();
}

} // namespace

SeriesReader::SeriesReader(std::string column, Sink sink)
    : m_column(std::move(column)),
      m_sink(std::move(sink)),
      m_cells(
          [this](std::span<const std::string_view> cells, long long line) { return takeRow(cells, line); })
{}

Status SeriesReader::takeHeader(std::span<const std::string_view> cells, long long line)
{
    std::vector<std::string> names(cells.begin(), cells.end());
    if (!m_column.empty()) {
        const auto found = std::find(names.begin(), names.end(), m_column);
        if (found == names.end())
            return Error{Errc::InvalidInput, "no column \"" + m_column + "\"", lineText(line),
                         "name one of " + join(names, ", ")};
        m_value = static_cast<std::size_t>(found - names.begin());
    } else if (cells.size() == 2 && isAlong(cells[0])) {
        m_value = 1;
    } else if (cells.size() > 1) {
        return Error{Errc::InvalidInput, "several columns", lineText(line),
                     "name one of " + join(names, ", ") + " by --column"};
    }
    if (m_value > 0 && isAlong(cells[0]))
        m_along = 0;
    return done();
}

Status SeriesReader::takeRow(std::span<const std::string_view> cells, long long line)
{
    if (m_width == 0) {
        m_width = cells.size();
        if (isHeader(cells))
            return takeHeader(cells, line);
        if (cells.size() > 1 || !m_column.empty())
            return Error{Errc::InvalidInput, "several numbers a line without names", lineText(line),
                         "give one number a line, or a first line that names the columns"};
    }
    if (cells.size() != m_width)
        return Error{Errc::InvalidInput,
                     std::to_string(cells.size()) + " columns where " + std::to_string(m_width) + " began",
                     lineText(line), "give every line the same columns"};
    SeriesPoint point;
    point.line = line;
    const Result<double> value = numberIn(cells[m_value], line, m_value);
    if (!value)
        return value.error();
    if (!(std::abs(*value) < largest))
        return Error{Errc::OutOfRange, "no such number in a series", cellText(line, m_value),
                     "give it in another unit"};
    point.value = *value;
    if (m_along) {
        const Result<double> along = numberIn(cells[*m_along], line, *m_along);
        if (!along)
            return along.error();
        if (m_lastAlong && *along <= *m_lastAlong)
            return Error{Errc::InvalidInput, "not sorted: it does not grow from the line before",
                         lineText(line), "sort the file by its first column, each value once"};
        m_lastAlong = point.along = *along;
    }
    ++m_rows;
    return m_sink(point);
}

Status SeriesReader::finish()
{
    SNUG_TRY(m_cells.finish());
    if (m_rows == 0)
        return Error{Errc::InvalidInput, "no number in this file", "", "give one number a line"};
    return done();
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A series of numbers from plain text, one a line, or from a column of a CSV file.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "road/series/cell_reader.hpp"

namespace snugwalk {

/// One number, and where along: a time or a distance, if the file has such a column.
struct SeriesPoint {
    double value = 0.0;
    std::optional<double> along;
    long long line = 0;
};

/// Reads one number a line; or the column named; or, of two columns of which the first is named time, t,
/// seconds, distance, x, s, position or station, the second along the first.
/// \returns `InvalidInput` with line and reason: a bad number, a gap, NaN, a time or distance that does not
/// grow, several columns and none named, a line of another width.
class SeriesReader {
public:
    using Sink = std::function<Status(const SeriesPoint &)>;
    SeriesReader(std::string column, Sink sink);

    [[nodiscard]] Status feed(std::string_view bytes) { return m_cells.feed(bytes); }
    [[nodiscard]] Status finish();

private:
    [[nodiscard]] Status takeRow(std::span<const std::string_view> cells, long long line);
    [[nodiscard]] Status takeHeader(std::span<const std::string_view> cells, long long line);

    std::string m_column;
    Sink m_sink;
    CellReader m_cells;
    std::size_t m_width = 0;
    std::size_t m_value = 0;
    std::optional<std::size_t> m_along;
    std::optional<double> m_lastAlong;
    long long m_rows = 0;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Cutting plain text or CSV into cells as it comes, in fixed memory.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// Takes bytes in any portions and gives each line's cells, trimmed and without quotation marks, with its
/// number. Cells are parted by semicolon, tab or comma, whichever the first line has in this order.
/// Lines that begin with `#` are left out; so is a byte order mark. Quoted cells hold no separator.
///
/// \returns from `feed` and `finish`: `InvalidInput` with the line for an empty line with more behind it,
/// for a line over 4,096 bytes, more than 64 cells; and whatever the receiver returns.
/// Tests: tests/unit/road/tst_cell_reader.cpp
class CellReader {
public:
    using Row = std::function<Status(std::span<const std::string_view> cells, long long line)>;
    explicit CellReader(Row row) : m_row(std::move(row)) {}

    [[nodiscard]] Status feed(std::string_view bytes);
    [[nodiscard]] Status finish();

private:
    [[nodiscard]] Status takeLine(std::string_view line);

    Row m_row;
    std::string m_rest; ///< the beginning of a line whose end has not come
    std::vector<std::string_view> m_cells;
    long long m_line = 0;
    long long m_emptyLine = 0; ///< the first empty line since the last one with cells
    char m_separator = 0;
};

/// "line 12", "line 12, column 3" (counted from 1).
[[nodiscard]] std::string lineText(long long line);
[[nodiscard]] std::string cellText(long long line, std::size_t column);

/// A finite number in a cell. \returns `InvalidInput` that tells an empty cell, NaN or infinity, and text
/// apart, with line and column.
[[nodiscard]] Result<double> numberIn(std::string_view cell, long long line, std::size_t column);
/// Whether a first row names columns instead of holding numbers.
[[nodiscard]] bool isHeader(std::span<const std::string_view> cells);

} // namespace snugwalk

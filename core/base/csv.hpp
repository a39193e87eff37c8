// SPDX-License-Identifier: Apache-2.0
// A strict reader of comma-separated values, in pieces of any size and bounded memory.
#pragma once

#include <cstddef>
#include <deque>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// One line below the header; what it shows lives until the handler returns.
struct CsvRow {
    std::string_view file;
    std::span<const std::string> header;
    std::size_t line = 0;                    ///< where it begins, from 1
    std::span<const std::string_view> cells; ///< without the blanks around them; as many as the header

    /// "winter.csv, line 12, column tmin"
    [[nodiscard]] std::string where(std::size_t column) const;
    /// A finite number with a decimal point; `InvalidInput` for anything else, an empty cell too.
    [[nodiscard]] Result<double> number(std::size_t column) const;
    [[nodiscard]] bool empty(std::size_t column) const { return cells[column].empty(); }
};

/// Each may end the reading with an error of its own.
struct CsvHandler {
    std::function<Status(std::span<const std::string> header)> header;
    std::function<Status(const CsvRow &row)> row;
};

/// Legal:   a header of names that differ; lines ended by LF or CRLF; cells in double quotes, with ""
///          for a quote, commas and line ends within; empty lines (skipped); a byte order mark.
/// Illegal: another number of cells than the header has; semicolons or tabs between cells; a quote
///          inside a plain cell or never closed; NUL; a line over 64 KiB; over 256 columns; no header.
/// Tests:   tests/unit/base/tst_csv.cpp, tests/fuzz/fuzz_csv.cpp
class CsvReader {
public:
    /// \param file the name that errors tell
    CsvReader(std::string file, CsvHandler handler);
    /// The next bytes, cut anywhere. After an error, feed no more.
    [[nodiscard]] Status feed(std::string_view bytes);
    /// What came last may lack a line end.
    [[nodiscard]] Status finish();

private:
    [[nodiscard]] Status record(std::string_view text);
    [[nodiscard]] Status takeHeader();
    [[nodiscard]] Status cut(std::string_view text);
    [[nodiscard]] Status cutQuoted(std::string_view &rest);
    [[nodiscard]] Error fault(std::string what, std::string act) const;

    std::string m_file;
    CsvHandler m_handler;
    std::vector<std::string> m_header;
    std::vector<std::string_view> m_cells;
    std::deque<std::string> m_unquoted; ///< cells that held a doubled quote; a deque never moves them
    std::string m_kept;                 ///< the beginning of a line whose end is still to come
    std::size_t m_line = 1;             ///< of the next byte
    std::size_t m_begin = 1;            ///< of the record under way
    std::size_t m_quotes = 0;           ///< in the record under way
};

/// Text that is in memory already.
[[nodiscard]] Status readCsv(std::string_view text, std::string file, CsvHandler handler);

/// Where a column stands; `InvalidInput` names those there are.
[[nodiscard]] Result<std::size_t> csvColumn(std::span<const std::string> header, std::string_view name);
/// The same for one that need not be there.
[[nodiscard]] std::optional<std::size_t> findCsvColumn(std::span<const std::string> header,
                                                       std::string_view name);

} // namespace snugwalk

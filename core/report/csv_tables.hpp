// SPDX-License-Identifier: Apache-2.0
// The logbook's lists as comma-separated values, for spreadsheets and other people's programs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/texts.hpp"
#include "report/rough_place.hpp"
#include "round/state.hpp"

namespace snugwalk {

struct CsvTable {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows; ///< each as long as the header
};

/// [RFC4180]: a header line, CRLF after every line, cells with a comma, a quote or a line end in quotes,
/// quotes doubled. UTF-8 without a byte order mark. Nothing is done to a cell that a spreadsheet takes for a
/// formula. Tests: tests/unit/report/tst_csv_tables.cpp, tests/journey/report_formats.py (read by Python's
/// csv)
[[nodiscard]] std::string csvText(const CsvTable &table);

// Columns are named in English, times are [RFC3339], numbers SI with their unit in a column beside them;
// titles, defects and reasons are in the language of `texts`, with their slugs beside them.

/// One line a finding, as it stands. With a place to tell, `latitude` and `longitude` of its first look that
/// has one, and `place_detail`; else these columns are absent.
[[nodiscard]] CsvTable findingsTable(const Standing &standing, const Texts &texts, PlaceDetail place);
/// One line a reading, or a mark without one, of a walk; points of its tape without a mark are `not_looked`.
[[nodiscard]] CsvTable marksTable(const WalkRecord &record, const Texts &texts);
[[nodiscard]] CsvTable mendsTable(const RigHistory &history, const Texts &texts);
/// One line a due band, in its order.
[[nodiscard]] CsvTable datesTable(const Standing &standing, const Texts &texts);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Lines are found by their ends outside quotes, then cut into cells without a copy.
#include "base/csv.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t mostBytes = 64 * 1024; // of one line
constexpr std::size_t mostColumns = 256;
constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

std::string_view withoutBlanks(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

// What a person typed, for an error that must stay one readable line.
std::string shown(std::string_view cell)
{
    constexpr std::size_t most = 40;
    if (!isUtf8(cell))
        return "bytes that are no text";
    const bool plain = std::none_of(cell.begin(), cell.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < 0x20 || byte == 0x7F;
    });
    return plain && cell.size() <= most ? "\"" + std::string(cell) + "\"" : "a text";
}

} // namespace

std::string CsvRow::where(std::size_t column) const
{
    return std::string(file) + ", line " + std::to_string(line) + ", column " + header[column];
}

Result<double> CsvRow::number(std::size_t column) const
{
    const std::string_view cell = trim(cells[column]); // quotes keep blanks
    if (const auto value = parseDouble(cell))
        return *value;
    if (cell.empty())
        return Error{Errc::InvalidInput, "a number is missing", where(column),
                     "write one, or take the line out"};
    if (cell.find(',') != std::string_view::npos)
        return Error{Errc::InvalidInput, "a comma in a number: " + shown(cell), where(column),
                     "write a decimal point, and nothing between thousands"};
    return Error{Errc::InvalidInput, "not a finite number: " + shown(cell), where(column),
                 "write digits with a decimal point, without a unit"};
}

CsvReader::CsvReader(std::string file, CsvHandler handler)
    : m_file(std::move(file)), m_handler(std::move(handler))
{}

Error CsvReader::fault(std::string what, std::string act) const
{
    return {Errc::InvalidInput, std::move(what), m_file + ", line " + std::to_string(m_begin),
            std::move(act)};
}

Status CsvReader::feed(std::string_view bytes)
{
    while (!bytes.empty()) {
        const auto end = bytes.find('\n');
        const bool ended = end != std::string_view::npos;
        const std::string_view piece = bytes.substr(0, end);
        m_quotes += static_cast<std::size_t>(std::count(piece.begin(), piece.end(), '"'));
        const bool whole = ended && m_quotes % 2 == 0;
        if (m_kept.size() + piece.size() > mostBytes)
            return fault(m_quotes % 2 == 0 ? "a line over 64 KiB" : "a quote that is not closed",
                         "see whether this is a CSV file");
        if (whole && m_kept.empty()) {
            SNUG_TRY(record(piece));
        } else {
            m_kept.append(piece);
            if (whole) {
                SNUG_TRY(record(m_kept));
                m_kept.clear();
            } else if (ended) {
                m_kept += '\n';
            }
        }
        if (!ended)
            break;
        ++m_line;
        if (whole) {
            m_begin = m_line;
            m_quotes = 0;
        }
        bytes.remove_prefix(end + 1);
    }
    return done();
}

Status CsvReader::finish()
{
    if (m_quotes % 2 == 1)
        return fault("a quote that is not closed", "close it; a quote within a cell is written twice");
    const std::string last = std::move(m_kept);
    m_kept.clear();
    SNUG_TRY(record(last));
    if (m_header.empty())
        return fault("no header", "name the columns in the first line");
    return done();
}

Status CsvReader::record(std::string_view text)
{
    if (m_header.empty() && text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    if (trim(text).empty())
        return done();
    if (text.find('\0') != std::string_view::npos)
        return fault("a byte of value 0", "see whether this is a CSV file in UTF-8");
    SNUG_TRY(cut(text));
    if (m_header.empty())
        return takeHeader();
    if (m_cells.size() != m_header.size())
        return fault(std::to_string(m_cells.size()) + " cells, the header has " +
                         std::to_string(m_header.size()),
                     "give each line as many cells as the header; leave unknown ones empty");
    return m_handler.row({m_file, m_header, m_begin, m_cells});
}

Status CsvReader::takeHeader()
{
    for (const std::string_view name : m_cells) {
        if (name.empty() || !isUtf8(name))
            return fault("a column without a name", "name each column in the first line");
        if (name.find_first_of(";\t") != std::string_view::npos)
            return fault("cells parted by semicolons or tabs", "part cells by commas, write a decimal point");
        if (std::find(m_header.begin(), m_header.end(), name) != m_header.end())
            return fault("two columns named " + std::string(name), "give each column a name of its own");
        m_header.emplace_back(name);
    }
    return m_handler.header ? m_handler.header(m_header) : done();
}

Status CsvReader::cut(std::string_view text)
{
    m_cells.clear();
    m_unquoted.clear();
    for (;;) {
        if (m_cells.size() == mostColumns)
            return fault("over 256 columns", "see whether this is a CSV file");
        if (withoutBlanks(text).starts_with('"')) {
            SNUG_TRY(cutQuoted(text));
        } else {
            const std::string_view cell = trim(text.substr(0, text.find(',')));
            if (cell.find('"') != std::string_view::npos)
                return fault("a quote inside a plain cell", "put the whole cell in quotes");
            m_cells.push_back(cell);
            text.remove_prefix(std::min(text.find(','), text.size()));
        }
        if (text.empty())
            return done();
        text.remove_prefix(1);
    }
}

// Leaves `rest` at the comma after the cell, or empty.
Status CsvReader::cutQuoted(std::string_view &rest)
{
    rest = withoutBlanks(rest);
    rest.remove_prefix(1);
    std::string *joined = nullptr;
    for (;;) {
        const auto quote = rest.find('"'); // quotes come in pairs within a record
        const std::string_view part = rest.substr(0, quote);
        rest.remove_prefix(std::min(part.size() + 1, rest.size()));
        const bool doubled = rest.starts_with('"');
        if (doubled && joined == nullptr)
            joined = &m_unquoted.emplace_back();
        if (joined != nullptr)
            joined->append(part);
        if (!doubled) {
            m_cells.push_back(joined != nullptr ? std::string_view(*joined) : part);
            break;
        }
        *joined += '"';
        rest.remove_prefix(1);
    }
    rest.remove_prefix(rest.size() - withoutBlanks(rest).size());
    if (trim(rest).empty())
        rest = {};
    if (!rest.empty() && rest.front() != ',')
        return fault("text after a closing quote", "put the whole cell in quotes; a quote is written twice");
    return done();
}

Status readCsv(std::string_view text, std::string file, CsvHandler handler)
{
    CsvReader reader(std::move(file), std::move(handler));
    SNUG_TRY(reader.feed(text));
    return reader.finish();
}

std::optional<std::size_t> findCsvColumn(std::span<const std::string> header, std::string_view name)
{
    const auto at = std::find(header.begin(), header.end(), name);
    return at == header.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - header.begin()));
}

Result<std::size_t> csvColumn(std::span<const std::string> header, std::string_view name)
{
    if (const auto at = findCsvColumn(header, name))
        return *at;
    return Error{Errc::InvalidInput, "no column named " + std::string(name), "the first line",
                 "it has " + join({header.begin(), header.end()}, ", ")};
}

} // namespace snugwalk

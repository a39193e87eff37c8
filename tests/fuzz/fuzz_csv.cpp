// SPDX-License-Identifier: Apache-2.0
// Any bytes as CSV: rows as wide as the header, errors with their place, the same rows however it is cut.
#include "base/csv.hpp"
#include "fuzz.hpp"

namespace {

using namespace snugwalk;

// Everything read, as one text; the error's words end it.
std::string told(std::string_view bytes, std::size_t pieces)
{
    std::string out;
    std::size_t columns = 0;
    CsvReader reader("f", {[&](std::span<const std::string> header) {
                               columns = header.size();
                               return done();
                           },
                           [&](const CsvRow &row) {
                               SNUG_ASSERT(columns > 0 && row.cells.size() == columns);
                               out += std::to_string(row.line);
                               for (const std::string_view cell : row.cells)
                                   out.append("|").append(cell);
                               for (std::size_t i = 0; i < columns; ++i) {
                                   const auto number = row.number(i);
                                   SNUG_ASSERT(number || !number.error().where.empty());
                               }
                               return done();
                           }});
    Status status = done();
    for (std::size_t at = 0; at < bytes.size() && status; at += pieces)
        status = reader.feed(bytes.substr(at, pieces));
    if (status)
        status = reader.finish();
    if (!status) {
        SNUG_ASSERT(!status.error().where.empty() && !status.error().act.empty());
        out += status.error().what + status.error().where;
    }
    return out;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view bytes = asText(data, size);
    const std::string whole = told(bytes, size + 1);
    SNUG_ASSERT(told(bytes, 1) == whole);
    SNUG_ASSERT(told(bytes, 7) == whole);
    return 0;
}

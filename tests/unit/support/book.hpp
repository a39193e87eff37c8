// SPDX-License-Identifier: Apache-2.0
// A logbook in a folder of its own, with a clock that stands where it is put and ids that are counted.
#pragma once

#include <optional>
#include <string>

#include "logbook/logbook.hpp"
#include "support/temp_folder.hpp"

namespace snugwalk::test {

/// From RFC 3339 text; text that is none ends the test program.
[[nodiscard]] LocalTime timeAt(std::string_view text);

class TestBook {
public:
    /// \param seed decides the device's key and the ids: the same seed gives the same bytes.
    explicit TestBook(std::string seed = "test");

    /// The open logbook; opens it when it is closed.
    [[nodiscard]] Logbook &book();
    void close() { m_book.reset(); }
    [[nodiscard]] Logbook &reopened();
    [[nodiscard]] Result<Logbook> tryOpen(const std::string &file, bool create = true);

    /// What another logbook of the same device opens with.
    [[nodiscard]] LogbookOptions options(bool create = true);

    [[nodiscard]] const TempFolder &folder() const { return m_folder; }
    [[nodiscard]] std::string file() const { return m_folder.file("book.snug"); }
    FixedClock clock;
    CountingIds ids;

private:
    std::string m_seed;
    TempFolder m_folder;
    std::optional<Logbook> m_book;
};

/// The hash of the projection as it stands, and after it was made again from the entries.
[[nodiscard]] Hash projectionNow(Logbook &book);
[[nodiscard]] Hash projectionRebuilt(Logbook &book);
[[nodiscard]] std::int64_t entryCount(Logbook &book);

} // namespace snugwalk::test

// SPDX-License-Identifier: Apache-2.0
// One device of the simulation: a logbook on the disk, a clock that lies, a person who writes.
#pragma once

#include <optional>

#include "faulty_store.hpp"
#include "logbook/photo_store.hpp"
#include "sync/exchange.hpp"

namespace snugwalk::sim {

/// A whole JPEG as far as its marks go; no pixels. The seed decides its bytes.
[[nodiscard]] std::string smallPhoto(Dice &dice, std::size_t size);

/// A fault put into the program on purpose, as a trigger of the database; the simulation must find it.
extern std::string mutant;

class Device {
public:
    /// \param empty a logbook file without streams, copied to begin with
    Device(const std::string &folder, const std::string &empty, const std::string &seed,
           std::int64_t clockMillis);

    [[nodiscard]] Logbook &book() { return *m_book; }
    void reopen();
    /// Closed, the file copied or put back, opened again.
    void keepCopy();
    [[nodiscard]] bool hasCopy() const { return m_hasCopy; }
    void restoreCopy();
    /// The next so many commits go through, the one after does not; 0 for all go through.
    void failCommitAfter(int count);

    FixedClock clock;
    CountingIds ids;
    Keys keys;
    std::string name;

private:
    [[nodiscard]] std::string copyFile() const { return m_file + ".copy"; }
    void open();

    std::string m_file;
    std::optional<Logbook> m_book;
    bool m_hasCopy = false;
    int m_commitsLeft = 0;
};

} // namespace snugwalk::sim

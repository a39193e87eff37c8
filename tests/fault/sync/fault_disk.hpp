// SPDX-License-Identifier: Apache-2.0
// A disk under SQLite that fails when it is told to, and forgets what was not synced when the power goes.
#pragma once

#include <cstdint>
#include <random>

namespace snugwalk::test {

enum class Fault { Once, FromNowOn, Full };

/// Puts itself under every database opened while it lives; one at a time. Counts writes, cuts, syncs and
/// deletions of files, which are the calls that can fail.
class FaultDisk {
public:
    FaultDisk();
    FaultDisk(const FaultDisk &) = delete;
    FaultDisk &operator=(const FaultDisk &) = delete;
    ~FaultDisk();

    /// The call after so many goes wrong; a negative number: none does.
    void failAfter(std::int64_t calls, Fault fault);
    [[nodiscard]] std::int64_t calls() const;
    [[nodiscard]] bool failed() const;

    /// Close the database first. What was not synced is taken back; then some of it is written after all, in
    /// another order, whole or up to a sector of 512 bytes: the model of SQLite's own crash tests
    /// (sqlite.org, How SQLite Is Tested, section 3.3; from memory).
    void loseUnsynced(std::mt19937 &rng);
};

} // namespace snugwalk::test

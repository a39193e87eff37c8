// SPDX-License-Identifier: Apache-2.0
// Meeting at a store: read what is new there, leave what is new here. May be cut off anywhere and repeated.
#pragma once

#include <functional>

#include "sync/share.hpp"
#include "sync/store.hpp"

namespace snugwalk {

/// Which originals to fetch; thumbnails always come.
enum class Originals { None, Wanted, All };

struct ExchangeOptions {
    Originals originals = Originals::Wanted;
    /// Reads the store's files of this logbook again and replaces damaged ones that are whole here.
    bool mend = false;
};

struct ExchangeSummary {
    std::int64_t entriesSent = 0;
    std::int64_t entriesReceived = 0;
    std::int64_t filesForwarded = 0; ///< of other devices, which the store did not have
    std::int64_t photosSent = 0;
    std::int64_t thumbnailsReceived = 0;
    std::int64_t photosReceived = 0;
    std::int64_t photosLeft = 0; ///< whose original is not on this device
    std::int64_t aside = 0;      ///< entries set aside, all together
    std::int64_t unopened = 0;   ///< files kept that cannot be opened: unknown device, newer version, no key
    std::int64_t gaps = 0;       ///< files that are known to be missing
    std::int64_t conflicts = 0;  ///< things that people wrote differently
    std::int64_t damaged = 0;    ///< files of the store that are not what they should be
    std::int64_t bytesRead = 0;
    std::int64_t bytesWritten = 0;
    bool forked = false; ///< a copy of this logbook went on elsewhere; a new stream was begun
};

struct ExchangeStep {
    Id rig;
    std::string what; ///< `records`, `entries`, `photos`
    std::int64_t done = 0;
    std::int64_t of = 0;
};
/// False stops at a place where nothing is lost.
using Progress = std::function<bool(const ExchangeStep &)>;

/// All shared rigs of the logbook with one store. \returns the first error that makes going on useless (`Io`,
/// `Network`, of the store or the logbook); what was done until then stays done. One damaged file never stops
/// the others.
[[nodiscard]] Result<ExchangeSummary> exchange(Logbook &book, const Keys &keys, Store &store,
                                               const ExchangeOptions &options = {},
                                               const Progress &progress = {});

/// The store's folder of one rig.
[[nodiscard]] std::string rigFolder(const Id &rig);

/// Reads everything a store has of the shared rigs: a line for each file that is not what it should be, and
/// for each that this logbook has and the store has not.
[[nodiscard]] Result<std::vector<std::string>> checkStore(Logbook &book, const Keys &keys, Store &store);

} // namespace snugwalk

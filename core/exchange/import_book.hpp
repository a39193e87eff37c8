// SPDX-License-Identifier: Apache-2.0
// An export back into a logbook: nothing is believed that does not verify, nothing is written twice.
#pragma once

#include <string>
#include <vector>

#include "logbook/image_codec.hpp"
#include "logbook/logbook.hpp"

namespace snugwalk {

struct ImportReport {
    std::int64_t entriesAdded = 0;
    std::int64_t entriesKnown = 0;
    std::int64_t streamsAdded = 0;
    std::int64_t photosAdded = 0;
    std::int64_t photosKnown = 0;
    std::int64_t sharedRigs = 0;      ///< whose members and set-aside entries came with it
    std::vector<std::string> missing; ///< photos that entries name and nobody brought, one line each
    std::vector<std::string> notes;   ///< what was left out and why, one line each
    bool mustReopen = false;          ///< see `ImportCount`
};

/// Photos are on the disk before the entries that name them can be read; all entries come in or none. A photo
/// that is damaged or no picture is left out and noted. The same file again changes nothing.
/// \returns the errors of `ZipReader::open`, `memberName` and `importEntries`; after one the entries are as
/// they were.
[[nodiscard]] Result<ImportReport> importLogbook(Logbook &book, const std::string &file,
                                                 const ImageCodec &codec);

} // namespace snugwalk

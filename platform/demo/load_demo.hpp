// SPDX-License-Identifier: Apache-2.0
// Playing the demo's scenario into a fresh logbook, the same bytes of entries every time.
#pragma once

#include <filesystem>
#include <string>

#include "base/result.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {

struct DemoReport {
    std::string rig;
    int walks = 0;
    int trips = 0;
    int mends = 0;
    int photos = 0;
    std::string lastHash; ///< of the last entry: equal on every machine
};

/// Plays `<folder>/scenario.json` into the logbook `book`, which must not hold a rig yet. Keys, ids
/// and clock come from the scenario, so that the entries are the same wherever it is played.
/// \returns `Conflict` when a rig is there, `NotFound` or `InvalidInput` naming the act that fails.
[[nodiscard]] Result<DemoReport> loadDemo(const std::string &book, const std::filesystem::path &folder,
                                          const ImageCodec &codec);

} // namespace snugwalk

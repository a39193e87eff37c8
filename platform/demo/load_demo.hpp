// SPDX-License-Identifier: Apache-2.0
// Playing the demo's scenario into a fresh logbook, the same bytes of entries every time.
#pragma once

#include <functional>
#include <string>

#include "base/result.hpp"
#include "demo/demo_source.hpp"
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

/// Told after each act of the scenario: how many of how many are played.
using DemoProgress = std::function<void(int played, int all)>;

/// Plays the source's scenario.json into the logbook `book`, which must not hold a rig yet. Keys, ids
/// and clock come from the scenario, so that the entries are the same wherever it is played.
/// \returns `Conflict` when a rig is there, `NotFound` or `InvalidInput` naming the act that fails.
[[nodiscard]] Result<DemoReport> loadDemo(const std::string &book, const DemoSource &source,
                                          const ImageCodec &codec, const DemoProgress &progress = {});

} // namespace snugwalk

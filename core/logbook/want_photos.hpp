// SPDX-License-Identifier: Apache-2.0
// Asking for originals that lie on other devices.
#pragma once

#include <vector>

#include "logbook/logbook.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

struct WantedCount {
    std::int64_t wanted = 0; ///< come with the next exchange that has them
    std::int64_t here = 0;   ///< were here already
};

[[nodiscard]] Result<WantedCount> wantPhotos(Logbook &book, const std::vector<Photo> &photos);

} // namespace snugwalk

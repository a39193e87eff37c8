// SPDX-License-Identifier: Apache-2.0
// Whether a finding is open, mended, confirmed or gone: derived from what was written, never stored.
#pragma once

#include <vector>

#include "walk/drawing.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

enum class FindingStatus {
    Open,
    Mended,    ///< closed by a mend, waiting for a pass that confirms it
    Confirmed, ///< a pass on its point came after the mend
    Gone       ///< looked at again and not there, without a mend
};
[[nodiscard]] std::string_view slug(FindingStatus status);

/// Everything that was written about one finding.
struct FindingHistory {
    Finding finding;
    std::vector<Look> looks;       ///< oldest first
    std::vector<Mend> mends;       ///< those that name it, oldest first
    std::vector<Mark> pointPasses; ///< passes on its point, oldest first
    std::vector<Photo> photos;     ///< as a person ordered them, then in the order taken
    std::vector<Drawing> drawings; ///< on those photos, one a photo at most
};

/// A pass alone never closes an open finding; a look after a mend opens it again.
[[nodiscard]] FindingStatus statusOf(const FindingHistory &history);
/// The same as things stood at `when`.
[[nodiscard]] FindingStatus statusAt(const FindingHistory &history, Instant when);
/// The last look at or before `when`, or nothing.
[[nodiscard]] const Look *lookAt(const FindingHistory &history, Instant when);

/// The drawing on one of the finding's photos, or null.
[[nodiscard]] const Drawing *drawingOf(const FindingHistory &history, const Id &photo);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// What a person filled in about a finding, as a draft the core can check.
#pragma once

#include <string>
#include <vector>

#include <QVariantMap>

#include "walk/draft.hpp"

namespace snugwalk {

struct AttentionForm {
    MarkDraft draft;
    std::vector<std::string> photos; ///< paths of local files
};

/// \param map {same, gone, defect, grade, place, extent, note, photos}; see docs of `WalkModel`.
[[nodiscard]] AttentionForm readAttention(const QVariantMap &map, const std::string &point);

} // namespace snugwalk

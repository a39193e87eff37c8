// SPDX-License-Identifier: Apache-2.0
// What a person filled in about findings, as drafts the core can check.
#pragma once

#include <string>
#include <vector>

#include <QVariantMap>

#include "walk/draft.hpp"
#include "walk/drawing.hpp"

namespace snugwalk {

/// A photo that is still a file, with what was drawn on it.
struct PhotoFile {
    std::string path;
    std::vector<DrawnShape> lines;
};

/// One mark with its findings.
struct AttentionForm {
    MarkDraft draft;
    std::vector<std::vector<PhotoFile>> photos; ///< one list for each finding of the draft
};

/// One form a point, in the order the points come; a form whose findings are all gone is a pass.
/// \param map see `WalkModel::attention`. \param point of findings that name none.
[[nodiscard]] std::vector<AttentionForm> readAttention(const QVariantMap &map, const std::string &point);

} // namespace snugwalk

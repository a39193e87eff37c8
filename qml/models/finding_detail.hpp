// SPDX-License-Identifier: Apache-2.0
// Everything about one finding, as its page shows it.
#pragma once

#include <QVariantMap>

#include "snapshot.hpp"

namespace snugwalk {

/// {id, number, title, place, near, face, defect, status, statusText, callText, kind, concern, why: [text],
/// looks: [{date, by, gradeText, grade, extentText, note, photos: [hash]}], mends: [{date, by, what, parts,
/// cost}], photos: [{hash, caption, date, place}]}; newest look and photo first.
[[nodiscard]] QVariantMap findingDetail(const Shown &shown, const FindingHistory &history);

} // namespace snugwalk

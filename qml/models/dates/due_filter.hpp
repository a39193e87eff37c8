// SPDX-License-Identifier: Apache-2.0
// Which rows of the due list a person wants to see, and in which order.
#pragma once

#include <vector>

#include <QString>

#include "concern/state.hpp"

namespace snugwalk {

struct DueRow;

enum class DueSpan { All, Past, Month, Season };

struct DueFilter {
    QString zone; ///< slug; empty: every zone
    DueSpan span = DueSpan::All;
    bool byConcern = false; ///< otherwise by date
};

/// "all", "past", "month", "season"; anything else is all.
[[nodiscard]] QString spanName(DueSpan span);
[[nodiscard]] DueSpan spanOf(const QString &name);

/// A month is 30 days, a season 91. What was never looked at is due now; what has no date of its own is
/// shown only with everything.
[[nodiscard]] bool isWithin(const DueRow &row, DueSpan span);
/// The rows wanted, of rows that come by date. By concern: as the state of the rig orders its points.
[[nodiscard]] std::vector<DueRow> filtered(const std::vector<DueRow> &rows, const DueFilter &filter,
                                           const std::vector<PointConcern> &concerns);

} // namespace snugwalk

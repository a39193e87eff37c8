// SPDX-License-Identifier: Apache-2.0
// Then and now, point by point, worst first.
#pragma once

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "comparison_job.hpp"
#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct ComparisonRow {
    QString key; ///< the point's slug
    QString title;
    QString thenMark; ///< state slug, or after an attention watch, mend or hold
    QString nowMark;
    QString thenText; ///< what was found, in words
    QString nowText;
    QString change; ///< slug
    QString changeText;
    QString detail;
    QString faster;         ///< readings that wear faster than expected; "" for none
    QStringList thenPhotos; ///< hashes
    QStringList nowPhotos;
};

class ComparisonModel : public RowModel<ComparisonRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit ComparisonModel(QObject *parent);
};

/// Points that are the same pass then and now are left out: they are counted in the sentence.
[[nodiscard]] std::vector<ComparisonRow> comparisonRows(const Shown &shown, const Compared &compared);
/// "2 new, 1 worse, 20 same; 3 not looked at."
[[nodiscard]] QString comparisonSentence(const Comparison &comparison);
/// "the last of its kind": how the earlier walk was found.
[[nodiscard]] QString comparisonPair(const Voice &voice, PairedBy by);
/// What was added to the rig, taken from it or changed on it between the two, a line each.
[[nodiscard]] QStringList rigChangeLines(const Shown &shown, const Comparison &comparison);
/// "Before the road, 7 Nov 2026, against 12 Sep 2026".
[[nodiscard]] QString comparisonTitle(const Shown &shown, const Comparison &comparison);

} // namespace snugwalk

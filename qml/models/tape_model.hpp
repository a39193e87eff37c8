// SPDX-License-Identifier: Apache-2.0
// The walk as lines on a strip, each with what it got.
#pragma once

#include <set>

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "row_model.hpp"
#include "snapshot.hpp"
#include "walk/progress.hpp"

namespace snugwalk {

struct TapeRow {
    QString key;
    int line = 0;
    QString title;
    QString standSlug;
    QString standName;
    bool firstOfStand = false;
    QString state;
    QString mark; ///< the worst call of its findings after an attention, else the state
    QString summary;
    QStringList places;
    int pointCount = 1;
    bool hasCaution = false;
    bool pending = false;
};

class TapeModel : public RowModel<TapeRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the walk")
public:
    explicit TapeModel(QObject *parent);
};

/// What a mark says in a few words: the reason, the readings as taken, the note.
/// \param withHow whether a pass at a glance says so.
[[nodiscard]] QString markSummary(const Voice &voice, const Mark &mark, bool withHow);

/// \param pending lines that were tapped and are not on the disk yet.
[[nodiscard]] std::vector<TapeRow> tapeRows(const Catalogue &catalogue, const Shown &shown, const Walk &walk,
                                            const std::vector<Mark> &marks,
                                            const std::multiset<int> &pending);

} // namespace snugwalk

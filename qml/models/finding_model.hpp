// SPDX-License-Identifier: Apache-2.0
// Open findings of the rig, worst first; the row is the number on the drawing.
#pragma once

#include <limits>

#include <QtQml/qqmlregistration.h>

#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct FindingRow {
    QString key; ///< the finding's id
    int number = 0;
    QString kind; ///< hold, mend or watch
    QString title;
    QString detail;
    QString place;
    QString face;
    double x = std::numeric_limits<double>::quiet_NaN(); ///< metres; not a number when not known
    double y = std::numeric_limits<double>::quiet_NaN();
    double z = std::numeric_limits<double>::quiet_NaN();
    QString callText;
    int concern = 0;
    int photoCount = 0;
    QString photo; ///< hash of the newest, may be empty
};

class FindingModel : public RowModel<FindingRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the rig")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    explicit FindingModel(QObject *parent);
    [[nodiscard]] int count() const { return rowCount(); }
    void show(const Shown &shown);

Q_SIGNALS:
    void countChanged();
};

/// "do not move it", "mend soon, 64", "watch, 31".
[[nodiscard]] QString callText(const Voice &voice, const Concern &concern);
/// hold, mend, watch or none.
[[nodiscard]] QString callKind(Call call);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// When each point is due, as bands on the season line.
#pragma once

#include <limits>

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct DueRow {
    QString key; ///< the point's slug
    QString title;
    QString zone;
    double early = std::numeric_limits<double>::quiet_NaN(); ///< days from today; not a number = none
    double likely = std::numeric_limits<double>::quiet_NaN();
    double late = std::numeric_limits<double>::quiet_NaN();
    QString earlyText;
    QString likelyText;
    QString lateText;
    QString when;   ///< one line
    QString reason; ///< one line
    QStringList why;
    bool pastDue = false;
    QString kind; ///< dated, event, never, every_move
    QString basis;
    int severity = 3; ///< 1 to 4
};

class DueRowModel : public RowModel<DueRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the due list")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    explicit DueRowModel(QObject *parent);
    [[nodiscard]] int count() const { return rowCount(); }

Q_SIGNALS:
    void countChanged();
};

class DueModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(snugwalk::DueRowModel *rows READ rows CONSTANT)
    Q_PROPERTY(int pastDueCount READ pastDueCount NOTIFY changed)
    Q_PROPERTY(QVariantList months READ months NOTIFY changed)
    Q_PROPERTY(QVariantList stays READ stays NOTIFY changed)
public:
    DueModel(const Catalogue *catalogue, QObject *parent);

    /// "8 are past due, 3 more fall due within a month."
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] int pastDueCount() const { return m_shown.snapshot->state.pastDue; }
    [[nodiscard]] DueRowModel *rows() { return &m_rows; }
    /// [{label, day}]: the first of each month, from the one before today's on, 16 of them.
    [[nodiscard]] QVariantList months() const;
    /// [{name, fromDay, toDay, covered}] that touch the season line; a stay that goes on ends today.
    [[nodiscard]] QVariantList stays() const;
    void show(const Shown &shown);

Q_SIGNALS:
    void changed();

private:
    const Catalogue *m_catalogue;
    Shown m_shown;
    DueRowModel m_rows;
};

} // namespace snugwalk

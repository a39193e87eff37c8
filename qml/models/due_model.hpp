// SPDX-License-Identifier: Apache-2.0
// When each point is due, as bands on the season line.
#pragma once

#include <limits>
#include <map>

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "due/shift.hpp"
#include "due_filter.hpp"
#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct DueRow {
    QString key; ///< the point's slug
    QString title;
    QString zone;
    QString zoneSlug;
    double early = std::numeric_limits<double>::quiet_NaN(); ///< days from today; not a number = none
    double likely = std::numeric_limits<double>::quiet_NaN();
    double late = std::numeric_limits<double>::quiet_NaN();
    double alert = std::numeric_limits<double>::quiet_NaN();   ///< time to look, by severity
    double nominal = std::numeric_limits<double>::quiet_NaN(); ///< where the catalogue alone puts it
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
    Q_PROPERTY(int total READ total NOTIFY changed)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString moved READ moved NOTIFY changed)
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY changed)
    Q_PROPERTY(QString span READ span WRITE setSpan NOTIFY changed)
    Q_PROPERTY(QString order READ order WRITE setOrder NOTIFY changed)
    Q_PROPERTY(QVariantList zones READ zones NOTIFY changed)
    Q_PROPERTY(QVariantList months READ months NOTIFY changed)
    Q_PROPERTY(QVariantList stays READ stays NOTIFY changed)
public:
    DueModel(const ActDesk *desk, QObject *parent);

    /// "8 are past due, 3 more fall due within a month."
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] int pastDueCount() const { return m_shown.snapshot->state.pastDue; }
    [[nodiscard]] DueRowModel *rows() { return &m_rows; }
    /// [{label, day}]: the first of each month, from the one before today's on, 16 of them.
    [[nodiscard]] QVariantList months() const;
    /// [{name, fromDay, toDay, covered}] that touch the season line; a stay that goes on ends today.
    [[nodiscard]] QVariantList stays() const;
    /// How many rows there are with everything shown.
    [[nodiscard]] int total() const { return static_cast<int>(m_all.size()); }
    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// "11 points are due sooner than by the catalogue alone. Roof seals moved most: …"; "" before `open`.
    [[nodiscard]] QString moved() const;
    /// A zone's slug, or "" for all.
    [[nodiscard]] QString zone() const { return m_filter.zone; }
    void setZone(const QString &zone);
    /// "all", "past", "month" or "season".
    [[nodiscard]] QString span() const { return spanName(m_filter.span); }
    void setSpan(const QString &span);
    /// "date" or "concern".
    [[nodiscard]] QString order() const;
    void setOrder(const QString &order);
    /// [{slug, name}] of the zones that have a row.
    [[nodiscard]] QVariantList zones() const;
    void show(const Shown &shown);
    /// Works out on the worker what moved each date; from now on whenever the logbook has more.
    Q_INVOKABLE void open();

Q_SIGNALS:
    void changed();

private:
    using Shifts = std::map<std::string, DueShift>;
    void makeRows();
    void assignRows();

    const ActDesk *m_desk;
    Shown m_shown;
    DueFilter m_filter;
    Shifts m_shifts;
    bool m_wanted = false; ///< someone looks at the list
    int m_waiting = 0;
    std::vector<DueRow> m_all; ///< by date, as the bands come
    DueRowModel m_rows;
};

} // namespace snugwalk

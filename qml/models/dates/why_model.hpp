// SPDX-License-Identifier: Apache-2.0
// Why one point is due when it is: the causes that moved its date, its looks, its sources.
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "due/shift.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class WhyModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString point READ point NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString when READ when NOTIFY changed)
    Q_PROPERTY(QString band READ bandText NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString aged READ aged NOTIFY changed)
    Q_PROPERTY(QVariantMap picture READ picture NOTIFY changed)
    Q_PROPERTY(QStringList reasons READ reasons NOTIFY changed)
    Q_PROPERTY(QVariantList facts READ facts NOTIFY changed)
    Q_PROPERTY(QVariantList looks READ looks NOTIFY changed)
    Q_PROPERTY(QStringList sources READ sources NOTIFY changed)
    Q_PROPERTY(QStringList weather READ weather NOTIFY changed)
    Q_PROPERTY(bool hasReadings READ isRead NOTIFY changed)
public:
    WhyModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    [[nodiscard]] QString point() const { return Voice::text(m_point); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString when() const;
    /// "early …, likely …, late …"; "" without dates.
    [[nodiscard]] QString bandText() const;
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QString aged() const;
    /// See why_picture.hpp; empty for a point whose date comes from no interval.
    [[nodiscard]] QVariantMap picture() const;
    [[nodiscard]] QStringList reasons() const;
    /// [{label, value}]
    [[nodiscard]] QVariantList facts() const;
    /// [{date, text}]
    [[nodiscard]] QVariantList looks() const;
    [[nodiscard]] QStringList sources() const;
    /// What the weather behind a decomposition rests on, and what it lacks.
    [[nodiscard]] QStringList weather() const;
    [[nodiscard]] bool isRead() const;

    void show(const Shown &shown);
    /// Works out on the worker what moved it. An empty slug is the first point with a date.
    Q_INVOKABLE void open(const QString &point);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const DueBand *band() const;
    [[nodiscard]] const Catalogue &catalogue() const { return m_shown.catalogue(*m_desk->parts->catalogue); }

    const ActDesk *m_desk;
    Shown m_shown;
    std::string m_point;
    std::optional<DueShift> m_shift;
    int m_waiting = 0;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// One point over time: when it is due and why, and its readings over all walks.
#pragma once

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "due/trend/trend.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class TrendModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString when READ when NOTIFY changed)
    Q_PROPERTY(QStringList why READ why NOTIFY changed)
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
public:
    TrendModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    [[nodiscard]] QString title() const;
    /// When it is due, in words; "" for a point without a band.
    [[nodiscard]] QString when() const;
    /// Every reason of its band.
    [[nodiscard]] QStringList why() const;
    /// One a reading and place, see trend_words.hpp.
    [[nodiscard]] QVariantList rows() const { return m_rows; }

    void show(const Shown &shown);
    /// Works the trends out on the worker. An empty slug is the point with the most readings.
    Q_INVOKABLE void open(const QString &point);
    /// The plot of a row laid out, see plots/plot_picture.hpp; empty where there is none.
    Q_INVOKABLE QVariantMap picture(int row, double width, double height, double letter, double stroke,
                                    const QString &family) const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const DueBand *band() const;

    const ActDesk *m_desk;
    Shown m_shown;
    std::string m_point;
    std::vector<Trend> m_trends;
    QVariantList m_rows;
    int m_waiting = 0;
};

} // namespace snugwalk

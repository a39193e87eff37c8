// SPDX-License-Identifier: Apache-2.0
// Places and roads to come, and the dates they would move. Nothing of it reaches the logbook.
#pragma once

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "leg_form.hpp"
#include "what_if_job.hpp"

namespace snugwalk {

class WhatIfModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantList legs READ legs NOTIFY changed)
    Q_PROPERTY(QVariantList places READ places NOTIFY changed)
    Q_PROPERTY(QVariantList roads READ roads NOTIFY changed)
    Q_PROPERTY(QVariantList problems READ problems NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    Q_PROPERTY(QString firstDay READ firstDay NOTIFY changed)
    Q_PROPERTY(QString lastDay READ lastDay NOTIFY changed)
public:
    WhatIfModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// [{title, text}], by date.
    [[nodiscard]] QVariantList legs() const;
    /// [{slug, name}] where the rig stood before.
    [[nodiscard]] QVariantList places() const { return placeChoices(knownPlaces(m_shown)); }
    [[nodiscard]] QVariantList roads() const { return roadChoices(); }
    /// [{field, what, act}] of the last leg typed; empty when it was understood.
    [[nodiscard]] QVariantList problems() const { return m_problems; }
    /// "9 dates move: 7 sooner, 2 later."; "" without a leg.
    [[nodiscard]] QString sentence() const;
    /// [{point, title, dates, moved}]
    [[nodiscard]] QVariantList rows() const;
    /// Offered for the next leg, year-month-day.
    [[nodiscard]] QString firstDay() const;
    [[nodiscard]] QString lastDay() const;

    void show(const Shown &shown);
    /// \param map see `readLeg`. What is understood joins the plan and is worked out at once.
    Q_INVOKABLE bool addLeg(const QVariantMap &map);
    Q_INVOKABLE void removeLeg(int at);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] CivilDate nextDay() const;
    void run();

    const ActDesk *m_desk;
    Shown m_shown;
    std::vector<PlanLeg> m_legs;
    QVariantList m_problems;
    std::vector<MovedDate> m_moved;
    int m_waiting = 0;
};

} // namespace snugwalk

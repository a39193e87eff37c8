// SPDX-License-Identifier: Apache-2.0
// What to buy: for which findings and points, and what is on hand already.
#pragma once

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "round/supplies.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class SuppliesModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(int days READ days NOTIFY changed)
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
public:
    SuppliesModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// How far ahead it looks.
    [[nodiscard]] int days() const { return m_days; }
    /// [{item, name, get, needed, onHand, uses: [text]}]
    [[nodiscard]] QVariantList rows() const;
    /// Short lines of what the items carry.
    [[nodiscard]] QStringList cautions() const;

    void show(const Shown &shown);
    /// Works the list out on the worker.
    Q_INVOKABLE void open(int days);
    /// \param amount "2 cartridges", "450 mL", "12"; the session's error when it is not understood.
    Q_INVOKABLE void setOnHand(const QString &item, const QString &amount);

Q_SIGNALS:
    void changed();

private:
    const ActDesk *m_desk;
    Shown m_shown;
    std::vector<SupplyLine> m_lines;
    int m_days = 90;
    int m_waiting = 0;
    bool m_asked = false;
};

} // namespace snugwalk

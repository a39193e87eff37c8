// SPDX-License-Identifier: Apache-2.0
// What this device wrote last outside a walk, and the way back from it.
#pragma once

#include <QString>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "logbook/undo.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class LastActModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
public:
    LastActModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// "Mend: lap sealant, 3 February"; empty when nothing can be taken back, or before `look`.
    [[nodiscard]] QString what() const;

    void show(const Shown &shown);
    /// Asks the logbook what stands last.
    Q_INVOKABLE void look();
    /// Takes back what `what` says, nothing else: the session's error when something was written since.
    Q_INVOKABLE void takeBack();

Q_SIGNALS:
    void changed();

private:
    struct Last {
        LastAct act;
        Value doc; ///< the thing as it is now
    };

    const ActDesk *m_desk;
    Shown m_shown;
    std::optional<Last> m_last;
    int m_waiting = 0;
    bool m_asked = false;
};

} // namespace snugwalk

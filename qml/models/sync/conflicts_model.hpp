// SPDX-License-Identifier: Apache-2.0
// What two people wrote differently, and what was set aside: both are for a person to decide.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "snapshot.hpp"
#include "sync_state.hpp"

namespace snugwalk {

class ConflictsModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(QVariantList conflicts READ conflicts NOTIFY changed)
    Q_PROPERTY(QVariantList aside READ aside NOTIFY changed)
    Q_PROPERTY(bool mayAdopt READ mayAdopt NOTIFY changed)
public:
    ConflictsModel(const ActDesk *desk, QObject *parent);

    [[nodiscard]] bool isBusy() const { return m_busy; }
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    /// A row a thing: [{key, title, versions: [{text, who, when, device, shown}]}], versions oldest first;
    /// text has a line for each field that differs.
    [[nodiscard]] QVariantList conflicts() const { return m_conflicts; }
    /// [{key, title, detail, who, when, reason}], oldest first.
    [[nodiscard]] QVariantList aside() const { return m_aside; }
    [[nodiscard]] bool mayAdopt() const { return m_state.role == SyncRole::Owner; }

    void show(const Shown &shown, const SyncState &state);

    /// Writes the version at `index` of the row `key` as the one that holds.
    Q_INVOKABLE void choose(const QString &key, int index);
    /// Takes over the entry `key`, or all that were set aside when it is empty.
    Q_INVOKABLE void adopt(const QString &key);
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    void acted();

private:
    template <typename T, typename Job>
    void run(Job job);

    const ActDesk *m_desk;
    Shown m_shown;
    SyncState m_state;
    QVariantList m_conflicts;
    QVariantList m_aside;
    QVariantMap m_fault;
    bool m_busy = false;
};

} // namespace snugwalk

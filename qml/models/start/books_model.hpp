// SPDX-License-Identifier: Apache-2.0
// The logbooks of this device as pages see them: the demo, a backup, what a backup becomes.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"

namespace snugwalk {

class BooksModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool demoOffered READ isDemoOffered CONSTANT)
    Q_PROPERTY(bool hasDemo READ hasDemo NOTIFY changed)
    Q_PROPERTY(bool isDemo READ isDemo CONSTANT)
    Q_PROPERTY(bool canRestore READ canRestore CONSTANT)
    Q_PROPERTY(QString file READ file CONSTANT)
    Q_PROPERTY(QVariantList known READ known CONSTANT)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed)
public:
    BooksModel(const ActDesk *desk, QObject *parent);

    /// Whether the invented rig can be shown from here.
    [[nodiscard]] bool isDemoOffered() const;
    /// Whether its logbook lies on this device.
    [[nodiscard]] bool hasDemo() const { return m_hasDemo; }
    /// Whether the open logbook is the invented rig's.
    [[nodiscard]] bool isDemo() const;
    [[nodiscard]] bool canRestore() const { return places().restore && places().open && !isDemo(); }
    [[nodiscard]] QString file() const { return places().current; }
    /// [{file, name, current}]: the person's own logbooks.
    [[nodiscard]] QVariantList known() const;
    [[nodiscard]] bool isBusy() const { return m_busy; }
    /// What is being done, in words; "" for nothing.
    [[nodiscard]] QString step() const { return m_step; }
    /// What was done last, with its place.
    [[nodiscard]] QString outcome() const { return m_outcome; }

    /// The invented rig's logbook, made first where there is none. The person's own stays as it is.
    Q_INVOKABLE void openDemo();
    /// Back to the person's own; with `forget` the invented rig's logbook is removed.
    Q_INVOKABLE void leaveDemo(bool forget);
    /// From the person's own logbook: removes the invented rig's.
    Q_INVOKABLE void forgetDemo();
    Q_INVOKABLE void openBook(const QString &file);
    /// \param to a path or file: address that does not exist yet
    Q_INVOKABLE void backUp(const QString &to);
    /// A new logbook of a backup, opened once it is checked; nothing is overwritten.
    Q_INVOKABLE void restore(const QString &from);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const BookPlaces &places() const { return m_desk->parts->books; }
    void begin(const QString &step);
    void end(const QString &outcome);
    void fail(const Error &error);

    const ActDesk *m_desk;
    bool m_hasDemo = false;
    bool m_busy = false;
    QString m_step;
    QString m_outcome;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The exchange page: stores, what waits, exchanging, the devices of the rig.
#pragma once

#include <memory>

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "code_reader.hpp"
#include "conflicts_model.hpp"
#include "exchange_run.hpp"
#include "paper_model.hpp"
#include "share_model.hpp"
#include "snapshot.hpp"
#include "sync_state.hpp"

namespace snugwalk {

class SyncModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString busyWith READ busyWith NOTIFY changed)
    Q_PROPERTY(QString progress READ progress NOTIFY progressed)
    Q_PROPERTY(double done READ done NOTIFY progressed)
    Q_PROPERTY(QStringList outcome READ outcome NOTIFY changed)
    Q_PROPERTY(bool stopped READ isStopped NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(bool shared READ isShared NOTIFY changed)
    Q_PROPERTY(bool owner READ isOwner NOTIFY changed)
    Q_PROPERTY(bool joining READ isJoining NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QStringList waiting READ waiting NOTIFY changed)
    Q_PROPERTY(QString mark READ mark NOTIFY changed)
    Q_PROPERTY(QVariantList stores READ stores NOTIFY changed)
    Q_PROPERTY(QVariantList devices READ devices NOTIFY changed)
    Q_PROPERTY(snugwalk::ShareModel *share READ share CONSTANT)
    Q_PROPERTY(snugwalk::ConflictsModel *conflicts READ conflicts CONSTANT)
    Q_PROPERTY(snugwalk::PaperModel *paper READ paper CONSTANT)
    Q_PROPERTY(snugwalk::CodeReader *reader READ reader CONSTANT)
    Q_PROPERTY(QStringList elsewhere READ elsewhere NOTIFY changed)
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
public:
    SyncModel(const ActDesk *desk, QObject *parent);
    /// Stops an exchange and waits until it is at a place where nothing is lost.
    ~SyncModel() override;

    /// Reading, acting or exchanging, here or in the two models below.
    [[nodiscard]] bool isBusy() const;
    /// The store that is being exchanged with; empty when none is.
    [[nodiscard]] QString busyWith() const { return m_with; }
    [[nodiscard]] QString progress() const;
    /// How much of the present step is done, 0 to 1.
    [[nodiscard]] double done() const;
    /// Sentences about the last exchange; empty before one.
    [[nodiscard]] QStringList outcome() const { return m_outcome; }
    [[nodiscard]] bool isStopped() const { return m_stopped; }
    /// {what, act} of the last thing that did not go; empty otherwise.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    [[nodiscard]] bool isShared() const { return m_state.shared; }
    [[nodiscard]] bool isOwner() const { return m_state.role == SyncRole::Owner; }
    /// A rig was shared with this logbook and has not arrived.
    [[nodiscard]] bool isJoining() const { return m_state.joining; }
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QStringList waiting() const;
    /// A few words for the quiet mark; empty when nothing waits.
    [[nodiscard]] QString mark() const;
    /// [{name, where, kind, last, waits}]
    [[nodiscard]] QVariantList stores() const;
    /// [{id, name, role, since, until, revoked, note, revocable}], the revoked last.
    [[nodiscard]] QVariantList devices() const;
    [[nodiscard]] ShareModel *share() const { return m_share; }
    [[nodiscard]] ConflictsModel *conflicts() const { return m_conflicts; }
    [[nodiscard]] PaperModel *paper() const { return m_paper; }
    [[nodiscard]] CodeReader *reader() const { return m_reader; }
    /// Hashes of photos whose original is on another device: small pictures of them are here.
    [[nodiscard]] QStringList elsewhere() const;
    /// What asking for originals came to; empty before.
    [[nodiscard]] QString asked() const { return m_asked; }

    void show(const Shown &shown);

    /// \param all whether every original is fetched, not only those asked for
    Q_INVOKABLE void exchangeNow(const QString &store, bool all = false);
    /// Originals to fetch with the next exchange. \param photo a hash; empty: all that are elsewhere
    Q_INVOKABLE void ask(const QString &photo);
    Q_INVOKABLE void stop();
    /// \param map name; kind folder, file or webdav; place, a path or an address; user, password and
    /// authority for WebDAV
    Q_INVOKABLE void add(const QVariantMap &map);
    Q_INVOKABLE void remove(const QString &store);
    Q_INVOKABLE void revoke(const QString &device, const QString &reason);
    /// Puts away what the last exchange or act said.
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    void progressed();
    void storeAdded();

private:
    void readAgain();
    void takeState(Result<SyncState> state);
    void act(std::function<Status(Logbook &)> job, std::function<void()> then);
    void finishExchange(const Result<ExchangeSummary> &met);

    const ActDesk *m_desk;
    Shown m_shown;
    SyncState m_state;
    bool m_reading = false;
    bool m_readAgain = false;
    bool m_acting = false;
    bool m_stopped = false;
    QString m_with;
    QStringList m_outcome;
    QString m_asked;
    QVariantMap m_fault;
    QTimer m_look; ///< at how far the exchange has come
    std::shared_ptr<ExchangeWatch> m_watch;
    ShareModel *m_share;
    ConflictsModel *m_conflicts;
    PaperModel *m_paper;
    CodeReader *m_reader;
    std::unique_ptr<Worker> m_beside; ///< made for the first exchange
};

} // namespace snugwalk

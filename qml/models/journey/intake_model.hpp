// SPDX-License-Identifier: Apache-2.0
// The import page: one file at a time, read on a thread of its own, written in one act or not at all.
#pragma once

#include <memory>

#include <QObject>
#include <QThread>
#include <QTimer>
#include <QUrl>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "intake.hpp"
#include "place_form.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class IntakeModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
    Q_PROPERTY(double share READ share NOTIFY progressed)
    Q_PROPERTY(QString progress READ progress NOTIFY progressed)
    Q_PROPERTY(QStringList outcome READ outcome NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(bool stopped READ isStopped NOTIFY changed)
    Q_PROPERTY(QVariantList places READ places NOTIFY shown)
    Q_PROPERTY(QVariantList roads READ roads NOTIFY shown)
    Q_PROPERTY(QVariantList trips READ trips NOTIFY shown)
public:
    IntakeModel(const ActDesk *desk, QObject *parent);
    /// Stops reading and waits for the reader; what it found is not written.
    ~IntakeModel() override;

    /// Reading or writing.
    [[nodiscard]] bool isBusy() const { return m_busy; }
    [[nodiscard]] QString fileName() const { return m_fileName; }
    /// How much is read, 0 to 1.
    [[nodiscard]] double share() const;
    [[nodiscard]] QString progress() const;
    /// Sentences about the last file that was taken in.
    [[nodiscard]] QStringList outcome() const;
    /// {what, where, reason, act} of the last file that was not; empty otherwise.
    [[nodiscard]] QVariantMap fault() const;
    [[nodiscard]] bool isStopped() const { return m_stopped; }
    /// [{slug, name}] of places, roads and trips; trips newest first.
    [[nodiscard]] QVariantList places() const { return placeChoices(knownPlaces(m_shown)); }
    [[nodiscard]] QVariantList roads() const;
    [[nodiscard]] QVariantList trips() const;

    void show(const Shown &shown);
    /// \param kind "track", "shake" or "weather"
    /// \param map road (slug); trip (id), speedFile, sensor; stay or place as in `readLeg`, year
    Q_INVOKABLE void begin(const QString &kind, const QUrl &file, const QVariantMap &map);
    /// Nothing of the file is written once this returns while it was still being read.
    Q_INVOKABLE void stop();
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    void progressed();
    void shown();
    void added(const QString &kind);

private:
    [[nodiscard]] IntakeWish wishOf(const QString &kind, const QUrl &file, const QVariantMap &map) const;
    void takeRead(const Result<IntakeFound> &found);
    void write(const IntakeFound &found);
    void finish();

    const ActDesk *m_desk;
    Shown m_shown;
    QString m_kind;
    QString m_fileName;
    std::shared_ptr<IntakeWatch> m_watch;
    std::unique_ptr<QThread> m_thread;
    QTimer m_look; ///< at how far the reader has come
    std::optional<IntakeFound> m_found;
    std::optional<Error> m_error;
    bool m_busy = false;
    bool m_stopped = false;
};

} // namespace snugwalk

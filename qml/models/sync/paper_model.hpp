// SPDX-License-Identifier: Apache-2.0
// An owner that lives on paper: words to write down, and the way back from them.
#pragma once

#include <memory>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "snapshot.hpp"
#include "sync_places.hpp"

namespace snugwalk {

class PaperModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString mark READ mark NOTIFY changed)
    Q_PROPERTY(bool compared READ isCompared NOTIFY changed)
    Q_PROPERTY(QString rigName READ rigName NOTIFY changed)
public:
    PaperModel(const ActDesk *desk, QObject *parent);
    ~PaperModel() override;

    [[nodiscard]] bool isBusy() const { return m_busy; }
    /// {what, act}; empty without one.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    /// "": nothing yet · "written": the words are shown, once · "owner": this device owns the rig again.
    [[nodiscard]] QString step() const { return m_step; }
    /// 24 words, numbered by fives; empty but for the step "written".
    [[nodiscard]] QString words() const { return m_words; }
    /// The rig's seven words, numbered alike.
    [[nodiscard]] QString mark() const { return m_mark; }
    /// Whether a mark was typed and is the rig's.
    [[nodiscard]] bool isCompared() const { return m_compared; }
    [[nodiscard]] QString rigName() const;

    void show(const Shown &shown);

    /// Makes a key for paper. Only an owner's device may.
    Q_INVOKABLE void make();
    /// \param store where the rig's entries are \param mark may be empty
    Q_INVOKABLE void recover(const QString &store, const QString &words, const QString &mark);
    /// Forgets what is shown.
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    /// Something of the sharing is other than before.
    void acted();

private:
    template <typename T, typename Job, typename Then>
    void run(Worker &worker, Job job, Then then);

    const ActDesk *m_desk;
    Shown m_shown;
    bool m_busy = false;
    bool m_compared = false;
    QVariantMap m_fault;
    QString m_step;
    QString m_words;
    QString m_mark;
    std::unique_ptr<Worker> m_beside; ///< made for the first way back
};

} // namespace snugwalk

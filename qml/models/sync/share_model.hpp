// SPDX-License-Identifier: Apache-2.0
// Two devices meet: one shows a code, the other answers, both show six digits, the owner agrees.
#pragma once

#include <optional>

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "snapshot.hpp"
#include "sync/enroll.hpp"

namespace snugwalk {

class ShareModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QStringList picture READ picture NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString code READ code NOTIFY changed)
    Q_PROPERTY(QString until READ until NOTIFY changed)
    Q_PROPERTY(QString device READ device NOTIFY changed)
    Q_PROPERTY(QString role READ role NOTIFY changed)
    Q_PROPERTY(QString wanted READ wanted NOTIFY changed)
    Q_PROPERTY(QVariantList roles READ roles NOTIFY changed)
    Q_PROPERTY(QString rigName READ rigName NOTIFY changed)
public:
    ShareModel(const ActDesk *desk, QObject *parent);

    [[nodiscard]] bool isBusy() const { return m_busy; }
    /// {what, act}; empty without one.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    /// "": nothing yet · "offer": the owner's code is shown · "compare": the answer is here, digits on both ·
    /// "enrolled" · "answered": the new device's answer is shown.
    [[nodiscard]] QString step() const { return m_step; }
    /// Rows of the QR picture, a character a module: 1 is dark. Empty when it cannot be drawn.
    [[nodiscard]] QStringList picture() const { return m_picture; }
    /// The same bytes as words, numbered by fives.
    [[nodiscard]] QString words() const { return m_words; }
    /// "123 456".
    [[nodiscard]] QString code() const { return m_code; }
    /// The time until which the code shown stands.
    [[nodiscard]] QString until() const { return m_until; }
    [[nodiscard]] QString device() const;
    /// The role the owner gives, in words; and the one the new device asks for.
    [[nodiscard]] QString role() const;
    [[nodiscard]] QString wanted() const;
    [[nodiscard]] QVariantList roles() const;
    [[nodiscard]] QString rigName() const;

    void show(const Shown &shown);

    /// The owner's side. \param until a date as 2027-03-31, or empty
    Q_INVOKABLE void offer(const QString &role, const QString &until);
    Q_INVOKABLE void takeAnswer(const QString &words);
    /// The digits are the same on both.
    Q_INVOKABLE void confirm();
    /// The new device's side.
    Q_INVOKABLE void answer(const QString &words, const QString &role);
    /// Forgets everything shown; what was enrolled stays.
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    /// Something of the sharing is other than before.
    void acted();

private:
    struct Answered {
        std::string answer;
        std::string code;
        NewDevice device;
    };
    template <typename T, typename Job, typename Then>
    void run(Job job, Then then);
    void showBytes(const std::string &bytes);
    void refuse(const Error &error);
    void stepTo(const char *step);
    [[nodiscard]] std::optional<NewDevice> chosen(const QString &role, const QString &until);

    const ActDesk *m_desk;
    Shown m_shown;
    bool m_busy = false;
    QVariantMap m_fault;
    QString m_step;
    QStringList m_picture;
    QString m_words;
    QString m_code;
    QString m_until;
    std::optional<Offer> m_offer;
    std::optional<NewDevice> m_given;  ///< role and date as the owner chose
    std::optional<NewDevice> m_answer; ///< as the new device says
};

} // namespace snugwalk

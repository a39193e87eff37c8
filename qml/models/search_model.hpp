// SPDX-License-Identifier: Apache-2.0
// What of the rig has certain words.
#pragma once

#include <memory>

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "round/search.hpp"
#include "snapshot.hpp"

namespace snugwalk {

class SearchModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QVariantList hits READ hits NOTIFY changed)
public:
    SearchModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    [[nodiscard]] QString words() const { return m_words; }
    /// [{kind, kindText, id, title, part, date}], best first; `part` is empty when it is the title.
    [[nodiscard]] QVariantList hits() const;

    void show(const Shown &shown);
    /// Looks on the worker; what was typed before is forgotten.
    Q_INVOKABLE void find(const QString &words);

Q_SIGNALS:
    void changed();

private:
    // Made on the worker with the first question, and again when the logbook or the language is another.
    struct Kept {
        std::optional<SearchIndex> index;
    };

    const ActDesk *m_desk;
    Shown m_shown;
    std::shared_ptr<Kept> m_kept = std::make_shared<Kept>();
    QString m_words;
    std::vector<Hit> m_hits;
    int m_waiting = 0;
};

} // namespace snugwalk

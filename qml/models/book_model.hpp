// SPDX-License-Identifier: Apache-2.0
// The logbook place: what was done, and one walk laid against another.
#pragma once

#include <QObject>

#include "act_desk.hpp"
#include "book_lists.hpp"
#include "comparison_model.hpp"

namespace snugwalk {

class BookModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(snugwalk::WalkListModel *walks READ walks CONSTANT)
    Q_PROPERTY(snugwalk::TripListModel *trips READ trips CONSTANT)
    Q_PROPERTY(snugwalk::MendListModel *mends READ mends CONSTANT)
    Q_PROPERTY(QVariantList photos READ photos NOTIFY changed)
    Q_PROPERTY(snugwalk::ComparisonModel *comparison READ comparison CONSTANT)
    Q_PROPERTY(bool comparable READ isComparable NOTIFY changed)
    Q_PROPERTY(QString compareTitle READ compareTitle NOTIFY compared)
    Q_PROPERTY(QString comparePair READ comparePair NOTIFY compared)
    Q_PROPERTY(QStringList rigChanges READ rigChanges NOTIFY compared)
    Q_PROPERTY(QString compareSentence READ compareSentence NOTIFY compared)
public:
    BookModel(const ActDesk *desk, QObject *parent);

    /// The lists are filled when they are asked for and kept up while a page shows them: a mark on a walk
    /// must not wait for twenty years of trips.
    [[nodiscard]] WalkListModel *walks();
    [[nodiscard]] TripListModel *trips();
    [[nodiscard]] MendListModel *mends();
    /// [{hash, date, title, caption, place, findingId}]
    [[nodiscard]] QVariantList photos() const { return photoList(m_shown); }
    [[nodiscard]] ComparisonModel *comparison() { return &m_comparison; }
    /// Whether there are two walks with marks to lay side by side.
    [[nodiscard]] bool isComparable() const;
    [[nodiscard]] QString compareTitle() const;
    [[nodiscard]] QString compareSentence() const;
    /// Which earlier walk it is held against, and why that one.
    [[nodiscard]] QString comparePair() const;
    /// What was added to the rig and taken from it in between, a line each.
    [[nodiscard]] QStringList rigChanges() const;

    void show(const Shown &shown);

    /// Empty ids: the last walk and the one before it that looked at most of its points.
    /// Worked out on the worker; `compared` follows.
    Q_INVOKABLE void compare(const QString &thenId, const QString &nowId);

Q_SIGNALS:
    void changed();
    void compared();

private:
    template <typename List, typename Rows>
    List *filled(List &list, Rows (*rows)(const Shown &), Shown &filledFrom);
    template <typename List, typename Rows>
    void keepUp(List &list, Rows (*rows)(const Shown &), Shown &filledFrom);
    void showComparison(std::optional<Compared> compared);

    const ActDesk *m_desk;
    Shown m_shown;
    /// What was asked for last, ids or empty; an answer from an older snapshot is asked for again.
    std::optional<std::pair<QString, QString>> m_asked;
    std::optional<Compared> m_compared;
    WalkListModel m_walks;
    TripListModel m_trips;
    MendListModel m_mends;
    Shown m_walksOf; ///< what each list was filled from
    Shown m_tripsOf;
    Shown m_mendsOf;
    ComparisonModel m_comparison;
};

} // namespace snugwalk

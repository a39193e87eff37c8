// SPDX-License-Identifier: Apache-2.0
// What was done, compared and added to.
#include "book_model.hpp"

#include "round/compare.hpp"

namespace snugwalk {

BookModel::BookModel(const ActDesk *desk, QObject *parent)
    : QObject(parent),
      m_desk(desk),
      m_walks(nullptr),
      m_trips(nullptr),
      m_mends(nullptr),
      m_comparison(nullptr)
{}

template <typename List, typename Rows>
List *BookModel::filled(List &list, Rows (*rows)(const Shown &), Shown &filledFrom)
{
    if (filledFrom.snapshot != m_shown.snapshot || filledFrom.voice != m_shown.voice) {
        filledFrom = m_shown;
        list.assign(rows(m_shown));
    }
    return &list;
}

// Rows that nobody shows would hold an older snapshot.
template <typename List, typename Rows>
void BookModel::keepUp(List &list, Rows (*rows)(const Shown &), Shown &filledFrom)
{
    if (list.isWatched()) {
        (void)filled(list, rows, filledFrom);
        return;
    }
    list.assign({});
    filledFrom = {};
}

WalkListModel *BookModel::walks() { return filled(m_walks, walkRows, m_walksOf); }

TripListModel *BookModel::trips() { return filled(m_trips, tripRows, m_tripsOf); }

MendListModel *BookModel::mends() { return filled(m_mends, mendRows, m_mendsOf); }

void BookModel::show(const Shown &shown)
{
    m_shown = shown;
    keepUp(m_walks, walkRows, m_walksOf);
    keepUp(m_trips, tripRows, m_tripsOf);
    keepUp(m_mends, mendRows, m_mendsOf);
    if (m_asked)
        compare(QString(m_asked->first), QString(m_asked->second));
    Q_EMIT changed();
}

bool BookModel::isComparable() const
{
    return m_shown.history() != nullptr && lastTwo(*m_shown.history()).has_value();
}

void BookModel::compare(const QString &thenId, const QString &nowId)
{
    m_asked = std::pair(thenId, nowId);
    const RigHistory *history = m_shown.history();
    const Result<WalkPair> usual = history == nullptr ? Error{} : lastTwo(*history);
    const WalkPair last = usual ? *usual : WalkPair();
    const Id then = Id::parse(thenId.toStdString()).value_or(last.then);
    const Id now = Id::parse(nowId.toStdString()).value_or(last.now);
    if (history == nullptr || then.isNull() || now.isNull())
        return showComparison(std::nullopt);
    const PairedBy by = thenId.isEmpty() ? last.by : PairedBy::Named;
    // The job holds the snapshot: nobody changes it, and it lives as long as anyone looks at it.
    const auto act = [snapshot = m_shown.snapshot, then, now, by](Logbook &) {
        Compared compared = compareWithCalls(*snapshot->catalogue, *snapshot->history, then, now);
        compared.by = by;
        return Result<Compared>(std::move(compared));
    };
    m_desk->worker->run<Compared>(this, act, [this](Result<Compared> compared) {
        showComparison(compared ? std::optional(std::move(compared).value()) : std::nullopt);
    });
}

void BookModel::showComparison(std::optional<Compared> compared)
{
    m_compared = std::move(compared);
    m_comparison.assign(m_compared ? comparisonRows(m_shown, *m_compared) : std::vector<ComparisonRow>());
    Q_EMIT this->compared();
}

QString BookModel::compareTitle() const
{
    return m_compared ? comparisonTitle(m_shown, m_compared->comparison) : QString();
}

QString BookModel::compareSentence() const
{
    return m_compared ? comparisonSentence(m_compared->comparison)
                      : tr("There are no two walks to lay side by side yet.");
}

QString BookModel::comparePair() const
{
    return m_compared ? comparisonPair(*m_shown.voice, m_compared->by) : QString();
}

QStringList BookModel::rigChanges() const
{
    return m_compared ? rigChangeLines(m_shown, m_compared->comparison) : QStringList();
}

} // namespace snugwalk

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

void BookModel::show(const Shown &shown)
{
    m_shown = shown;
    m_walks.assign(walkRows(shown));
    m_trips.assign(tripRows(shown));
    m_mends.assign(mendRows(shown));
    m_photos = photoList(shown);
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

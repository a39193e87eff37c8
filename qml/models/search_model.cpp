// SPDX-License-Identifier: Apache-2.0
// Words to the worker, hits back.
#include "search_model.hpp"

#include <array>

namespace snugwalk {
namespace {

constexpr std::size_t mostHits = 50;

QString kindText(HitKind kind)
{
    switch (kind) {
    case HitKind::Point:
        return SearchModel::tr("point");
    case HitKind::Finding:
        return SearchModel::tr("finding");
    case HitKind::Mark:
        return SearchModel::tr("note on a walk");
    case HitKind::Mend:
        return SearchModel::tr("mend");
    case HitKind::Walk:
        return SearchModel::tr("walk");
    case HitKind::Trip:
        return SearchModel::tr("trip");
    case HitKind::Stay:
        return SearchModel::tr("stay");
    case HitKind::Happening:
        return SearchModel::tr("event");
    }
    return {};
}

} // namespace

QVariantList SearchModel::hits() const
{
    QVariantList list;
    for (const Hit &hit : m_hits) {
        const QString part = hit.part == hit.title ? QString() : Voice::text(hit.part);
        list << QVariantMap{{QStringLiteral("kind"), QString::fromLatin1(slug(hit.kind).data())},
                            {QStringLiteral("kindText"), kindText(hit.kind)},
                            {QStringLiteral("id"), Voice::text(hit.id)},
                            {QStringLiteral("title"), Voice::text(hit.title)},
                            {QStringLiteral("part"), part},
                            {QStringLiteral("date"), hit.at ? m_shown.voice->date(*hit.at) : QString()}};
    }
    return list;
}

void SearchModel::show(const Shown &shown)
{
    const bool isOther = shown.snapshot != m_shown.snapshot || shown.voice != m_shown.voice;
    m_shown = shown;
    if (!isOther)
        return;
    m_kept = std::make_shared<Kept>();
    if (m_words.isEmpty())
        Q_EMIT changed();
    else
        find(m_words);
}

void SearchModel::find(const QString &words)
{
    m_words = words.trimmed();
    if (m_words.isEmpty() || m_shown.history() == nullptr) {
        m_hits.clear();
        Q_EMIT changed();
        return;
    }
    ++m_waiting;
    Q_EMIT changed();
    const auto look = [kept = m_kept, shown = m_shown, product = m_desk->parts->catalogue,
                       typed = m_words.toStdString()](Logbook &) -> Result<std::vector<Hit>> {
        if (!kept->index) {
            Result<SearchIndex> made =
                SearchIndex::make(shown.catalogue(*product), *shown.history(), shown.voice->texts);
            if (!made)
                return made.error();
            kept->index = std::move(made).value();
        }
        return kept->index->find(typed, mostHits);
    };
    m_desk->worker->run<std::vector<Hit>>(
        this, look, [this, asked = m_words](Result<std::vector<Hit>> found) {
            --m_waiting;
            if (!found)
                m_desk->refuse(found.error());
            else if (asked == m_words) // a later question is on its way otherwise
                m_hits = std::move(found).value();
            Q_EMIT changed();
        });
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// What was done, compared and added to.
#include "book_model.hpp"

#include "logbook/files.hpp"
#include "trip/make_trip.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxTrackBytes = 64U * 1024 * 1024;

Result<Trip> keepTrip(Logbook &book, const std::string &file, const Id &rig, const Doer &doer)
{
    const Result<std::string> bytes = readFile(file, maxTrackBytes);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return track.error();
    const std::string name = std::filesystem::path(file).filename().string();
    Result<Trip> trip = makeTrip(*track, {{}, RoadClass::Unknown, name, {}, book.now().offset});
    if (!trip)
        return trip.error();
    trip->rig = rig;
    const Result<Id> added = addTrip(book, *trip, doer);
    if (!added)
        return added.error();
    return trip;
}

} // namespace

BookModel::BookModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_walks(nullptr), m_trips(nullptr), m_mends(nullptr), m_photos(nullptr),
      m_comparison(nullptr)
{}

void BookModel::show(const Shown &shown)
{
    m_shown = shown;
    m_walks.assign(walkRows(shown));
    m_trips.assign(tripRows(shown));
    m_mends.assign(mendRows(shown));
    m_photos.assign(photoRows(shown));
    if (m_compared)
        compare(Voice::text(m_compared->thenWalk.text()), Voice::text(m_compared->nowWalk.text()));
    Q_EMIT changed();
}

std::pair<Id, Id> BookModel::lastTwo() const
{
    const WalkRecord *now = nullptr;
    const WalkRecord *then = nullptr;
    if (m_shown.history() == nullptr)
        return {};
    const auto &walks = m_shown.history()->walks;
    for (auto it = walks.rbegin(); it != walks.rend(); ++it) {
        if (it->marks.empty())
            continue;
        if (now == nullptr)
            now = &*it;
        else if (then == nullptr || (then->walk.kind != now->walk.kind && it->walk.kind == now->walk.kind))
            then = &*it;
    }
    return {then == nullptr ? Id{} : then->walk.id, now == nullptr ? Id{} : now->walk.id};
}

bool BookModel::isComparable() const
{
    return !lastTwo().first.isNull();
}

void BookModel::compare(const QString &thenId, const QString &nowId)
{
    const auto [lastThen, lastNow] = lastTwo();
    const Id then = Id::parse(thenId.toStdString()).value_or(lastThen);
    const Id now = Id::parse(nowId.toStdString()).value_or(lastNow);
    m_compared.reset();
    if (m_shown.history() != nullptr && !then.isNull() && !now.isNull())
        m_compared = compareWalks(*m_desk->parts->catalogue, *m_shown.history(), then, now);
    showComparison();
}

void BookModel::showComparison()
{
    m_comparison.assign(m_compared ? comparisonRows(m_shown, *m_compared) : std::vector<ComparisonRow>());
    Q_EMIT compared();
}

QString BookModel::compareTitle() const
{
    return m_compared ? comparisonTitle(m_shown, *m_compared) : QString();
}

QString BookModel::compareSentence() const
{
    return m_compared ? comparisonSentence(*m_compared) : tr("There are no two walks to lay side by side yet.");
}

void BookModel::importTrip(const QUrl &file)
{
    if (m_shown.history() == nullptr)
        return;
    const auto act = [path = file.toLocalFile().toStdString(), rig = m_shown.history()->rig.id,
                      doer = m_desk->doer()](Logbook &book) { return keepTrip(book, path, rig, doer); };
    m_desk->worker->run<Trip>(this, act, [this](Result<Trip> trip) {
        if (!trip) {
            m_desk->refuse(trip.error());
            return;
        }
        const Voice &voice = *m_shown.voice;
        QString sentence = tr("%1 on %2 was added.").arg(voice.quantity(trip->summary.length), voice.date(trip->start));
        const long long dropped = trip->summary.fixesRead - trip->summary.fixesKept;
        if (dropped > 0)
            sentence += u' ' + tr("%n positions were left out.", nullptr, static_cast<int>(dropped));
        Q_EMIT tripImported(sentence);
        m_desk->changed(true);
    });
}

} // namespace snugwalk

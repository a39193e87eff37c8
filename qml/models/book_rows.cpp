// SPDX-License-Identifier: Apache-2.0
// Rows of the logbook's lists.
#include <set>

#include "book_lists.hpp"
#include "near_text.hpp"
#include "walk/progress.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BookRows)
public:
    static QString counts(const Counts &counts);
    static QString road(RoadClass road);
    static QString way(const Shown &shown, const Trip &trip);
};

QString Words::counts(const Counts &counts)
{
    QStringList parts;
    if (counts.pass > 0)
        parts << tr("%n pass", nullptr, counts.pass);
    if (counts.attention > 0)
        parts << tr("%n attention", nullptr, counts.attention);
    if (counts.couldNotLook > 0)
        parts << tr("%n could not look", nullptr, counts.couldNotLook);
    if (counts.notFitted > 0)
        parts << tr("%n not fitted", nullptr, counts.notFitted);
    if (counts.notLooked > 0)
        parts << tr("%n line(s) not looked at", nullptr, counts.notLooked);
    return parts.join(QStringLiteral(", "));
}

QString Words::road(RoadClass road)
{
    switch (road) {
    case RoadClass::Unknown:
        return tr("road not known");
    case RoadClass::Smooth:
        return tr("smooth road");
    case RoadClass::Broken:
        return tr("broken road");
    case RoadClass::Gravel:
        return tr("gravel");
    case RoadClass::Washboard:
        return tr("washboard");
    case RoadClass::Track:
        return tr("track");
    }
    return {};
}

QString Words::way(const Shown &shown, const Trip &trip)
{
    if (trip.outline.size() < 2)
        return {};
    const QString from = nearText(shown, trip.outline.front());
    const QString to = nearText(shown, trip.outline.back());
    return from.isEmpty() ? QString() : tr("from: %1; to: %2", "places").arg(from, to);
}

// By lines of the tape, as the walk itself counts: one walk has one count everywhere.
Counts countLines(const Walk &walk, const std::vector<Mark> &marks)
{
    Counts counts;
    for (const TapeLine &line : walk.tape) {
        ++counts.points;
        switch (lineState(line, marks)) {
        case MarkState::Pass:
            ++counts.pass;
            break;
        case MarkState::Attention:
            ++counts.attention;
            break;
        case MarkState::NotFitted:
            ++counts.notFitted;
            break;
        case MarkState::CouldNotLook:
            ++counts.couldNotLook;
            break;
        case MarkState::NotLooked:
            ++counts.notLooked;
            break;
        }
    }
    return counts;
}

} // namespace

QString walkCounts(const WalkRecord &walk) { return Words::counts(countLines(walk.walk, walk.marks)); }

QString tripWay(const TripRow &row) { return Words::way(row.shown, *row.trip); }

QVariantList tripOutline(const Trip &trip)
{
    QVariantList points;
    for (const GeoPoint &point : trip.outline)
        points << QVariantMap{{QStringLiteral("lat"), point.latitude},
                              {QStringLiteral("lon"), point.longitude}};
    return points;
}

// Rows hold on to the snapshot they were made from.
std::vector<WalkRow> walkRows(const Shown &shown)
{
    std::vector<WalkRow> rows;
    if (shown.history() == nullptr)
        return rows;
    const auto &walks = shown.history()->walks;
    for (auto it = walks.rbegin(); it != walks.rend(); ++it) {
        const Walk &walk = it->walk;
        rows.push_back({Voice::text(walk.id.text()), shown.voice->dateTime(walk.started),
                        Voice::text(shown.voice->texts.kindName(walk.kind)), Voice::text(walk.by),
                        std::shared_ptr<const WalkRecord>(shown.snapshot, &*it), shown.voice,
                        walk.finished.has_value()});
    }
    return rows;
}

std::vector<TripRow> tripRows(const Shown &shown)
{
    std::vector<TripRow> rows;
    if (shown.history() == nullptr)
        return rows;
    const auto &trips = shown.history()->trips;
    for (auto it = trips.rbegin(); it != trips.rend(); ++it)
        rows.push_back({Voice::text(it->id.text()), Voice::text(it->title), shown.voice->date(it->start),
                        shown.voice->quantity(it->summary.length), Words::road(it->road),
                        Voice::text(it->note), std::shared_ptr<const Trip>(shown.snapshot, &*it), shown});
    return rows;
}

std::vector<MendRow> mendRows(const Shown &shown)
{
    std::vector<MendRow> rows;
    if (shown.history() == nullptr)
        return rows;
    const auto &mends = shown.history()->mends;
    for (auto it = mends.rbegin(); it != mends.rend(); ++it)
        rows.push_back({Voice::text(it->id.text()), shown.voice->date(it->at),
                        shown.voice->mendAction(it->action), Voice::text(it->what), Voice::text(it->cost),
                        Voice::text(it->by)});
    return rows;
}

QVariantList photoList(const Shown &shown)
{
    std::vector<std::pair<LocalTime, QVariant>> dated;
    if (shown.history() == nullptr)
        return {};
    const Voice &voice = *shown.voice;
    std::set<std::string> seen; // one photo may show two findings
    for (const FindingHistory &history : shown.history()->findings) {
        for (const Photo &photo : history.photos) {
            if (!seen.insert(photo.hash).second)
                continue;
            const LocalTime at = photo.taken.value_or(photo.added);
            dated.emplace_back(
                at,
                QVariantMap{{QStringLiteral("hash"), Voice::text(photo.hash)},
                            {QStringLiteral("date"), voice.date(at)},
                            {QStringLiteral("title"), voice.point(history.finding.point)},
                            {QStringLiteral("caption"), Voice::text(photo.caption)},
                            {QStringLiteral("place"), photo.where ? voice.position(*photo.where) : QString()},
                            {QStringLiteral("findingId"), Voice::text(history.finding.id.text())}});
        }
    }
    std::stable_sort(dated.begin(), dated.end(),
                     [](const auto &a, const auto &b) { return a.first > b.first; });
    QVariantList list;
    for (auto &[at, photo] : dated)
        list << std::move(photo);
    return list;
}

} // namespace snugwalk

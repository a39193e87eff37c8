// SPDX-License-Identifier: Apache-2.0
// Titles of what lies on the map, and what a screen reader says of it.
#include "sheet_words.hpp"

#include <algorithm>
#include <array>

#include "map_texts.hpp"
#include "near_text.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(MapSheet)
public:
    static QString trip(const Trip &trip);
    static QString stay(const Voice &voice, const Stay &stay);
    static QString group(const Shown &shown, const MapGroup &group);
    static QString spoken(const Shown &shown, const MapSheet &sheet);
};

template <typename T>
const T *named(const std::vector<T> &things, const Id &id)
{
    const auto found = std::find_if(things.begin(), things.end(), [&](const T &t) { return t.id == id; });
    return found == things.end() ? nullptr : &*found;
}

const char *pageOf(MapItem::Kind kind)
{
    return kind == MapItem::Kind::TripEnd ? "trip" : kind == MapItem::Kind::Stay ? "stay" : "finding";
}

QString Words::trip(const Trip &trip) { return trip.title.empty() ? tr("A trip") : Voice::text(trip.title); }

QString Words::stay(const Voice &voice, const Stay &stay)
{
    return stay.to ? tr("%1 to %2", "dates of a stay").arg(voice.date(stay.from), voice.date(*stay.to))
                   : tr("since %1", "date of a stay that goes on").arg(voice.date(stay.from));
}

struct Told {
    QString title;
    QString detail;
};

Told told(const Shown &shown, const MapItem &item)
{
    const Voice &voice = *shown.voice;
    const RigHistory &history = *shown.history();
    if (item.kind == MapItem::Kind::TripEnd) {
        const Trip *trip = named(history.trips, item.id);
        return trip == nullptr ? Told{} : Told{Words::trip(*trip), voice.date(trip->start)};
    }
    if (item.kind == MapItem::Kind::Stay) {
        const Stay *stay = named(history.stays, item.id);
        if (stay == nullptr)
            return {};
        return {stay->name.empty() ? Words::tr("A stay") : Voice::text(stay->name),
                Words::stay(voice, *stay)};
    }
    const FindingHistory *finding = shown.snapshot->finding(item.id);
    if (finding == nullptr)
        return {};
    return {Words::tr("%1: %2", "point of the rig, defect")
                .arg(voice.point(finding->finding.point), voice.word("defects", finding->finding.defect)),
            Words::tr("%1, %2", "state of a finding, date")
                .arg(voice.findingStatus(slug(statusOf(*finding))), voice.date(finding->finding.opened))};
}

QString Words::group(const Shown &shown, const MapGroup &group)
{
    const Told first = told(shown, group.members.front());
    const QString one = QStringLiteral("%1, %2").arg(first.title, first.detail);
    if (group.members.size() == 1)
        return one;
    return tr("%n thing(s) here, first: %1", nullptr, static_cast<int>(group.members.size())).arg(one);
}

QString Words::spoken(const Shown &shown, const MapSheet &sheet)
{
    const MapView &view = sheet.view;
    const GeoPoint middle{view.middle.latitude, view.middle.longitude, std::nullopt, std::nullopt};
    QString near = nearText(shown, middle);
    if (near.isEmpty())
        near = shown.voice->position(middle);
    QStringList parts{tr("Map, north up; its middle is %1.", "where").arg(near),
                      tr("%1 across.", "distance")
                          .arg(shown.voice->roughly(Dimension::Distance, view.frame().width() * 1000.0))};
    if (!sheet.coastKnown)
        parts << tr("Where the sea is is not known here.");
    return parts.join(u' ');
}

} // namespace

QVariantMap memberWords(const Shown &shown, const MapItem &item)
{
    const Told words = told(shown, item);
    return {{QStringLiteral("kind"), QString::fromLatin1(pageOf(item.kind))},
            {QStringLiteral("shape"), QString::fromLatin1(slug(item.kind))},
            {QStringLiteral("id"), Voice::text(item.id.text())},
            {QStringLiteral("title"), words.title},
            {QStringLiteral("detail"), words.detail}};
}

QVariantMap sheetWords(const Shown &shown, const MapSheet &sheet)
{
    const MapView &view = sheet.view;
    QVariantList grid;
    for (const GridLine &line : sheet.grid)
        grid << QVariantMap{{QStringLiteral("at"), line.at},
                            {QStringLiteral("text"), degreesText(*shown.voice, line)},
                            {QStringLiteral("meridian"), line.meridian}};
    QVariantList lines;
    for (const MapSheet::Line &line : sheet.lines)
        lines << QVariantMap{{QStringLiteral("points"), flatList(line.points)},
                             {QStringLiteral("dash"), dashOf(line.road)}};
    QVariantList groups;
    for (const MapGroup &group : sheet.groups) {
        const MapItem &first = group.members.front();
        groups << QVariantMap{{QStringLiteral("x"), group.x},
                              {QStringLiteral("y"), group.y},
                              {QStringLiteral("shape"), QString::fromLatin1(slug(group.kind))},
                              {QStringLiteral("count"), static_cast<int>(group.members.size())},
                              {QStringLiteral("spoken"), Words::group(shown, group)},
                              {QStringLiteral("kind"), QString::fromLatin1(pageOf(first.kind))},
                              {QStringLiteral("id"), Voice::text(first.id.text())}};
    }
    QVariantList labels;
    for (const PlaceLabel &label : sheet.labels)
        labels << QVariantMap{{QStringLiteral("x"), label.x},
                              {QStringLiteral("y"), label.y},
                              {QStringLiteral("left"), label.box.left},
                              {QStringLiteral("top"), label.box.top},
                              {QStringLiteral("width"), label.box.width},
                              {QStringLiteral("height"), label.box.height},
                              {QStringLiteral("text"), Voice::text(label.name)}};
    return {{QStringLiteral("width"), view.width},
            {QStringLiteral("height"), view.height},
            {QStringLiteral("over"), mapOver},
            {QStringLiteral("land"), sheet.land},
            {QStringLiteral("sea"), sheet.sea},
            {QStringLiteral("coast"), sheet.coastKnown},
            {QStringLiteral("names"), sheet.namesKnown},
            {QStringLiteral("grid"), grid},
            {QStringLiteral("lines"), lines},
            {QStringLiteral("groups"), groups},
            {QStringLiteral("labels"), labels},
            {QStringLiteral("scale"), scaleWords(*shown.voice, view.frame().width(), view.width)},
            {QStringLiteral("spoken"), Words::spoken(shown, sheet)}};
}

QVariantList wishWords(const MapWish &wish)
{
    const auto one = [](const char *slug, const QString &name, bool on) {
        return QVariantMap{{QStringLiteral("slug"), QString::fromLatin1(slug)},
                           {QStringLiteral("name"), name},
                           {QStringLiteral("on"), on}};
    };
    return {one("findings", Words::tr("findings", "on the map"), wish.findings),
            one("past", Words::tr("mended ones too", "findings on the map"), wish.past),
            one("trips", Words::tr("trips", "on the map"), wish.trips),
            one("stays", Words::tr("stays", "on the map"), wish.stays)};
}

bool *wishOf(MapWish &wish, const QString &slug)
{
    const std::array known = {std::pair{"findings", &wish.findings}, std::pair{"past", &wish.past},
                              std::pair{"trips", &wish.trips}, std::pair{"stays", &wish.stays}};
    for (const auto &[name, member] : known) {
        if (slug == QLatin1String(name))
            return member;
    }
    return nullptr;
}

} // namespace snugwalk

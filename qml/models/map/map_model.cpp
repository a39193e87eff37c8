// SPDX-License-Identifier: Apache-2.0
// Where the map looks, and asking for its sheet.
#include "map_model.hpp"

#include <algorithm>
#include <cmath>

#include "sheet_words.hpp"

namespace snugwalk {
namespace {

constexpr double letterShare = 0.6; // of a letter's height is its width, generous
constexpr double lineShare = 1.35;

} // namespace

MapItems MapModel::items() const { return mapItems(*m_shown.snapshot, m_wish); }

bool MapModel::isEmpty() const { return !hasMapItems(*m_shown.snapshot); }

QVariantList MapModel::wishes() const { return wishWords(m_wish); }

void MapModel::show(const Shown &shown)
{
    const bool isOther = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    m_chosen.clear();
    if (isOther && m_open) // nothing is laid out but for a page: a mark would wait for it on the worker
        look();
    else
        tell();
}

std::vector<GeoPoint> MapModel::placesOf(const QString &thing) const
{
    std::vector<GeoPoint> places;
    const auto wanted = Id::parse(thing.toStdString());
    if (!wanted)
        return places;
    const MapItems all = mapItems(*m_shown.snapshot, {});
    for (const MapLine &line : all.lines) {
        if (line.trip == *wanted)
            return line.points;
    }
    for (const MapItem &item : all.spots) {
        if (item.id == *wanted)
            places.push_back(item.place);
    }
    return places;
}

void MapModel::open(const QString &thing)
{
    m_open = true;
    m_thing = thing;
    m_placed = false;
    m_chosen.clear();
    if (!thing.isEmpty())
        m_wish = {}; // or it might not be shown
    look();
}

void MapModel::close()
{
    m_open = false;
    m_chosen.clear();
    m_sheet.reset();
    tell();
}

void MapModel::fit(double width, double height, double target, double letterHeight)
{
    if (width < 1.0 || height < 1.0)
        return;
    if (m_placed) // the same ground at the same scale
        m_view.degrees *= width / m_view.width;
    m_view.width = width;
    m_view.height = height;
    m_view.target = target;
    m_view.letter = letterHeight * letterShare;
    m_view.lineHeight = letterHeight * lineShare;
    m_view = withinLimits(m_view);
    look();
}

void MapModel::move(double across, double down)
{
    if (!m_placed)
        return;
    const MapFrame frame = m_view.frame();
    const double km = frame.width() / m_view.width;
    m_view.middle = frame.placeAt({frame.width() / 2.0 - across * km, frame.height() / 2.0 - down * km});
    m_view = withinLimits(m_view);
    look();
}

void MapModel::zoom(double factor, double x, double y)
{
    if (!m_placed || !(factor > 0.0))
        return;
    MapView nearer = m_view;
    nearer.degrees /= factor;
    nearer = withinLimits(nearer);
    // what is under the fingers stays there
    const double real = m_view.degrees / nearer.degrees;
    const MapFrame frame = m_view.frame();
    const double km = frame.width() / m_view.width;
    const double across = (m_view.width / 2.0 - x) / real + x;
    const double down = (m_view.height / 2.0 - y) / real + y;
    nearer.middle = frame.placeAt({across * km, down * km});
    m_view = withinLimits(nearer);
    look();
}

void MapModel::whole()
{
    m_view = wholeView(items(), m_view);
    look();
}

void MapModel::wish(const QString &slug, bool on)
{
    if (bool *one = wishOf(m_wish, slug); one != nullptr)
        *one = on;
    m_chosen.clear();
    look();
}

void MapModel::choose(int group)
{
    m_chosen.clear();
    if (m_sheet && group >= 0 && static_cast<std::size_t>(group) < m_sheet->groups.size())
        m_chosen = m_sheet->groups[static_cast<std::size_t>(group)].members;
    tell();
}

void MapModel::lookCloser()
{
    std::vector<GeoPoint> places;
    for (const MapItem &item : m_chosen)
        places.push_back(item.place);
    const double before = m_view.degrees;
    m_view = viewOf(places, m_view);
    m_view.degrees = std::min(m_view.degrees, before / 2.0); // or nothing would be seen to happen
    m_view = withinLimits(m_view);
    m_chosen.clear();
    look();
}

QString MapModel::tripAt(double x, double y) const
{
    const Id *trip = m_sheet ? snugwalk::tripAt(*m_sheet, x, y, m_view.target / 2.0) : nullptr;
    return trip == nullptr ? QString() : Voice::text(trip->text());
}

void MapModel::look()
{
    if (!m_open || m_view.width <= 0.0 || m_shown.history() == nullptr) {
        tell();
        return;
    }
    if (!m_placed) {
        const std::vector<GeoPoint> places = placesOf(m_thing);
        m_view = places.empty() ? wholeView(items(), m_view) : viewOf(places, m_view);
        m_placed = hasMapItems(*m_shown.snapshot);
    }
    if (m_working) {
        m_again = true;
        return;
    }
    m_working = true;
    m_again = false;
    Q_EMIT changed();
    const auto act = [snapshot = m_shown.snapshot, wish = m_wish, view = m_view](Logbook &) {
        const World *world = snapshot->world.get();
        return Result<MapSheet>(mapSheet(mapItems(*snapshot, wish), view,
                                         world == nullptr ? nullptr : world->coastOrNull(),
                                         world == nullptr ? nullptr : world->placesOrNull()));
    };
    m_desk->worker->run<MapSheet>(this, act, [this](Result<MapSheet> sheet) {
        m_working = false;
        if (!m_open)
            return tell();
        if (sheet)
            take(std::move(sheet).value());
        else
            m_desk->refuse(sheet.error());
        if (m_again)
            look();
    });
}

void MapModel::take(MapSheet sheet)
{
    m_sheet = std::move(sheet);
    tell();
}

void MapModel::tell()
{
    m_words = m_sheet && m_shown.history() != nullptr ? sheetWords(m_shown, *m_sheet) : QVariantMap();
    m_members.clear();
    for (const MapItem &item : m_chosen)
        m_members << memberWords(m_shown, item);
    Q_EMIT changed();
}

} // namespace snugwalk

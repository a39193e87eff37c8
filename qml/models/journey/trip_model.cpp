// SPDX-License-Identifier: Apache-2.0
// Asking for a trip's sheet, and telling it again in another language.
#include "trip_model.hpp"

#include <algorithm>

#include "road_line.hpp"
#include "trip_words.hpp"

namespace snugwalk {
namespace {

// The seal that a trip's weather is told for; its drivers come from the catalogue.
constexpr std::string_view sealPoint = "roof-vent-sealant";

const Trip *find(const Snapshot &snapshot, const Id &id)
{
    if (!snapshot.history)
        return nullptr;
    const std::vector<Trip> &trips = snapshot.history->trips;
    const auto found = std::find_if(trips.begin(), trips.end(), [&](const Trip &t) { return t.id == id; });
    return found == trips.end() ? nullptr : &*found;
}

} // namespace

const Trip *TripModel::trip() const { return find(*m_shown.snapshot, m_trip); }

QString TripModel::tripId() const { return trip() == nullptr ? QString() : Voice::text(m_trip.text()); }

QString TripModel::title() const
{
    if (trip() == nullptr)
        return {};
    return trip()->title.empty() ? tr("A trip") : Voice::text(trip()->title);
}

QString TripModel::date() const
{
    if (trip() == nullptr)
        return {};
    const Voice &voice = *m_shown.voice;
    const bool isOneDay = civilDate(trip()->start) == civilDate(trip()->end);
    return isOneDay ? tr("%1, %2 to %3", "date, times")
                          .arg(voice.date(trip()->start), voice.time(trip()->start), voice.time(trip()->end))
                    : tr("%1 to %2", "dates").arg(voice.dateTime(trip()->start), voice.dateTime(trip()->end));
}

QString TripModel::note() const { return trip() == nullptr ? QString() : Voice::text(trip()->note); }

QString TripModel::sentence() const
{
    return m_sheet ? tripSentence(*m_shown.voice, m_sheet->story) : QString();
}

QString TripModel::doubt() const { return m_sheet ? tripDoubt(*m_shown.voice, m_sheet->story) : QString(); }

QVariantList TripModel::facts() const
{
    return trip() == nullptr ? QVariantList() : tripFacts(*m_shown.voice, *trip());
}

QVariantList TripModel::stops() const
{
    return trip() == nullptr ? QVariantList() : tripStops(*m_shown.voice, *trip());
}

QVariantMap TripModel::roughness() const
{
    return trip() == nullptr ? QVariantMap() : roadLine(*m_shown.voice, *trip());
}

bool TripModel::isMeasured() const { return trip() != nullptr && trip()->measured.has_value(); }

void TripModel::tellMap()
{
    m_mapWords =
        m_sheet && trip() != nullptr ? mapWords(*m_shown.voice, *trip(), m_sheet->map) : QVariantMap();
    Q_EMIT changed();
}

void TripModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    tellMap();
    if (isNew && !m_trip.isNull())
        open(Voice::text(m_trip.text()));
}

void TripModel::open(const QString &id)
{
    const RigHistory *history = m_shown.history();
    if (history == nullptr || history->trips.empty())
        return;
    const Id before = m_trip;
    m_trip = Id::parse(id.toStdString()).value_or(history->trips.back().id);
    if (m_trip != before)
        m_sheet.reset();
    ++m_waiting;
    tellMap();
    using Answer = std::optional<Sheet>;
    const auto act = [snapshot = m_shown.snapshot, wanted = m_trip](Logbook &) {
        const Trip *trip = find(*snapshot, wanted);
        if (trip == nullptr)
            return Result<Answer>(Answer());
        const Point *seal = snapshot->catalogue->find(sealPoint);
        const AgeWeights ages = seal == nullptr ? AgeWeights() : weightsOf(*seal);
        const World *world = snapshot->world.get();
        const Coast *coast = world != nullptr && world->coast ? &*world->coast : nullptr;
        return Result<Answer>(
            Answer(Sheet{tripStory(*snapshot->history, *trip, ages), tripMap(*trip, coast)}));
    };
    m_desk->worker->run<Answer>(this, act, [this, asked = m_trip](Result<Answer> sheet) {
        --m_waiting;
        if (asked == m_trip)
            m_sheet = sheet ? std::move(sheet).value() : std::nullopt;
        tellMap();
    });
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Sentences and figures of one trip.
#include "trip_words.hpp"

#include <cmath>

#include "leg_form.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Trip)
public:
    static QString basis(const std::string &basis);
    static QString span(const Voice &voice, Instant from, Instant to);
    static QString road(const Voice &voice, const Trip &trip);
};

QString days(const Voice &voice, double value) { return voice.number(value, value < 9.95 ? 1 : 0); }

QString Words::basis(const std::string &basis)
{
    if (basis == "measured")
        return tr("measured on the way");
    if (basis == "fitted")
        return tr("from this rig's measured trips");
    if (basis == "common_practice")
        return tr("from the road told by hand; common practice");
    return tr("no road told, nothing measured: a usual road is taken");
}

QString Words::span(const Voice &voice, Instant from, Instant to)
{
    const long long minutes = (toMillis(to) - toMillis(from)) / 60'000;
    if (minutes < 60)
        return tr("%1 min").arg(voice.number(static_cast<double>(minutes), 0));
    return tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

QString Words::road(const Voice &voice, const Trip &trip)
{
    if (!trip.measured)
        return roadWords(trip.road);
    const RoadMeasure &m = *trip.measured;
    QString text =
        tr("middle %1 m/km, roughest tenth from %2 m/km on, over %3", "roughness, distance")
            .arg(voice.number(m.medianRoughness, 1), voice.number(m.p90, 1), voice.quantity(m.analysed));
    if (!m.calibrated)
        text += QStringLiteral("; ") + tr("an index of this rig alone: not calibrated");
    if (m.clipped)
        text += QStringLiteral("; ") + tr("the sensor met its end: at least so much");
    return text;
}

} // namespace

QString tripSentence(const Voice &voice, const TripStory &story)
{
    QStringList parts;
    if (story.weatherKnown)
        parts << Words::tr("%n day(s) that aged the seals like %1", nullptr, story.days)
                     .arg(days(voice, story.aged));
    if (story.shake.driven > Distance())
        parts << Words::tr("%1 that shook like %2", "distances")
                     .arg(voice.quantity(story.shake.driven),
                          voice.roughly(Dimension::Distance, story.shake.equivalent.si()));
    return parts.isEmpty() ? QString() : parts.join(QStringLiteral("; ")) + u'.';
}

QString tripDoubt(const Voice &voice, const TripStory &story)
{
    QStringList parts;
    if (story.weatherKnown)
        parts << Words::tr(
                     "Seals: like %1 to %2 days; estimated from the place's usual weather or its records.")
                     .arg(days(voice, story.agedLow), days(voice, story.agedHigh));
    else
        parts << Words::tr(
            "What the weather did is not known: the trip has no place, or there are no data for it.");
    if (story.shake.driven > Distance())
        parts << Words::tr("Shake: like %1 to %2; %3.", "distances, basis")
                     .arg(voice.quantity(story.shake.low), voice.quantity(story.shake.high),
                          Words::basis(story.shake.basis));
    return parts.join(u' ');
}

QVariantList tripFacts(const Voice &voice, const Trip &trip)
{
    QVariantList facts;
    const auto add = [&](const QString &label, const QString &value) {
        facts << QVariantMap{{QStringLiteral("label"), label}, {QStringLiteral("value"), value}};
    };
    const TrackSummary &s = trip.summary;
    add(Words::tr("Length"), voice.quantity(s.length));
    if (s.inferred > Distance())
        add(Words::tr("Of it straight lines over gaps"), voice.quantity(s.inferred));
    add(Words::tr("Start to end"), Words::span(voice, trip.start.instant, trip.end.instant));
    add(Words::tr("Road"), Words::road(voice, trip));
    if (s.ascent && s.descent)
        add(Words::tr("Up and down"),
            Words::tr("%1 up, %2 down", "climb").arg(voice.quantity(*s.ascent), voice.quantity(*s.descent)));
    if (s.lowest && s.highest)
        add(Words::tr("Lowest and highest"),
            Words::tr("%1 and %2", "altitudes").arg(voice.quantity(*s.lowest), voice.quantity(*s.highest)));
    long long dropped = 0;
    for (const Drop &drop : s.drops)
        dropped += drop.count;
    if (dropped > 0)
        add(Words::tr("Positions left out"), voice.number(static_cast<double>(dropped), 0));
    if (!trip.sourceName.empty())
        add(Words::tr("Read from"), Voice::text(trip.sourceName));
    return facts;
}

QVariantList tripStops(const Voice &voice, const Trip &trip)
{
    QVariantList list;
    int number = 0;
    for (const StopOver &stop : trip.summary.stops) {
        const QString at = voice.time({stop.from, trip.start.offset});
        list << QVariantMap{
            {QStringLiteral("label"), Words::tr("%1: %2", "number of a stop, time").arg(++number).arg(at)},
            {QStringLiteral("value"), Words::span(voice, stop.from, stop.to)}};
    }
    return list;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// From texts to a leg.
#include "leg_form.hpp"

#include <QCoreApplication>

namespace snugwalk {
namespace {

class LegReader {
    Q_DECLARE_TR_FUNCTIONS(LegForm)
public:
    LegReader(const QVariantMap &map, const std::vector<KnownPlace> &places, UnitSystem units)
        : m_map(map), m_places(places), m_units(units)
    {}
    LegForm read();
    static QString road(RoadClass road);

private:
    [[nodiscard]] QString text(const char *key) const
    {
        return m_map.value(QLatin1String(key)).toString().trimmed();
    }
    void fault(const char *field, const QString &what, const QString &act);
    std::optional<CivilDate> date(const char *key);
    void place();
    void distance();

    const QVariantMap &m_map;
    const std::vector<KnownPlace> &m_places;
    UnitSystem m_units;
    PlanLeg m_leg;
    QVariantList m_problems;
};

void LegReader::fault(const char *field, const QString &what, const QString &act)
{
    m_problems << QVariantMap{{QStringLiteral("field"), QLatin1String(field)},
                              {QStringLiteral("what"), what},
                              {QStringLiteral("act"), act}};
}

std::optional<CivilDate> LegReader::date(const char *key)
{
    const auto read = parseDate(text(key).toStdString());
    if (!read)
        fault(key, tr("Not a date: %1").arg(text(key)), tr("Write year, month and day, such as 2027-01-15."));
    return read;
}

void LegReader::place()
{
    bool isNumber = false;
    const std::size_t at = text("stay").toULongLong(&isNumber);
    if (isNumber && at < m_places.size()) {
        m_leg.place = m_places[at].place;
        m_leg.name = m_places[at].name.toStdString();
        return;
    }
    const auto typed = readPlace(text("place"));
    if (!typed)
        fault("place", tr("Not a place on earth: %1").arg(text("place")),
              tr("Choose one, or write latitude and longitude in degrees, such as -44.27, 170.10."));
    else
        m_leg.place = *typed;
}

void LegReader::distance()
{
    if (text("distance").isEmpty())
        return;
    const auto bare = findUnit(Dimension::Distance, m_units == UnitSystem::Us ? "mi" : "km");
    const Result<double> si = parseSi(Dimension::Distance, text("distance").toStdString(), bare);
    if (si && *si >= 0.0)
        m_leg.distance = Distance::fromSi(*si);
    else
        fault("distance", tr("Not understood: %1").arg(text("distance")),
              tr("Write it as 1200 km or 750 mi."));
}

LegForm LegReader::read()
{
    const auto from = date("from");
    const auto until = date("until");
    if (from && until && *until < *from)
        fault("until", tr("It ends before it begins."),
              tr("Give the last day there, at or after the first."));
    m_leg.from = from.value_or(CivilDate());
    m_leg.until = until.value_or(CivilDate());
    m_leg.covered = m_map.value(QStringLiteral("covered")).toBool();
    m_leg.road = findRoadClass(text("road").toStdString()).value_or(RoadClass::Unknown);
    place();
    distance();
    return {m_problems.isEmpty() ? std::optional(m_leg) : std::nullopt, m_problems};
}

QString LegReader::road(RoadClass road)
{
    switch (road) {
    case RoadClass::Unknown:
        return tr("not known", "road");
    case RoadClass::Smooth:
        return tr("smooth", "road");
    case RoadClass::Broken:
        return tr("broken", "road");
    case RoadClass::Gravel:
        return tr("gravel", "road");
    case RoadClass::Washboard:
        return tr("washboard", "road");
    case RoadClass::Track:
        return tr("track", "road");
    }
    return {};
}

} // namespace

LegForm readLeg(const QVariantMap &map, const std::vector<KnownPlace> &places, UnitSystem units)
{
    return LegReader(map, places, units).read();
}

QString roadWords(RoadClass road) { return LegReader::road(road); }

QVariantList roadChoices()
{
    QVariantList list;
    for (const RoadClass road : {RoadClass::Unknown, RoadClass::Smooth, RoadClass::Broken, RoadClass::Gravel,
                                 RoadClass::Washboard, RoadClass::Track})
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(roadClassName(road))},
                            {QStringLiteral("name"), roadWords(road)}};
    return list;
}

} // namespace snugwalk

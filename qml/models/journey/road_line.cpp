// SPDX-License-Identifier: Apache-2.0
// Stretches of a measured way as bars with their two axes.
#include "road_line.hpp"

#include <algorithm>
#include <limits>

#include "report/plot/plot_ticks.hpp"
#include "road/shake.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RoadLine)
};

constexpr int stepsWanted = 4;
constexpr double leastTop = 4.0; // m/km: a smooth road fills no page

QVariantList ticks(const Voice &voice, double most)
{
    QVariantList list;
    for (const double step : niceTicks(0.0, most, stepsWanted))
        list << QVariantMap{{QStringLiteral("value"), step},
                            {QStringLiteral("text"), voice.number(step, step < 1.0 && step > 0.0 ? 1 : 0)}};
    return list;
}

} // namespace

QVariantMap roadLine(const Voice &voice, const Trip &trip)
{
    if (!trip.measured || trip.measured->along.empty())
        return {};
    const RoadMeasure &m = *trip.measured;
    const double step = m.alongStep.si();
    const double span = step * static_cast<double>(m.along.size());
    double most = leastTop;
    double least = std::numeric_limits<double>::infinity();
    double worstAt = 0.0;
    double worst = -1.0;
    QVariantList bars;
    for (std::size_t i = 0; i < m.along.size(); ++i) {
        if (!m.along[i])
            continue;
        const double from = step * static_cast<double>(i);
        bars << QVariantMap{{QStringLiteral("from"), from},
                            {QStringLiteral("to"), from + step},
                            {QStringLiteral("value"), *m.along[i]}};
        most = std::max(most, *m.along[i]);
        least = std::min(least, *m.along[i]);
        if (*m.along[i] > worst) {
            worst = *m.along[i];
            worstAt = from;
        }
    }
    const QVariantList edges{fairRoughness, poorRoughness};
    const QVariantList reach{
        QVariantMap{{QStringLiteral("at"), 0.0}, {QStringLiteral("text"), voice.quantity(Distance())}},
        QVariantMap{{QStringLiteral("at"), span},
                    {QStringLiteral("text"), voice.quantity(Distance::fromSi(span))}}};
    return {{QStringLiteral("bars"), bars},
            {QStringLiteral("span"), span},
            {QStringLiteral("most"), most},
            {QStringLiteral("ticks"), ticks(voice, most)},
            {QStringLiteral("edges"), edges},
            {QStringLiteral("reach"), reach},
            {QStringLiteral("spoken"),
             Words::tr("Roughness along the way: %1 to %2 m/km, the roughest %3 from where the log began.")
                 .arg(voice.number(least, 1), voice.number(worst, 1),
                      voice.quantity(Distance::fromSi(worstAt)))}};
}

} // namespace snugwalk

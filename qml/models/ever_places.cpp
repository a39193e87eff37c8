// SPDX-License-Identifier: Apache-2.0
// Words for `recurringPlaces`.
#include "ever_places.hpp"

#include <limits>

#include "rig/names.hpp"
#include "round/recurring_places.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(EverPlaces)
};

QString whenWords(const Voice &voice, const RecurringPlace &place)
{
    const QString found = place.times == 1
                              ? Words::tr("once, on %1", "date").arg(voice.date(place.first))
                              : Words::tr("%n time(s), first on %1, last on %2", "dates", place.times)
                                    .arg(voice.date(place.first), voice.date(place.last));
    const QString mend = place.lastMend
                             ? Words::tr("last mend on %1", "date").arg(voice.date(*place.lastMend))
                             : Words::tr("no mend written");
    return Words::tr("%1; %2", "when found; when mended").arg(found, mend) +
           (place.isOpen ? QString() : Words::tr("; nothing open", "at a place"));
}

} // namespace

QVariantList everPlaceList(const Shown &shown)
{
    QVariantList list;
    if (shown.history() == nullptr)
        return list;
    const Voice &voice = *shown.voice;
    const Rig &rig = shown.history()->rig;
    for (const RecurringPlace &place : recurringPlaces(rig, shown.history()->findings).places) {
        QStringList what;
        for (const std::string &point : place.points)
            what << voice.point(point);
        const double nowhere = std::numeric_limits<double>::quiet_NaN();
        list << QVariantMap{{QStringLiteral("number"), static_cast<int>(list.size()) + 1},
                            {QStringLiteral("findingId"), Voice::text(place.findings.back().text())},
                            {QStringLiteral("kind"), QString()},
                            {QStringLiteral("face"), place.face ? Voice::text(slug(*place.face)) : QString()},
                            {QStringLiteral("x"), place.at ? place.at->aft.si() : nowhere},
                            {QStringLiteral("y"), place.at ? place.at->right.si() : nowhere},
                            {QStringLiteral("z"), place.at ? place.at->up.si() : nowhere},
                            {QStringLiteral("times"), place.times},
                            {QStringLiteral("open"), place.isOpen},
                            {QStringLiteral("where"), voice.place(rig, place.place)},
                            {QStringLiteral("what"), what.join(QStringLiteral("; "))},
                            {QStringLiteral("when"), whenWords(voice, place)}};
    }
    return list;
}

QString everElsewhereWords(const Shown &shown)
{
    const int without = shown.history() == nullptr
                            ? 0
                            : recurringPlaces(shown.history()->rig, shown.history()->findings).withoutPlace;
    return without == 0 ? QString() : Words::tr("%n finding(s) written without a place", "", without);
}

} // namespace snugwalk

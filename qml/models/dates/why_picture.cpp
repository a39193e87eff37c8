// SPDX-License-Identifier: Apache-2.0
// Adding up the parts along the line of time.
#include "why_picture.hpp"

#include <algorithm>

#include "report/plot/plot_voice.hpp"
#include "shift_words.hpp"

namespace snugwalk {
namespace {

constexpr double roomAtTheSides = 0.06; // of the span
constexpr std::size_t mostDates = 5;
constexpr std::size_t mostLongDates = 3; // "Feb 2025" takes a third of a phone
constexpr double leastSpan = 60.0;       // days, so that a band of a week is no wide thing

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyPicture)
};

double dayOf(CivilDate today, CivilDate date) { return static_cast<double>(daysBetween(today, date)); }

// [{day, text}] in days from `today`: the finest level of dates that a phone has room for.
QVariantList dateTicks(const Voice &voice, CivilDate today, double firstDay, double lastDay)
{
    const auto word = [&voice](CivilDate date, bool ofYear) {
        const int month = static_cast<int>(static_cast<unsigned>(date.month()));
        const QString name = voice.locale.standaloneMonthName(month, QLocale::ShortFormat);
        return (ofYear ? name + u' ' + QString::number(static_cast<int>(date.year())) : name).toStdString();
    };
    const double now = plotDay(today);
    const auto levels = dateLevels(now + firstDay, now + lastDay,
                                   {[&](CivilDate date) { return word(date, false); },
                                    [&](CivilDate date) { return word(date, true); }});
    QVariantList ticks;
    for (const std::vector<PlotTick> &level : levels) {
        const bool isLong = std::any_of(level.begin(), level.end(), [](const PlotTick &tick) {
            return tick.text.find(' ') != std::string::npos;
        });
        if (level.size() > (isLong ? mostLongDates : mostDates))
            continue;
        for (const PlotTick &tick : level)
            ticks << QVariantMap{{QStringLiteral("day"), tick.at - now},
                                 {QStringLiteral("text"), Voice::text(tick.text)}};
        break;
    }
    return ticks;
}

} // namespace

QVariantMap whyPicture(const Voice &voice, const DueBand &band, const DueShift &shift, CivilDate today)
{
    const double nominal = dayOf(today, shift.nominal);
    const double likely = dayOf(today, shift.likely);
    const double early = band.early ? dayOf(today, *band.early) : likely;
    const double late = band.late ? dayOf(today, *band.late) : likely;
    double least = std::min({nominal, likely, early, 0.0});
    double most = std::max({nominal, likely, late, 0.0});
    QVariantList steps;
    QStringList spoken{Words::tr("The catalogue alone: %1.").arg(voice.date(shift.nominal))};
    double at = nominal;
    const auto step = [&](const QString &name, double days) {
        const QString text = movedText(voice, days);
        steps << QVariantMap{{QStringLiteral("name"), name},
                             {QStringLiteral("text"), text},
                             {QStringLiteral("from"), at},
                             {QStringLiteral("to"), at + days}};
        spoken << Words::tr("%1: %2.", "cause, months sooner or later").arg(name, text);
        at += days;
        least = std::min(least, at);
        most = std::max(most, at);
    };
    double rest = 0.0;
    for (const ShiftPart &part : shift.parts) {
        if (isMoved(part.days))
            step(causeText(voice, part.cause), part.days);
        else
            rest += part.days;
    }
    if (isMoved(rest))
        step(Words::tr("small causes together"), rest);
    spoken << Words::tr("Likely: %1.").arg(voice.date(shift.likely));
    const double room = std::max(most - least, leastSpan) * roomAtTheSides;
    const double lastDay = std::max(most, least + leastSpan) + room;
    return {{QStringLiteral("nominal"), nominal},
            {QStringLiteral("likely"), likely},
            {QStringLiteral("early"), early},
            {QStringLiteral("late"), late},
            {QStringLiteral("firstDay"), least - room},
            {QStringLiteral("lastDay"), lastDay},
            {QStringLiteral("nominalText"), voice.date(shift.nominal)},
            {QStringLiteral("likelyText"), voice.date(shift.likely)},
            {QStringLiteral("steps"), steps},
            {QStringLiteral("ticks"), dateTicks(voice, today, least - room, lastDay)},
            {QStringLiteral("spoken"), spoken.join(u' ')}};
}

} // namespace snugwalk

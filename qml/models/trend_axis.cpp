// SPDX-License-Identifier: Apache-2.0
// Choosing steps that people count in.
#include "trend_axis.hpp"

#include <array>
#include <chrono>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double stepsWanted = 4.0;
constexpr double daysAMonth = 30.44;
constexpr double monthsShownAsYears = 30.0;
constexpr int mostDates = 5;
constexpr int mostLongDates = 3; // "Feb 2025" takes a third of a phone
constexpr double monthsWithoutYear = 11.0;

} // namespace

std::vector<double> roundSteps(double least, double most)
{
    std::vector<double> steps;
    if (!(most > least))
        return steps;
    const double wanted = (most - least) / stepsWanted;
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    double step = 10.0 * power;
    for (const double times : {5.0, 2.0, 1.0}) {
        if (times * power >= wanted * 0.75)
            step = times * power;
    }
    for (double k = std::ceil(least / step); k * step <= most + step * 1e-9; k += 1.0)
        steps.push_back(k * step);
    return steps;
}

QVariantList dateTicks(const Voice &voice, CivilDate today, double firstDay, double lastDay)
{
    QVariantList ticks;
    const double months = (lastDay - firstDay) / daysAMonth;
    const bool byYear = months > monthsShownAsYears;
    const bool isLong = months > monthsWithoutYear; // the same month comes twice
    const int step =
        byYear ? 12 * static_cast<int>(std::ceil(months / 12.0 / mostDates))
               : std::max(1, static_cast<int>(std::ceil(months / (isLong ? mostLongDates : mostDates))));
    const auto first =
        CivilDate(std::chrono::sys_days(today) + std::chrono::days(static_cast<int>(std::floor(firstDay))));
    CivilDate at = byYear ? first.year() / std::chrono::January / 1 : first.year() / first.month() / 1;
    for (;; at = addMonths(at, step)) {
        const auto day = static_cast<double>(daysBetween(today, at));
        if (day > lastDay)
            return ticks;
        if (day < firstDay)
            continue;
        const int month = static_cast<int>(static_cast<unsigned>(at.month()));
        const QString year = QString::number(static_cast<int>(at.year()));
        QString name = voice.locale.standaloneMonthName(month, QLocale::ShortFormat);
        if (isLong)
            name += u' ' + year;
        ticks << QVariantMap{{QStringLiteral("day"), day}, {QStringLiteral("text"), byYear ? year : name}};
    }
}

} // namespace snugwalk

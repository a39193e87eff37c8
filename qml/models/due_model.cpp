// SPDX-License-Identifier: Apache-2.0
// The due list in words and days.
#include "due_model.hpp"

#include "due_words.hpp"

namespace snugwalk {
namespace {

constexpr int monthsShown = 16;
constexpr double soonDays = 30.0;

double daysTo(const std::optional<CivilDate> &date, CivilDate today)
{
    return date ? static_cast<double>(daysBetween(today, *date)) : std::numeric_limits<double>::quiet_NaN();
}

QString kindOf(const DueBand &band)
{
    if (band.rule.starts_with("event:"))
        return QStringLiteral("event");
    if (band.rule == "never_looked")
        return QStringLiteral("never");
    return band.likely ? QStringLiteral("dated") : QStringLiteral("every_move");
}

DueRow rowOf(const Voice &voice, const Catalogue &catalogue, const DueBand &band, CivilDate today)
{
    DueRow row;
    row.key = Voice::text(band.point);
    row.title = voice.point(band.point);
    const Point *point = catalogue.find(band.point);
    row.zone = point == nullptr ? QString() : voice.word("zones", point->zone);
    row.early = daysTo(band.early, today);
    row.likely = daysTo(band.likely, today);
    row.late = daysTo(band.late, today);
    const auto date = [&](const std::optional<CivilDate> &d) { return d ? voice.date(*d) : QString(); };
    row.earlyText = date(band.early);
    row.likelyText = date(band.likely);
    row.lateText = date(band.late);
    row.when = dueWhen(voice, band, today);
    row.why = dueWhy(voice, band);
    row.reason = row.why.isEmpty() ? QString() : row.why.back();
    row.pastDue = band.pastDue;
    row.kind = kindOf(band);
    row.basis = voice.basis(band.basis);
    row.severity = static_cast<int>(band.severity) + 1;
    return row;
}

} // namespace

DueModel::DueModel(const Catalogue *catalogue, QObject *parent)
    : QObject(parent), m_catalogue(catalogue), m_rows(nullptr)
{}

void DueModel::show(const Shown &shown)
{
    m_shown = shown;
    const CivilDate today = civilDate(shown.snapshot->now);
    std::vector<DueRow> rows;
    for (const DueBand &band : shown.snapshot->bands)
        rows.push_back(rowOf(*shown.voice, shown.catalogue(*m_catalogue), band, today));
    m_rows.assign(std::move(rows));
    Q_EMIT m_rows.countChanged();
    Q_EMIT changed();
}

QString DueModel::sentence() const
{
    if (m_shown.history() == nullptr)
        return {};
    int past = 0;
    int soon = 0;
    int never = 0;
    for (const DueRow &row : m_rows.rows()) {
        const bool isNever = row.kind == QStringLiteral("never");
        never += isNever ? 1 : 0;
        past += !isNever && row.pastDue ? 1 : 0;
        soon += !isNever && !row.pastDue && row.likely <= soonDays ? 1 : 0;
    }
    QStringList parts;
    if (never > 0)
        parts << tr("%n were not looked at yet.", nullptr, never);
    if (past > 0)
        parts << tr("%n are past due.", nullptr, past);
    if (soon > 0)
        parts << tr("%n fall due within a month.", nullptr, soon);
    if (past == 0 && soon == 0)
        parts << tr("Nothing falls due within a month.");
    return parts.join(u' ');
}

QVariantList DueModel::months() const
{
    QVariantList list;
    const CivilDate today = civilDate(m_shown.snapshot->now);
    const CivilDate first = addMonths(today.year() / today.month() / 1, -1);
    for (int i = 0; i < monthsShown; ++i) {
        const CivilDate month = addMonths(first, i);
        const int number = static_cast<int>(static_cast<unsigned>(month.month()));
        list << QVariantMap{{QStringLiteral("label"),
                             m_shown.voice->locale.standaloneMonthName(number, QLocale::ShortFormat)},
                            {QStringLiteral("year"), static_cast<int>(month.year())},
                            {QStringLiteral("day"), static_cast<double>(daysBetween(today, month))}};
    }
    return list;
}

QVariantList DueModel::stays() const
{
    QVariantList list;
    if (m_shown.history() == nullptr)
        return list;
    const CivilDate today = civilDate(m_shown.snapshot->now);
    const double start = months().front().toMap().value(QStringLiteral("day")).toDouble();
    for (const Stay &stay : m_shown.history()->stays) {
        const auto day = [&](const LocalTime &time) {
            return static_cast<double>(daysBetween(today, civilDate(time)));
        };
        const double to = stay.to ? day(*stay.to) : 0.0;
        if (to < start)
            continue;
        list << QVariantMap{{QStringLiteral("name"), Voice::text(stay.name)},
                            {QStringLiteral("fromDay"), std::max(day(stay.from), start)},
                            {QStringLiteral("toDay"), to},
                            {QStringLiteral("covered"), stay.covered}};
    }
    return list;
}

} // namespace snugwalk

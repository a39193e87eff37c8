// SPDX-License-Identifier: Apache-2.0
// The due list in words and days.
#include "due_model.hpp"

#include <cmath>
#include <set>

#include "due/rules.hpp"
#include "due_words.hpp"
#include "shift_words.hpp"

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
    row.zoneSlug = point == nullptr ? QString() : Voice::text(point->zone);
    row.early = daysTo(band.early, today);
    row.likely = daysTo(band.likely, today);
    row.late = daysTo(band.late, today);
    row.alert = daysTo(band.alert, today);
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

DueModel::DueModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk), m_rows(nullptr) {}

void DueModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    makeRows();
    if (isNew && m_wanted)
        open();
}

void DueModel::makeRows()
{
    const CivilDate today = civilDate(m_shown.snapshot->now);
    m_all.clear();
    for (const DueBand &band : m_shown.snapshot->bands) {
        DueRow row = rowOf(*m_shown.voice, m_shown.catalogue(*m_desk->parts->catalogue), band, today);
        // a shift worked out for an older logbook may tell of another date
        const auto shift = m_shifts.find(band.point);
        if (shift != m_shifts.end() && shift->second.likely == band.likely) {
            row.nominal = daysTo(shift->second.nominal, today);
            const QString moved = shiftShort(*m_shown.voice, shift->second);
            row.reason = moved.isEmpty() ? row.reason : moved;
        }
        m_all.push_back(std::move(row));
    }
    assignRows();
}

void DueModel::assignRows()
{
    m_rows.assign(filtered(m_all, m_filter, m_shown.snapshot->state.points));
    Q_EMIT m_rows.countChanged();
    Q_EMIT changed();
}

void DueModel::open()
{
    m_wanted = true;
    if (m_shown.history() == nullptr)
        return;
    ++m_waiting;
    Q_EMIT changed();
    const auto act = [snapshot = m_shown.snapshot](Logbook &) {
        DueContext context(*snapshot->catalogue, *snapshot->history, snapshot->now);
        Shifts shifts;
        for (const DueBand &band : snapshot->bands) {
            if (auto shift = shiftOf(context, band))
                shifts.emplace(band.point, std::move(*shift));
        }
        return Result<Shifts>(std::move(shifts));
    };
    m_desk->worker->run<Shifts>(this, act, [this, asked = m_shown.snapshot](Result<Shifts> shifts) {
        --m_waiting;
        if (shifts && asked == m_shown.snapshot)
            m_shifts = std::move(shifts).value();
        makeRows();
    });
}

void DueModel::setZone(const QString &zone)
{
    m_filter.zone = zone;
    assignRows();
}

void DueModel::setSpan(const QString &span)
{
    m_filter.span = spanOf(span);
    assignRows();
}

QString DueModel::order() const
{
    return m_filter.byConcern ? QStringLiteral("concern") : QStringLiteral("date");
}

void DueModel::setOrder(const QString &order)
{
    m_filter.byConcern = order == QStringLiteral("concern");
    assignRows();
}

QVariantList DueModel::zones() const
{
    QVariantList list;
    std::set<QString> seen;
    for (const DueRow &row : m_all) {
        if (!row.zoneSlug.isEmpty() && seen.insert(row.zoneSlug).second)
            list << QVariantMap{{QStringLiteral("slug"), row.zoneSlug}, {QStringLiteral("name"), row.zone}};
    }
    return list;
}

QString DueModel::moved() const
{
    int sooner = 0;
    const DueShift *most = nullptr;
    QString title;
    for (const DueRow &row : m_all) {
        const auto found = m_shifts.find(row.key.toStdString());
        if (found == m_shifts.end() || std::isnan(row.nominal))
            continue;
        const double days = daysMoved(found->second);
        sooner += isMoved(days) && days < 0.0 ? 1 : 0;
        if (most == nullptr || days < daysMoved(*most)) {
            most = &found->second;
            title = row.title;
        }
    }
    if (sooner == 0)
        return {};
    return tr("%n point(s) are due sooner than by the catalogue alone.", nullptr, sooner) + u' ' +
           tr("Moved most: %1, %2.", "point, 1.3 months sooner: causes")
               .arg(title, shiftShort(*m_shown.voice, *most));
}

QString DueModel::sentence() const
{
    if (m_shown.history() == nullptr)
        return {};
    int past = 0;
    int soon = 0;
    int never = 0;
    for (const DueRow &row : m_all) {
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

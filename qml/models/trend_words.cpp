// SPDX-License-Identifier: Apache-2.0
// From a trend to a plot and a sentence.
#include "trend_words.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "trend_axis.hpp"

namespace snugwalk {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double daysAYear = 365.25;
constexpr double roomAtTheSides = 0.04; ///< of the span, before the first dot and after the last
constexpr double roomAboveAndBelow = 0.12;

class TrendReader {
    Q_DECLARE_TR_FUNCTIONS(Trend)
public:
    TrendReader(const Voice &voice, const Trend &trend, CivilDate today)
        : m_voice(voice), m_trend(trend), m_today(today), m_unit(unitOf(trend))
    {}
    QVariantMap read();

private:
    struct Spot {
        double day;
        double value;
    };

    static std::string unitOf(const Trend &trend);
    [[nodiscard]] double shown(double si) const;
    [[nodiscard]] QString words(double si) const { return m_voice.inUnit(m_trend.dimension, si, m_unit); }
    [[nodiscard]] double day(const std::optional<CivilDate> &date) const
    {
        return date ? static_cast<double>(daysBetween(m_today, *date)) : nan;
    }
    [[nodiscard]] QVariantList spots(const std::vector<TrendPoint> &points) const;
    [[nodiscard]] QVariantList limits() const;
    [[nodiscard]] QVariantList line(double lastDay) const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString slope() const;
    [[nodiscard]] QString crossing() const;
    [[nodiscard]] QString sentence() const;
    void addAxes(QVariantMap &map) const;

    const Voice &m_voice;
    const Trend &m_trend;
    const CivilDate m_today;
    const std::string m_unit;
};

std::string TrendReader::unitOf(const Trend &trend)
{
    if (!trend.points.empty())
        return trend.points.back().unit;
    return trend.before.empty() ? std::string() : trend.before.back().unit;
}

// In the unit of the last reading; a unit that nobody knows any more is told in SI.
double TrendReader::shown(double si) const
{
    const auto unit = findUnit(m_trend.dimension, m_unit);
    return unit ? fromSi(*unit, si) : si;
}

QVariantList TrendReader::spots(const std::vector<TrendPoint> &points) const
{
    QVariantList list;
    for (const TrendPoint &point : points)
        list << QVariantMap{{QStringLiteral("day"), day(civilDate(point.at))},
                            {QStringLiteral("value"), shown(point.si)},
                            {QStringLiteral("leftOut"), point.leftOut},
                            {QStringLiteral("date"), m_voice.date(point.at)},
                            {QStringLiteral("text"), words(point.si)}};
    return list;
}

QVariantList TrendReader::limits() const
{
    QVariantList list;
    const auto add = [&](double si, const QString &text) {
        list << QVariantMap{{QStringLiteral("value"), shown(si)}, {QStringLiteral("text"), text}};
    };
    if (m_trend.lowSi)
        add(*m_trend.lowSi, tr("at least %1").arg(words(*m_trend.lowSi)));
    if (m_trend.highSi)
        add(*m_trend.highSi, tr("at most %1").arg(words(*m_trend.highSi)));
    return list;
}

// Least squares runs through the middle of the readings it was made from.
QVariantList TrendReader::line(double lastDay) const
{
    double days = 0.0;
    double si = 0.0;
    int count = 0;
    double first = nan;
    for (const TrendPoint &point : m_trend.points) {
        if (point.leftOut)
            continue;
        const double at = day(civilDate(point.at));
        first = count == 0 ? at : first;
        days += at;
        si += point.si;
        ++count;
    }
    if (!m_trend.perYearSi || count < 2)
        return {};
    const auto spot = [&](double at) {
        const double value = si / count + *m_trend.perYearSi * (at - days / count) / daysAYear;
        return QVariantMap{{QStringLiteral("day"), at}, {QStringLiteral("value"), shown(value)}};
    };
    const double likely = day(m_trend.likely);
    return {spot(first), spot(std::isnan(likely) ? std::min(lastDay, std::max(0.0, first)) : likely)};
}

QString TrendReader::title() const
{
    const QString name = m_voice.word("readings", m_trend.reading);
    return m_trend.place.empty() ? name
                                 : tr("%1, %2", "reading, place").arg(name, m_voice.placeName(m_trend.place));
}

QString TrendReader::slope() const
{
    if (!m_trend.perYearSi)
        return {};
    const double size = std::abs(*m_trend.perYearSi);
    const auto unit = findUnit(m_trend.dimension, m_unit);
    // a rate has no zero of its own: degrees and the like are told without their offset
    const double rate = unit ? size / unit->factor : size;
    const QString words = m_voice.number(rate, rate < 10.0 ? 2 : 0) + QChar(0x00a0) +
                          (unit ? Voice::text(unit->symbol) : QString());
    return *m_trend.perYearSi < 0.0 ? tr("%1 less a year.").arg(words) : tr("%1 more a year.").arg(words);
}

QString TrendReader::crossing() const
{
    if (m_trend.likely && m_trend.early && m_trend.late)
        return tr("Likely to meet the limit about %1, from %2 to %3.")
            .arg(m_voice.date(*m_trend.likely), m_voice.date(*m_trend.early), m_voice.date(*m_trend.late));
    if (m_trend.note == "no_limit")
        return tr("There is no limit to hold it against.");
    if (m_trend.note == "too_few")
        return tr("Too few readings for a line: three are wanted.");
    if (m_trend.note == "past_limit")
        return tr("The last reading is past the limit.");
    if (m_trend.note == "not_toward_limit")
        return tr("It does not move toward the limit.");
    if (m_trend.note == "far_off")
        return tr("The limit is more than thirty years off by these readings; that says little.");
    if (m_trend.note == "ask")
        return tr("It grew back. Was it replaced? Write the mend down.");
    return m_trend.note.empty() ? QString() : tr("The readings do not tell when it meets the limit.");
}

QString TrendReader::sentence() const
{
    QStringList parts;
    if (!m_trend.points.empty())
        parts << tr("%1 on %2.", "reading, date")
                     .arg(words(m_trend.points.back().si), m_voice.date(m_trend.points.back().at));
    parts << slope() << crossing();
    if (std::any_of(m_trend.points.begin(), m_trend.points.end(), [](const auto &p) { return p.leftOut; }))
        parts << tr("The square lies far off and is left out.");
    if (!m_trend.before.empty())
        parts << tr("Open dots: before it was replaced.");
    parts.removeAll(QString());
    return parts.join(u' ');
}

void TrendReader::addAxes(QVariantMap &map) const
{
    double firstDay = 0.0;
    double lastDay = 0.0;
    double least = std::numeric_limits<double>::max();
    double most = std::numeric_limits<double>::lowest();
    const auto value = [&](double si) {
        least = std::min(least, shown(si));
        most = std::max(most, shown(si));
    };
    for (const auto *points : {&m_trend.before, &m_trend.points}) {
        for (const TrendPoint &point : *points) {
            firstDay = std::min(firstDay, day(civilDate(point.at)));
            value(point.si);
        }
    }
    for (const auto &limit : {m_trend.lowSi, m_trend.highSi}) {
        if (limit)
            value(*limit);
    }
    for (const auto &date : {m_trend.likely, m_trend.late})
        lastDay = date ? std::max(lastDay, day(date)) : lastDay;
    const double sides = std::max(7.0, (lastDay - firstDay) * roomAtTheSides);
    const double room =
        most > least ? (most - least) * roomAboveAndBelow : std::max(1e-9, std::abs(most) * 0.1);
    firstDay -= sides;
    lastDay += sides;
    least -= room;
    most += room;
    QVariantList ticks;
    const auto unit = findUnit(m_trend.dimension, m_unit);
    for (const double step : roundSteps(least, most))
        ticks << QVariantMap{{QStringLiteral("value"), step},
                             {QStringLiteral("text"), words(unit ? toSi(*unit, step) : step)}};
    map[QStringLiteral("firstDay")] = firstDay;
    map[QStringLiteral("lastDay")] = lastDay;
    map[QStringLiteral("least")] = least;
    map[QStringLiteral("most")] = most;
    map[QStringLiteral("ticks")] = ticks;
    map[QStringLiteral("dates")] = dateTicks(m_voice, m_today, firstDay, lastDay);
    map[QStringLiteral("line")] = line(lastDay);
}

QVariantMap TrendReader::read()
{
    QVariantMap map{
        {QStringLiteral("title"), title()},
        {QStringLiteral("sentence"), sentence()},
        {QStringLiteral("basis"), m_trend.basis.empty() ? QString() : m_voice.basis(m_trend.basis)},
        {QStringLiteral("points"), spots(m_trend.points)},
        {QStringLiteral("before"), spots(m_trend.before)},
        {QStringLiteral("limits"), limits()},
        {QStringLiteral("low"), m_trend.lowSi ? shown(*m_trend.lowSi) : nan},
        {QStringLiteral("high"), m_trend.highSi ? shown(*m_trend.highSi) : nan},
        {QStringLiteral("early"), day(m_trend.early)},
        {QStringLiteral("likely"), day(m_trend.likely)},
        {QStringLiteral("late"), day(m_trend.late)}};
    map[QStringLiteral("spoken")] = tr("%1, plot: %2", "reading, sentence").arg(title(), sentence());
    addAxes(map);
    return map;
}

} // namespace

QVariantMap trendMap(const Voice &voice, const Trend &trend, CivilDate today)
{
    return TrendReader(voice, trend, today).read();
}

} // namespace snugwalk

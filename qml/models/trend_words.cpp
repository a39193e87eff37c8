// SPDX-License-Identifier: Apache-2.0
// From a trend to sentences.
#include "trend_words.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

class TrendReader {
    Q_DECLARE_TR_FUNCTIONS(Trend)
public:
    TrendReader(const Voice &voice, const Trend &trend)
        : m_voice(voice), m_trend(trend), m_unit(unitOf(trend))
    {}
    QVariantMap read();

private:
    static std::string unitOf(const Trend &trend);
    [[nodiscard]] QString words(double si) const { return m_voice.inUnit(m_trend.dimension, si, m_unit); }
    [[nodiscard]] QVariantList spots(const std::vector<TrendPoint> &points) const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString slope() const;
    [[nodiscard]] QString crossing() const;
    [[nodiscard]] QString sentence() const;

    const Voice &m_voice;
    const Trend &m_trend;
    const std::string m_unit;
};

std::string TrendReader::unitOf(const Trend &trend)
{
    if (!trend.points.empty())
        return trend.points.back().unit;
    return trend.before.empty() ? std::string() : trend.before.back().unit;
}

QVariantList TrendReader::spots(const std::vector<TrendPoint> &points) const
{
    QVariantList list;
    for (const TrendPoint &point : points)
        list << QVariantMap{{QStringLiteral("leftOut"), point.leftOut},
                            {QStringLiteral("date"), m_voice.date(point.at)},
                            {QStringLiteral("text"), words(point.si)}};
    return list;
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

QVariantMap TrendReader::read()
{
    QVariantMap map{
        {QStringLiteral("title"), title()},
        {QStringLiteral("sentence"), sentence()},
        {QStringLiteral("basis"), m_trend.basis.empty() ? QString() : m_voice.basis(m_trend.basis)},
        {QStringLiteral("points"), spots(m_trend.points)},
        {QStringLiteral("before"), spots(m_trend.before)}};
    map[QStringLiteral("spoken")] = tr("%1, plot: %2", "reading, sentence").arg(title(), sentence());
    return map;
}

} // namespace

QVariantMap trendMap(const Voice &voice, const Trend &trend) { return TrendReader(voice, trend).read(); }

} // namespace snugwalk

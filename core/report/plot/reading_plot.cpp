// SPDX-License-Identifier: Apache-2.0
// One reading over all walks.
#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "report/plot/plots.hpp"

namespace snugwalk {
namespace {

constexpr double daysAYear = 365.25;
constexpr double roomAtTheSides = 0.04; ///< of the span, before the first dot and after the last

class ReadingPlotter {
public:
    ReadingPlotter(const Trend &trend, CivilDate today, const PlotVoice &voice)
        : m_trend(trend),
          m_today(plotDay(today)),
          m_voice(voice),
          m_unit(findUnit(trend.dimension, unitRead(trend)))
    {
        m_symbol = m_unit ? std::string(m_unit->symbol) : std::string(siSymbol(trend.dimension));
    }
    Plot make();

private:
    static std::string unitRead(const Trend &trend)
    {
        if (!trend.points.empty())
            return trend.points.back().unit;
        return trend.before.empty() ? std::string() : trend.before.back().unit;
    }
    [[nodiscard]] double shown(double si) const { return m_unit ? fromSi(*m_unit, si) : si; }
    [[nodiscard]] int decimals() const
    {
        return m_trend.dimension == Dimension::Count || m_symbol == "kPa" || m_symbol == "%" ||
                       m_symbol == "mL"
                   ? 0
               : m_symbol == "in" ? 2
                                  : 1;
    }
    [[nodiscard]] std::string words(double si) const
    {
        return m_voice.number(shown(si), decimals()) + (m_symbol.empty() ? "" : "\u00a0" + m_symbol);
    }
    void readings(const std::vector<TrendPoint> &points, bool replaced);
    void limits();
    void meeting();
    void axes();
    [[nodiscard]] std::string title() const;

    const Trend &m_trend;
    const double m_today;
    const PlotVoice &m_voice;
    std::optional<Unit> m_unit;
    std::string m_symbol;
    Plot m_plot;
};

std::string ReadingPlotter::title() const
{
    const std::string point = m_voice.texts.point(m_trend.point).title;
    const std::string reading = m_voice.texts.word("readings", m_trend.reading);
    return point + (reading == point ? "" : ", " + reading) +
           (m_trend.place.empty() ? "" : ", " + m_trend.place);
}

void ReadingPlotter::readings(const std::vector<TrendPoint> &points, bool replaced)
{
    if (points.empty())
        return;
    PlotLine line;
    line.label = replaced ? m_voice.say("before_replaced") : "";
    line.stroke = replaced ? PlotStroke::Thin : PlotStroke::Solid;
    for (const TrendPoint &point : points) {
        const double x = plotDay(civilDate(point.at));
        line.spots.push_back({x, shown(point.si),
                              point.leftOut ? PlotShape::Square
                              : replaced    ? PlotShape::Ring
                                            : PlotShape::Dot});
        const std::string note = replaced        ? m_voice.say("before_replaced")
                                 : point.leftOut ? m_voice.say("left_out")
                                                 : "";
        m_plot.rows.push_back({x,
                               {m_voice.date(civilDate(point.at)), words(point.si), note},
                               {m_trend.point, m_trend.reading, m_trend.place, formatLocal(point.at),
                                plotData(point.si), std::string(siSymbol(m_trend.dimension)), point.unit,
                                replaced        ? "replaced_since"
                                : point.leftOut ? "left_out"
                                                : ""}});
        if (point.leftOut)
            m_plot.keys = {{PlotShape::Square, m_voice.say("left_out")}};
    }
    m_plot.lines.push_back(std::move(line));
}

void ReadingPlotter::limits()
{
    const std::string source =
        m_trend.basis.empty() ? "" : " (" + m_voice.texts.phrase("basis_" + m_trend.basis) + ")";
    if (m_trend.lowSi)
        m_plot.limits.push_back(
            {shown(*m_trend.lowSi), m_voice.texts.phrase("limit_low", {words(*m_trend.lowSi)}) + source});
    if (m_trend.highSi)
        m_plot.limits.push_back(
            {shown(*m_trend.highSi), m_voice.texts.phrase("limit_high", {words(*m_trend.highSi)}) + source});
}

// The line through the readings ends on a limit at its likely day: the limit it moves toward.
void ReadingPlotter::meeting()
{
    if (!m_trend.likely || !m_trend.early || !m_trend.late || m_plot.limits.empty() || !m_trend.perYearSi)
        return;
    double x = 0.0;
    double si = 0.0;
    int count = 0;
    for (const TrendPoint &point : m_trend.points) {
        if (point.leftOut)
            continue;
        x += plotDay(civilDate(point.at));
        si += point.si;
        ++count;
    }
    const bool falls = *m_trend.perYearSi < 0.0;
    const auto &limit = falls ? m_trend.lowSi : m_trend.highSi;
    if (!limit || count < 2)
        return;
    const TrendPoint &last = m_trend.points.back();
    const double from = plotDay(civilDate(last.at));
    const double there = si / count + *m_trend.perYearSi * (from - x / count) / daysAYear;
    const double early = plotDay(*m_trend.early);
    const double late = plotDay(*m_trend.late);
    m_plot.meeting = PlotMeeting{from,
                                 shown(there),
                                 early,
                                 plotDay(*m_trend.likely),
                                 late,
                                 shown(*limit),
                                 m_voice.say("likely", {m_voice.shortMonthOfYear(*m_trend.likely)})};
    // the corner between the way to the early day and the way to the late one
    const double at = shown(there);
    const double end = shown(*limit);
    const double onTheWay = late > from ? at + (end - at) * (early - from) / (late - from) : end;
    m_plot.bands.push_back({{{from, at, at}, {early, end, onTheWay}, {late, end, end}}});
}

void ReadingPlotter::axes()
{
    double first = m_today;
    double last = m_today;
    double least = 1e300;
    double most = -1e300;
    for (const PlotLine &line : m_plot.lines) {
        for (const PlotSpot &spot : line.spots) {
            first = std::min(first, spot.x);
            last = std::max(last, spot.x);
            least = std::min(least, spot.y);
            most = std::max(most, spot.y);
        }
    }
    for (const PlotLimit &limit : m_plot.limits) {
        least = std::min(least, limit.y);
        most = std::max(most, limit.y);
    }
    if (m_plot.meeting)
        last = std::max(last, m_plot.meeting->late);
    const double side = std::max(7.0, (last - first) * roomAtTheSides);
    m_plot.across = m_voice.dateAxis(first - side, last + side);
    const double room = most > least ? (most - least) * 0.08 : std::max(0.5, std::abs(most) * 0.1);
    m_plot.up = m_voice.numberAxis(
        m_symbol.empty()
            ? m_voice.texts.word("readings", m_trend.reading)
            : m_voice.say("reading_up", {m_voice.texts.word("readings", m_trend.reading), m_symbol}),
        least - room, most + room);
}

Plot ReadingPlotter::make()
{
    m_plot.slug = m_trend.reading.empty() ? "reading" : m_trend.reading;
    m_plot.title = title();
    m_plot.head = {m_voice.say("col_date"), m_voice.say("col_reading"), m_voice.say("col_note")};
    m_plot.dataHead = {"point", "reading", "place", "at", "value", "unit", "read_in", "note"};
    readings(m_trend.before, true);
    readings(m_trend.points, false);
    if (m_plot.rows.empty()) {
        m_plot.empty = m_voice.say("empty_reading");
        return m_plot;
    }
    limits();
    meeting();
    axes();
    m_plot.upright = PlotTick{m_today, m_voice.say("today")};
    const PlotRow &last = m_plot.rows.back();
    m_plot.about =
        m_voice.say("reading_about", {std::to_string(m_plot.rows.size()), last.cells[1], last.cells[0]});
    if (m_plot.meeting)
        m_plot.about +=
            " " + m_voice.say("meets", {m_voice.date(*m_trend.early), m_voice.date(*m_trend.likely),
                                        m_voice.date(*m_trend.late)});
    else if (!m_trend.note.empty())
        m_plot.notes.push_back(m_voice.texts.phrase("trend_" + m_trend.note));
    return m_plot;
}

} // namespace

Plot readingPlot(const Trend &trend, CivilDate today, const PlotVoice &voice)
{
    return ReadingPlotter(trend, today, voice).make();
}

Plot noReadingPlot(const PlotVoice &voice)
{
    Plot plot;
    plot.slug = "reading";
    plot.title = plotTitle(PlotKind::Reading, voice.texts);
    plot.empty = voice.say("empty_reading");
    return plot;
}

} // namespace snugwalk

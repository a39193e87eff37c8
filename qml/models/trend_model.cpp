// SPDX-License-Identifier: Apache-2.0
// Asking for trends, and telling them again in another language.
#include "trend_model.hpp"

#include <algorithm>

#include "due_words.hpp"
#include "plot_picture.hpp"
#include "report/plot/plot_ask.hpp"
#include "trend_words.hpp"

namespace snugwalk {
namespace {

// What has a limit to be held against comes before what only goes with it, such as the air's temperature.
std::vector<Trend> limitsFirst(std::vector<Trend> trends)
{
    std::stable_partition(trends.begin(), trends.end(),
                          [](const Trend &trend) { return trend.lowSi || trend.highSi; });
    return trends;
}

} // namespace

const DueBand *TrendModel::band() const
{
    const std::vector<DueBand> &bands = m_shown.snapshot->bands;
    const auto found =
        std::find_if(bands.begin(), bands.end(), [&](const DueBand &b) { return b.point == m_point; });
    return found == bands.end() ? nullptr : &*found;
}

QString TrendModel::title() const { return m_point.empty() ? QString() : m_shown.voice->point(m_point); }

QString TrendModel::when() const
{
    return band() == nullptr ? QString() : dueWhen(*m_shown.voice, *band(), civilDate(m_shown.snapshot->now));
}

QStringList TrendModel::why() const
{
    return band() == nullptr ? QStringList() : dueWhy(*m_shown.voice, *band());
}

void TrendModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    m_rows.clear();
    for (const Trend &trend : m_trends)
        m_rows << trendMap(*shown.voice, trend);
    Q_EMIT changed();
    if (isNew && !m_point.empty())
        open(Voice::text(m_point));
}

QVariantMap TrendModel::picture(int row, double width, double height, double letter, double stroke,
                                const QString &family) const
{
    if (row < 0 || row >= static_cast<int>(m_trends.size()))
        return {};
    const Plot plot = readingPlot(m_trends[static_cast<std::size_t>(row)], civilDate(m_shown.snapshot->now),
                                  screenVoice(*m_shown.voice));
    return plotPicture(plot, {width, height, letter, stroke, family});
}

void TrendModel::open(const QString &point)
{
    const RigHistory *history = m_shown.history();
    if (history == nullptr)
        return;
    m_point = point.isEmpty() ? mostReadPoint(*history) : point.toStdString();
    m_trends.clear();
    m_rows.clear();
    ++m_waiting;
    Q_EMIT changed();
    const auto act = [snapshot = m_shown.snapshot, slug = m_point](Logbook &) {
        return Result<std::vector<Trend>>(
            trendsOf(*snapshot->catalogue, *snapshot->history, slug, snapshot->now));
    };
    m_desk->worker->run<std::vector<Trend>>(this, act,
                                            [this, asked = m_point](Result<std::vector<Trend>> trends) {
                                                --m_waiting;
                                                if (asked == m_point && trends)
                                                    m_trends = limitsFirst(std::move(trends).value());
                                                show(m_shown);
                                            });
}

} // namespace snugwalk

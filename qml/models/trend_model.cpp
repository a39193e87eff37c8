// SPDX-License-Identifier: Apache-2.0
// Asking for trends, and telling them again in another language.
#include "trend_model.hpp"

#include <algorithm>
#include <map>

#include "due_words.hpp"
#include "trend_words.hpp"

namespace snugwalk {
namespace {

std::string mostRead(const RigHistory &history)
{
    std::map<std::string, std::size_t> counts;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks)
            counts[mark.point] += mark.readings.size();
    }
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto &a, const auto &b) { return a.second < b.second; });
    return most == counts.end() ? std::string() : most->first;
}

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
        m_rows << trendMap(*shown.voice, trend, civilDate(shown.snapshot->now));
    Q_EMIT changed();
    if (isNew && !m_point.empty())
        open(Voice::text(m_point));
}

void TrendModel::open(const QString &point)
{
    const RigHistory *history = m_shown.history();
    if (history == nullptr)
        return;
    m_point = point.isEmpty() ? mostRead(*history) : point.toStdString();
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

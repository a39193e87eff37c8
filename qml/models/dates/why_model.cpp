// SPDX-License-Identifier: Apache-2.0
// Asking for the parts of a date, and telling them again in another language.
#include "why_model.hpp"

#include <algorithm>

#include "due_words.hpp"
#include "shift_words.hpp"
#include "why_facts.hpp"
#include "why_picture.hpp"

namespace snugwalk {
namespace {

// Where nobody chose: the first point that was looked at and has a date.
std::string firstDated(const std::vector<DueBand> &bands)
{
    const auto found = std::find_if(bands.begin(), bands.end(), [](const DueBand &band) {
        return band.everLooked && (band.rule == "months" || band.rule == "distance");
    });
    return found == bands.end() ? std::string() : found->point;
}

} // namespace

const DueBand *WhyModel::band() const { return findBand(m_shown.snapshot->bands, m_point); }

QString WhyModel::title() const { return m_point.empty() ? QString() : m_shown.voice->point(m_point); }

QString WhyModel::when() const
{
    return band() == nullptr ? QString() : dueWhen(*m_shown.voice, *band(), civilDate(m_shown.snapshot->now));
}

QString WhyModel::bandText() const
{
    const DueBand *due = band();
    if (due == nullptr || !due->likely || !due->early || !due->late)
        return {};
    const Voice &voice = *m_shown.voice;
    return tr("early %1, likely %2, late %3", "dates")
        .arg(voice.date(*due->early), voice.date(*due->likely), voice.date(*due->late));
}

QString WhyModel::sentence() const
{
    if (band() == nullptr || (!m_shift && isBusy()))
        return {};
    return shiftSentence(*m_shown.voice, *band(), m_shift);
}

QString WhyModel::aged() const { return m_shift ? agedSentence(*m_shown.voice, *m_shift) : QString(); }

QVariantMap WhyModel::picture() const
{
    if (!m_shift || band() == nullptr)
        return {};
    return whyPicture(*m_shown.voice, *band(), *m_shift, civilDate(m_shown.snapshot->now));
}

QStringList WhyModel::reasons() const
{
    return band() == nullptr ? QStringList() : dueWhy(*m_shown.voice, *band());
}

QVariantList WhyModel::facts() const
{
    return band() == nullptr ? QVariantList() : whyFacts(m_shown, catalogue(), *band());
}

QVariantList WhyModel::looks() const { return lastLooks(m_shown, m_point); }

QStringList WhyModel::sources() const { return sourceTitles(catalogue(), m_point); }

QStringList WhyModel::weather() const
{
    QStringList list;
    if (m_shown.history() == nullptr || !m_shift)
        return list;
    for (const std::string &note : m_shown.history()->weathering.notes)
        list << Voice::text(m_shown.voice->texts.phrase("weather_" + note));
    return list;
}

bool WhyModel::isRead() const
{
    return m_shown.history() != nullptr && hasReadings(*m_shown.history(), m_point);
}

void WhyModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    Q_EMIT changed();
    if (isNew && !m_point.empty())
        open(Voice::text(m_point));
}

void WhyModel::open(const QString &point)
{
    if (m_shown.history() == nullptr)
        return;
    const std::string before = m_point;
    m_point = point.isEmpty() ? firstDated(m_shown.snapshot->bands) : point.toStdString();
    if (m_point != before)
        m_shift.reset();
    ++m_waiting;
    Q_EMIT changed();
    using Parts = std::optional<DueShift>;
    const auto act = [snapshot = m_shown.snapshot, slug = m_point](Logbook &) {
        const DueBand *due = findBand(snapshot->bands, slug);
        if (due == nullptr)
            return Result<Parts>(Parts());
        return Result<Parts>(shiftOf(*snapshot->catalogue, *snapshot->history, snapshot->now, *due));
    };
    m_desk->worker->run<Parts>(this, act, [this, asked = m_point](Result<Parts> parts) {
        --m_waiting;
        if (asked == m_point)
            m_shift = parts ? std::move(parts).value() : std::nullopt;
        Q_EMIT changed();
    });
}

} // namespace snugwalk

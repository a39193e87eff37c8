// SPDX-License-Identifier: Apache-2.0
// Collecting legs, and asking the worker what they move.
#include "what_if_model.hpp"

#include <algorithm>

#include "shift_words.hpp"

namespace snugwalk {
namespace {

constexpr int offeredDays = 30;

} // namespace

CivilDate WhatIfModel::nextDay() const
{
    const CivilDate today = civilDate(m_shown.snapshot->now);
    return m_legs.empty() ? today : std::max(today, addDays(m_legs.back().until, 1));
}

QString WhatIfModel::firstDay() const { return Voice::text(formatDate(nextDay())); }

QString WhatIfModel::lastDay() const { return Voice::text(formatDate(addDays(nextDay(), offeredDays))); }

QVariantList WhatIfModel::legs() const
{
    QVariantList list;
    const Voice &voice = *m_shown.voice;
    for (const PlanLeg &leg : m_legs) {
        const QString place = leg.name.empty() ? voice.position(leg.place) : Voice::text(leg.name);
        QStringList parts{tr("%1 to %2", "dates").arg(voice.date(leg.from), voice.date(leg.until)),
                          leg.covered ? tr("under a roof") : tr("in the open")};
        if (leg.distance > Distance())
            parts << tr("%1 driven, road: %2").arg(voice.quantity(leg.distance), roadWords(leg.road));
        list << QVariantMap{{QStringLiteral("title"), place},
                            {QStringLiteral("text"), parts.join(QStringLiteral("; "))}};
    }
    return list;
}

QString WhatIfModel::sentence() const
{
    if (m_legs.empty() || isBusy())
        return {};
    const auto sooner = static_cast<int>(
        std::count_if(m_moved.begin(), m_moved.end(), [](const MovedDate &m) { return m.days() < 0.0; }));
    const int later = static_cast<int>(m_moved.size()) - sooner;
    if (m_moved.empty())
        return tr("No date moves.");
    QStringList parts;
    if (sooner > 0)
        parts << tr("%n date(s) come sooner.", nullptr, sooner);
    if (later > 0)
        parts << tr("%n date(s) go later.", nullptr, later);
    return parts.join(u' ');
}

QVariantList WhatIfModel::rows() const
{
    QVariantList list;
    const Voice &voice = *m_shown.voice;
    for (const MovedDate &moved : m_moved) {
        QString by = isMoved(moved.days()) ? movedText(voice, moved.days())
                     : moved.days() < 0.0  ? tr("a day sooner")
                                           : tr("a day later");
        if (!moved.cause.empty())
            by = tr("%1: %2", "1.3 months sooner, cause").arg(by, causeText(voice, moved.cause));
        list << QVariantMap{
            {QStringLiteral("point"), Voice::text(moved.point)},
            {QStringLiteral("title"), voice.point(moved.point)},
            {QStringLiteral("dates"),
             tr("%1, as usual %2", "dates").arg(voice.date(moved.after), voice.date(moved.before))},
            {QStringLiteral("moved"), by}};
    }
    return list;
}

void WhatIfModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    Q_EMIT changed();
    if (isNew && !m_legs.empty())
        run();
}

bool WhatIfModel::addLeg(const QVariantMap &map)
{
    LegForm form = readLeg(m_shown.voice->plainTexts(map, {QStringLiteral("distance")}), knownPlaces(m_shown),
                           m_shown.voice->units);
    m_problems = form.problems;
    if (form.leg) {
        const auto overlaps = [&](const PlanLeg &leg) {
            return leg.from <= form.leg->until && form.leg->from <= leg.until;
        };
        if (std::any_of(m_legs.begin(), m_legs.end(), overlaps)) {
            m_problems << QVariantMap{
                {QStringLiteral("field"), QStringLiteral("from")},
                {QStringLiteral("what"), tr("Another leg has some of these days.")},
                {QStringLiteral("act"), tr("Change the days, or take the other leg away.")}};
            form.leg.reset();
        }
    }
    if (!form.leg) {
        Q_EMIT changed();
        return false;
    }
    m_legs.push_back(std::move(*form.leg));
    std::stable_sort(m_legs.begin(), m_legs.end(),
                     [](const PlanLeg &a, const PlanLeg &b) { return a.from < b.from; });
    run();
    return true;
}

void WhatIfModel::removeLeg(int at)
{
    if (at < 0 || at >= static_cast<int>(m_legs.size()))
        return;
    m_legs.erase(m_legs.begin() + at);
    run();
}

void WhatIfModel::run()
{
    m_moved.clear();
    if (m_legs.empty() || m_shown.history() == nullptr) {
        Q_EMIT changed();
        return;
    }
    ++m_waiting;
    Q_EMIT changed();
    using Moved = std::vector<MovedDate>;
    const auto act = [snapshot = m_shown.snapshot, legs = m_legs](Logbook &) {
        return Result<Moved>(whatMoves(*snapshot, legs));
    };
    m_desk->worker->run<Moved>(this, act, [this, asked = m_legs](Result<Moved> moved) {
        --m_waiting;
        if (moved && asked == m_legs)
            m_moved = std::move(moved).value();
        Q_EMIT changed();
    });
}

} // namespace snugwalk

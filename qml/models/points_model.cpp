// SPDX-License-Identifier: Apache-2.0
// Listing the points, and writing what the owner chooses.
#include "points_model.hpp"

#include <algorithm>
#include <set>

#include "catalogue/pick.hpp"
#include "logbook/own_points.hpp"
#include "point_words.hpp"

namespace snugwalk {

PointRowModel::PointRowModel(QObject *parent)
    : RowModel({{"point", [](const PointEntry &r) { return QVariant(r.key); }},
                {"title", [](const PointEntry &r) { return QVariant(r.title); }},
                {"zone", [](const PointEntry &r) { return QVariant(r.zone); }},
                {"every", [](const PointEntry &r) { return QVariant(r.every); }},
                {"note", [](const PointEntry &r) { return QVariant(r.note); }},
                {"isHidden", [](const PointEntry &r) { return QVariant(r.isHidden); }},
                {"isOwn", [](const PointEntry &r) { return QVariant(r.isOwn); }},
                {"hasOwnInterval", [](const PointEntry &r) { return QVariant(r.hasOwnInterval); }}},
               parent)
{}

PointsModel::PointsModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_rows(nullptr)
{}

std::vector<PointEntry> PointsModel::entries() const
{
    std::vector<PointEntry> list;
    const RigHistory *history = m_shown.history();
    if (history == nullptr)
        return list;
    for (const Point &point : catalogue().points()) {
        if (!isOnRig(point, history->rig))
            continue;
        PointEntry entry = pointEntry(*m_shown.voice, point, *m_desk->parts->catalogue, history->own);
        const bool wanted = m_words.isEmpty() || entry.title.contains(m_words, Qt::CaseInsensitive) ||
                            entry.zone.contains(m_words, Qt::CaseInsensitive);
        if (wanted)
            list.push_back(std::move(entry));
    }
    std::stable_sort(list.begin(), list.end(),
                     [](const PointEntry &a, const PointEntry &b) { return a.zone < b.zone; });
    return list;
}

void PointsModel::show(const Shown &shown)
{
    m_shown = shown;
    // Nobody sees the list until its page asks for it.
    if (m_rows.rowCount() > 0)
        m_rows.assign(entries());
    Q_EMIT changed();
}

void PointsModel::filter(const QString &words)
{
    m_words = words.trimmed();
    m_rows.assign(entries());
    Q_EMIT changed();
}

QString PointsModel::sentence() const
{
    const RigHistory *history = m_shown.history();
    if (history == nullptr)
        return {};
    int points = 0;
    for (const Point &point : catalogue().points())
        points += isOnRig(point, history->rig) ? 1 : 0;
    QStringList parts{tr("%n point(s)", "of a rig", points)};
    if (!history->own.added.empty())
        parts << tr("%n of your own", "points", static_cast<int>(history->own.added.size()));
    if (!history->own.hidden.empty())
        parts << tr("%n hidden", "points", static_cast<int>(history->own.hidden.size()));
    if (!history->own.every.empty())
        parts << tr("%n at an interval of your own", "points", static_cast<int>(history->own.every.size()));
    return parts.join(QStringLiteral(", "));
}

QVariantList PointsModel::stands() const
{
    QVariantList list;
    for (const std::string &stand : catalogue().route("lap"))
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(stand)},
                            {QStringLiteral("name"), Voice::text(m_shown.voice->texts.standName(stand))}};
    return list;
}

QVariantList PointsModel::zones() const
{
    QVariantList list;
    std::set<std::string> seen;
    for (const Point &point : catalogue().points()) {
        if (seen.insert(point.zone).second)
            list << QVariantMap{{QStringLiteral("slug"), Voice::text(point.zone)},
                                {QStringLiteral("name"), m_shown.voice->word("zones", point.zone)}};
    }
    return list;
}

QVariantList PointsModel::consequences() const { return consequenceChoices(); }

template <typename Act>
void PointsModel::run(Act act)
{
    m_desk->worker->run<std::monostate>(this, std::move(act), [this](Status done) {
        if (!done)
            m_desk->refuse(done.error());
        m_desk->changed(true);
    });
}

void PointsModel::hide(const QString &point)
{
    if (m_shown.history() == nullptr)
        return;
    run([snapshot = m_shown.snapshot, rig = m_shown.history()->rig.id, slug = point.toStdString(),
         doer = m_desk->doer()](Logbook &book) {
        return hidePoint(book, *snapshot->catalogue, rig, slug, {}, doer);
    });
}

void PointsModel::showAgain(const QString &point)
{
    if (m_shown.history() == nullptr)
        return;
    run([snapshot = m_shown.snapshot, rig = m_shown.history()->rig.id, slug = point.toStdString(),
         doer = m_desk->doer()](Logbook &book) {
        return showPoint(book, *snapshot->catalogue, rig, slug, doer);
    });
}

void PointsModel::setEvery(const QString &point, const QString &months, const QString &distance)
{
    const Result<Interval> interval = readInterval(months, distance, *m_shown.voice);
    if (!interval) {
        m_desk->refuse(interval.error());
        return;
    }
    if (m_shown.history() == nullptr)
        return;
    OwnInterval every;
    every.point = point.toStdString();
    every.months = interval->months;
    every.distance = interval->distance;
    run([product = m_desk->parts->catalogue, rig = m_shown.history()->rig.id, every,
         doer = m_desk->doer()](Logbook &book) { return setOwnInterval(book, *product, rig, every, doer); });
}

void PointsModel::clearEvery(const QString &point)
{
    if (m_shown.history() == nullptr)
        return;
    run([rig = m_shown.history()->rig.id, slug = point.toStdString(), doer = m_desk->doer()](Logbook &book) {
        return clearOwnInterval(book, rig, slug, doer);
    });
}

void PointsModel::add(const QVariantMap &map)
{
    const auto text = [&](const char *key) { return map.value(QLatin1String(key)).toString().trimmed(); };
    const Result<Interval> interval = readInterval(text("months"), text("distance"), *m_shown.voice);
    if (!interval) {
        m_desk->refuse(interval.error());
        return;
    }
    if (m_shown.history() == nullptr)
        return;
    OwnPoint own;
    own.title = text("title").toStdString();
    own.look = text("look").toStdString();
    own.pass = text("pass").toStdString();
    own.stand = text("stand").toStdString();
    own.zone = text("zone").toStdString();
    own.consequence = {text("consequence").toStdString()};
    own.interval = *interval;
    const auto act = [snapshot = m_shown.snapshot, rig = m_shown.history()->rig.id, own,
                      doer = m_desk->doer()](Logbook &book) {
        return addOwnPoint(book, *snapshot->catalogue, rig, own, doer);
    };
    m_desk->worker->run<std::string>(this, act, [this](Result<std::string> slug) {
        if (!slug) {
            m_desk->refuse(slug.error());
            return;
        }
        Q_EMIT added();
        m_desk->changed(true);
    });
}

} // namespace snugwalk

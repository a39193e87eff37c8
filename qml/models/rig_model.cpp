// SPDX-License-Identifier: Apache-2.0
// The home's values.
#include "rig_model.hpp"

#include <algorithm>
#include <limits>

#include "base/text.hpp"
#include "drawn_rig.hpp"
#include "finding_detail.hpp"
#include "rig/names.hpp"
#include "rig/usual_fittings.hpp"
#include "rig_form.hpp"
#include "rig_words.hpp"
#include "round/accept.hpp"
#include "start/rig_draft.hpp"
#include "state_figures.hpp"
#include "walk/mend_part.hpp"
#include "walk_model.hpp"

namespace snugwalk {

RigModel::RigModel(const ActDesk *desk, const WalkModel *walk, QObject *parent)
    : QObject(parent), m_desk(desk), m_walk(walk), m_findings(nullptr)
{
    connect(walk, &WalkModel::activeChanged, this, &RigModel::barChanged);
    connect(walk, &WalkModel::currentChanged, this, &RigModel::barChanged);
    connect(walk, &WalkModel::progressChanged, this, &RigModel::barChanged);
}

const Rig *RigModel::rig() const { return m_shown.history() == nullptr ? nullptr : &m_shown.history()->rig; }

QString RigModel::name() const { return rig() == nullptr ? QString() : Voice::text(rig()->name); }
QString RigModel::about() const { return aboutWords(m_shown); }
QString RigModel::state() const { return stateSentence(m_shown); }
QVariantList RigModel::holds() const { return holdList(m_shown); }
QVariantList RigModel::figures() const { return stateFigures(m_shown); }
QStringList RigModel::hiddenPoints() const { return hiddenInSightWords(m_shown, *m_desk->parts->catalogue); }

QStringList RigModel::usualFittings(const QString &kind, const QString &practice) const
{
    QStringList list;
    const auto knownKind = parseChoice<RigKind>(kind.toStdString());
    const auto knownPractice = parseChoice<Practice>(practice.toStdString());
    if (!knownKind || !knownPractice)
        return list;
    for (const std::string &fitting : snugwalk::usualFittings(*knownKind, *knownPractice))
        list << Voice::text(fitting);
    return list;
}

double RigModel::metres(const QString &typed) const
{
    const bool us = m_shown.voice->units == UnitSystem::Us;
    const Result<double> si =
        m_shown.voice->typed(Dimension::Length, typed, findUnit(Dimension::Length, us ? "ft" : "m"));
    return si ? *si : std::numeric_limits<double>::quiet_NaN();
}

void RigModel::setBudget(int minutes)
{
    m_budget = minutes;
    m_fitted.clear();
    Q_EMIT changed();
    if (minutes <= 0 || m_shown.history() == nullptr)
        return;
    ++m_fitting;
    const auto act = [snapshot = m_shown.snapshot, minutes](Logbook &) {
        return Result<std::vector<FittedKind>>(fitKinds(*snapshot, minutes));
    };
    m_desk->worker->run<std::vector<FittedKind>>(this, act,
                                                 [this, minutes](Result<std::vector<FittedKind>> fitted) {
                                                     --m_fitting;
                                                     if (fitted && minutes == m_budget)
                                                         m_fitted = std::move(fitted).value();
                                                     Q_EMIT changed();
                                                 });
}

QVariantList RigModel::fittingChoices() const
{
    QVariantList list;
    for (const std::string &fitting : knownFittings())
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(fitting)},
                            {QStringLiteral("name"), m_shown.voice->word("fittings", fitting)}};
    const auto name = [](const QVariant &entry) {
        return entry.toMap().value(QStringLiteral("name")).toString();
    };
    std::sort(list.begin(), list.end(), [&](const QVariant &a, const QVariant &b) {
        return m_shown.voice->locale.toLower(name(a)).localeAwareCompare(
                   m_shown.voice->locale.toLower(name(b))) < 0;
    });
    return list;
}

bool RigModel::kerbLeft() const { return rig() != nullptr && kerbIsLeft(*rig()); }

QStringList RigModel::placeNames() const
{
    QStringList names;
    if (rig() == nullptr)
        return names;
    for (const std::string &wheel : wheelNames(*rig()))
        names << Voice::text(wheel);
    for (const Opening &opening : rig()->openings)
        names << Voice::text(opening.name);
    return names;
}

QVariantMap RigModel::drawn() const { return rig() == nullptr ? QVariantMap() : drawnRig(*rig()); }

QVariantMap RigModel::draft(const QVariantMap &map, bool own) const
{
    return draftOfForm(map, own ? rig() : nullptr, *m_shown.voice);
}

QVariantMap RigModel::formTexts() const
{
    return rig() == nullptr ? QVariantMap() : rigFormTexts(*rig(), *m_shown.voice);
}

QVariantList RigModel::kinds() const
{
    QVariantList list = fittedKinds(*m_shown.voice, m_kinds, m_fitted);
    if (!m_firstLook || m_budget > 0)
        return list;
    for (QVariant &entry : list) { // one kind at a time is the likely one
        QVariantMap kind = entry.toMap();
        kind[QStringLiteral("suggested")] = false;
        entry = kind;
    }
    list.prepend(firstLookKind(*m_firstLook));
    return list;
}

// On the worker, for the best set of lines takes longer than a frame.
void RigModel::findFirstLook()
{
    if (!wantsFirstLook(m_shown)) {
        m_firstLook.reset();
        return;
    }
    ++m_fitting;
    const auto act = [snapshot = m_shown.snapshot](Logbook &) {
        return tapeWithin(*snapshot, "full_round", firstLookMinutes, snapshot->now);
    };
    m_desk->worker->run<BudgetedTape>(this, act, [this](Result<BudgetedTape> fitted) {
        --m_fitting;
        m_firstLook.reset();
        if (fitted && wantsFirstLook(m_shown))
            m_firstLook = std::move(fitted).value();
        Q_EMIT changed();
        Q_EMIT barChanged();
    });
}

QVariantList RigModel::mendActionChoices() const
{
    QVariantList list;
    for (const std::string &action : mendActions())
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(action)},
                            {QStringLiteral("word"), m_shown.voice->mendAction(action)}};
    return list;
}

bool RigModel::walkOpen() const { return m_walk->walk() != nullptr; }

QString RigModel::barTitle() const { return walkOpen() ? tr("Go on with the walk") : tr("Start a walk"); }

QString RigModel::barDetail() const
{
    if (!walkOpen())
        return suggestionWords(kinds());
    if (m_walk->isComplete())
        return tr("every line has a mark");
    return tr("at %1, %2 left", "line of the walk, number of lines")
        .arg(m_walk->title(), m_shown.voice->number(m_walk->linesLeft(), 0));
}

void RigModel::show(const Shown &shown)
{
    const bool isNew = shown.snapshot != m_shown.snapshot;
    m_shown = shown;
    m_findings.show(shown);
    m_kinds = walkKinds(shown, shown.catalogue(*m_desk->parts->catalogue));
    if (isNew)
        findFirstLook();
    Q_EMIT changed();
    Q_EMIT barChanged();
}

std::vector<Id> RigModel::numbered() const
{
    std::vector<Id> ids;
    for (const OpenFinding &open : m_shown.snapshot->state.open)
        ids.push_back(open.id);
    return ids;
}

QString RigModel::faceName(const QString &slug) const
{
    const auto face = parseChoice<Face>(slug.toStdString());
    return face && rig() != nullptr ? m_shown.voice->face(*rig(), *face) : QString();
}

QVariantMap RigModel::finding(const QString &id) const
{
    const std::vector<Id> known = numbered();
    const auto wanted = !id.isEmpty()   ? Id::parse(id.toStdString())
                        : known.empty() ? std::nullopt
                                        : std::optional(known.front());
    const FindingHistory *history = wanted ? m_shown.snapshot->finding(*wanted) : nullptr;
    return history == nullptr ? QVariantMap() : findingDetail(m_shown, *history);
}

void RigModel::accept(const QString &point, const QString &because, const QString &knowing)
{
    if (rig() == nullptr)
        return;
    const auto act = [snapshot = m_shown.snapshot, slug = point.toStdString(),
                      because = because.trimmed().toStdString(), knowing = knowing.trimmed().toStdString(),
                      doer = m_desk->doer()](Logbook &book) -> Result<Id> {
        const Standing standing{*snapshot->history, snapshot->bands, snapshot->state, book.now()};
        Result<Acceptance> acceptance = acceptable(standing, slug);
        if (!acceptance)
            return acceptance.error();
        acceptance->reason = because;
        acceptance->knowing = knowing;
        acceptance->by = doer.by;
        acceptance->at = doer.at.value_or(book.now());
        // one person keeps this logbook: roles come with sharing it
        return acceptMissed(book, *acceptance, Role::Owner, doer);
    };
    m_desk->worker->run<Id>(this, act, [this](Result<Id> accepted) {
        if (!accepted)
            m_desk->refuse(accepted.error());
        m_desk->changed(true);
    });
}

void RigModel::mend(const QStringList &findings, const QVariantMap &map)
{
    if (rig() == nullptr)
        return;
    const auto text = [&](const QString &key) { return map.value(key).toString().trimmed(); };
    Mend mend;
    mend.rig = rig()->id;
    mend.action = text(QStringLiteral("action")).toStdString();
    mend.what = text(QStringLiteral("what")).toStdString();
    mend.cost = text(QStringLiteral("cost")).toStdString();
    const Result<std::string> minutes = m_shown.voice->plain(text(QStringLiteral("minutes")));
    mend.minutes = minutes ? parseDouble(*minutes) : std::nullopt;
    auto parts = parseParts(text(QStringLiteral("parts")).toStdString());
    if (!parts) {
        m_desk->refuse(parts.error());
        return;
    }
    mend.parts = std::move(parts).value();
    for (const QString &id : findings)
        mend.findings.push_back(Id::parse(id.toStdString()).value_or(Id{}));
    const auto act = [mend, doer = m_desk->doer()](Logbook &book) mutable {
        mend.at = doer.at.value_or(book.now());
        mend.by = doer.by;
        return addMend(book, mend, doer);
    };
    m_desk->worker->run<Id>(this, act, [this](Result<Id> added) {
        if (!added) {
            m_desk->refuse(added.error());
            return;
        }
        Q_EMIT mended();
        m_desk->changed(true);
    });
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The rig in words.
#include "rig_words.hpp"

#include <cmath>

#include <QCoreApplication>

#include "catalogue/pick.hpp"
#include "round/tape.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(RigWords)
public:
    static QString axles(std::size_t count);
    static QString holdPart(const Voice &voice, const RigState &state, const QString &since);
};

QString Words::axles(std::size_t count)
{
    if (count == 2)
        return tr("twin-axle");
    if (count > 2)
        return tr("%n-axle", nullptr, static_cast<int>(count));
    return {};
}

QString since(const Voice &voice, const RigState &state, const LocalTime &now)
{
    const LocalTime &at = *state.lookedSince;
    if (civilDate(at) == civilDate(now))
        return Words::tr("%1 today", "time").arg(voice.time(at));
    return voice.dateTime(at);
}

QString Words::holdPart(const Voice &voice, const RigState &state, const QString &since)
{
    if (state.hold > 0) {
        QStringList forbids;
        for (const std::string &forbidden : state.forbids)
            forbids << voice.word("forbids", forbidden);
        return tr("%n on hold: %1.", nullptr, state.hold).arg(forbids.join(QStringLiteral(", ")));
    }
    const QString by = voice.text(state.by);
    if (by.isEmpty())
        return tr("No hold among the %n points looked at since %1.", nullptr, state.lookedAt).arg(since);
    return tr("No hold among the %n points looked at since %1 by %2.", nullptr, state.lookedAt)
        .arg(since, by);
}

QString couldNot(const Voice &voice, const RigState &state)
{
    QStringList names;
    for (const CouldNotLook &missed : state.couldNotLook)
        names << voice.point(missed.point);
    const auto count = static_cast<int>(names.size());
    return Words::tr("%n could not be looked at: %1.", nullptr, count).arg(names.join(QStringLiteral(", ")));
}

// Work for an afternoon rather than something to look at, such as packing bearings; common practice, no
// source.
constexpr double jobMinutes = 15.0;

struct Effort {
    double looking = 0.0; ///< minutes
    int jobs = 0;
};

// In a round of everything a job is marked, but not done between two looks; where a walk asks for it by name,
// as laying up asks for draining the tank, it is what the time is for.
Effort effortOf(const Catalogue &catalogue, const std::vector<TapeLine> &tape, bool everything)
{
    Effort effort;
    for (const TapeLine &line : tape) {
        for (const std::string &slug : line.points) {
            const Point *point = catalogue.find(slug);
            if (point == nullptr)
                continue;
            if (everything && point->minutes >= jobMinutes)
                ++effort.jobs;
            else
                effort.looking += point->minutes;
        }
    }
    return effort;
}

QString jobWords(int jobs)
{
    if (jobs == 0)
        return {};
    return Words::tr("%n of them are jobs of a quarter of an hour and more; their time is not counted. Pass "
                     "over what is not for today.",
                     nullptr, jobs);
}

// A rig nobody has walked yet is met in full; else the walk before it moves comes first.
std::string suggestedKind(const RigHistory &history)
{
    return history.walks.empty() ? "full_round" : "before_road";
}

} // namespace

QString aboutWords(const Shown &shown)
{
    if (shown.history() == nullptr)
        return {};
    const RigHistory &history = *shown.history();
    const Voice &voice = *shown.voice;
    const Rig &rig = history.rig;
    const QString axles = Words::axles(rig.measures.axles.size());
    QStringList parts{axles.isEmpty()
                          ? voice.rigKind(rig.kind)
                          : Words::tr("%1 %2", "axles, kind of rig").arg(axles, voice.rigKind(rig.kind))};
    parts << voice.quantity(rig.measures.length);
    if (rig.ratings.gross)
        parts << voice.quantity(*rig.ratings.gross);
    Distance driven;
    for (const Trip &trip : history.trips)
        driven = driven + trip.summary.length;
    const QString words = parts.join(QStringLiteral(", "));
    return driven.si() > 0.0 ? Words::tr("%1; %2 logged").arg(words, voice.quantity(driven)) : words;
}

QString stateSentence(const Shown &shown)
{
    const Voice &voice = *shown.voice;
    const RigState &state = shown.snapshot->state;
    if (shown.history() == nullptr)
        return {};
    QStringList parts;
    if (state.lookedSince)
        parts << Words::holdPart(voice, state, since(voice, state, shown.snapshot->now));
    else
        parts << Words::tr("Nothing was looked at yet.");
    if (state.mendSoon > 0)
        parts << Words::tr("%n to mend soon.", nullptr, state.mendSoon);
    if (!state.couldNotLook.empty())
        parts << couldNot(voice, state);
    if (state.pastDue > 0)
        parts << Words::tr("%n are past due.", nullptr, state.pastDue);
    if (state.lookedSince)
        parts << Words::tr("This says what was looked at, not that nothing will fail.");
    return parts.join(u' ');
}

namespace {

QString acceptedWords(const Voice &voice, const StateHold &hold)
{
    if (!hold.accepted)
        return {};
    return Words::tr("accepted by %1 on %2: %3", "who, when, because")
        .arg(Voice::text(hold.accepted->by), voice.dateTime(hold.accepted->at),
             Voice::text(hold.accepted->reason));
}

} // namespace

QVariantList holdList(const Shown &shown)
{
    QVariantList list;
    const Voice &voice = *shown.voice;
    for (const StateHold &hold : shown.snapshot->state.holds) {
        const bool general = hold.hit.rule == "grade_5" || hold.hit.rule == "could_not_look";
        QString why = general ? QString() : voice.word("holds", hold.hit.rule);
        if (hold.hit.rule == "grade_5")
            why = Words::tr("The worst grade on a point of the hold list.");
        if (hold.hit.rule == "could_not_look")
            why = Words::tr("It is on the hold list and could not be looked at.");
        list << QVariantMap{{QStringLiteral("title"), voice.point(hold.hit.point)},
                            {QStringLiteral("point"), Voice::text(hold.hit.point)},
                            {QStringLiteral("acceptable"), hold.acceptable},
                            {QStringLiteral("accepted"), acceptedWords(voice, hold)},
                            {QStringLiteral("why"), why},
                            {QStringLiteral("forbids"), voice.word("forbids", hold.hit.forbids)},
                            {QStringLiteral("findingId"),
                             hold.finding.isNull() ? QString() : Voice::text(hold.finding.text())}};
    }
    return list;
}

QStringList hiddenInSightWords(const Shown &shown, const Catalogue &product)
{
    QStringList list;
    if (shown.history() == nullptr)
        return list;
    for (const Point *point : hiddenInSight(shown.catalogue(product), shown.history()->rig))
        list << Words::tr("%1, hidden by %2, %3", "point, who, date")
                    .arg(shown.voice->point(point->slug), Voice::text(point->hidden->by),
                         shown.voice->date(point->hidden->date));
    return list;
}

QVariantList walkKinds(const Shown &shown, const Catalogue &catalogue)
{
    QVariantList list;
    if (shown.history() == nullptr)
        return list;
    const std::string suggested = suggestedKind(*shown.history());
    for (const WalkKind &kind : catalogue.kinds()) {
        const auto tape = tapeForWalk(catalogue, *shown.history(), kind.slug, {}, {}, shown.snapshot->now);
        if (!tape)
            continue;
        const Effort effort = effortOf(catalogue, *tape, kind.all);
        const QVariantMap entry{
            {QStringLiteral("slug"), Voice::text(kind.slug)},
            {QStringLiteral("name"), Voice::text(shown.voice->texts.kindName(kind.slug))},
            {QStringLiteral("about"), Voice::text(shown.voice->texts.kindAbout(kind.slug))},
            {QStringLiteral("lines"), static_cast<int>(tape->size())},
            {QStringLiteral("minutes"), static_cast<int>(std::lround(effort.looking))},
            {QStringLiteral("jobs"), jobWords(effort.jobs)},
            {QStringLiteral("suggested"), kind.slug == suggested}};
        if (kind.slug == suggested)
            list.prepend(entry);
        else
            list.append(entry);
    }
    return list;
}

QString suggestionWords(const QVariantList &kinds)
{
    for (const QVariant &entry : kinds) {
        const QVariantMap kind = entry.toMap();
        if (!kind.value(QStringLiteral("suggested")).toBool())
            continue;
        const QString lines = Words::tr("%n lines", nullptr, kind.value(QStringLiteral("lines")).toInt());
        // told as on the page where the walk is chosen
        const int span = kind.value(QStringLiteral("minutes")).toInt();
        const QString minutes = span < 100 ? Words::tr("about %n minutes", nullptr, span)
                                           : Words::tr("about %n hours", nullptr, (span + 30) / 60);
        return Words::tr("%1, %2, %3", "kind of walk, lines, minutes")
            .arg(kind.value(QStringLiteral("name")).toString(), lines, minutes);
    }
    return {};
}

} // namespace snugwalk

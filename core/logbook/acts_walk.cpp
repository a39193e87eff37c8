// SPDX-License-Identifier: Apache-2.0
// Acts of a walk: start, mark, finish.
#include <algorithm>

#include "base/text.hpp"
#include "logbook/acts.hpp"
#include "logbook/finding_changes.hpp"
#include "logbook/query.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

Status refuseSecondWalk(Logbook &book, const Id &rig)
{
    const auto open = openWalk(book, rig);
    if (!open)
        return open.error();
    if (!*open)
        return done();
    return Error{Errc::Conflict, "a walk of this rig is not finished",
                 (*open)->kind + " " + (*open)->id.shortText(), "go on with it, or finish it first"};
}

Act actOn(const Walk &walk, const Doer &doer)
{
    Act act;
    act.by = doer.by;
    act.at = doer.at;
    act.where = doer.where;
    act.scope = walk.id;
    return act;
}

Status addFindings(Logbook &book, const Rig &rig, const Walk &walk, const MarkDraft &draft,
                   const CheckedMark &checked, const LocalTime &at, const Doer &doer, Act &act,
                   MarkReceipt &receipt)
{
    for (std::size_t i = 0; i < draft.findings.size(); ++i) {
        SNUG_TRY(addFindingChanges(book, {rig.id, draft.point, walk.id, at, doer}, draft.findings[i],
                                   checked.extents[i], {}, act, receipt));
    }
    return done();
}

} // namespace

Result<Walk> startWalk(Logbook &book, const Catalogue &catalogue, const Rig &rig, const std::string &kind,
                       const std::vector<std::string> &extraSets, const std::vector<std::string> &extraPoints,
                       const Doer &doer)
{
    auto tape = tapeFor(catalogue, rig, kind, extraSets, extraPoints);
    if (!tape)
        return tape.error();
    return startWalk(book, rig, kind, std::move(tape).value(), std::nullopt, doer);
}

Result<Walk> startWalk(Logbook &book, const Rig &rig, const std::string &kind, std::vector<TapeLine> tape,
                       const std::optional<WalkBudget> &budget, const Doer &doer)
{
    const Walk walk{book.newId(), rig.id,          kind,  doer.by, doer.at.value_or(book.now()), std::nullopt,
                    doer.where,   std::move(tape), budget};
    // Outside the walk's scope: undo takes marks back, it never unmakes the walk they stand on.
    Act act = actOn(walk, doer);
    act.scope = Id{};
    act.changes = {{walk.id, "walk", toValue(walk).map()}};
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        SNUG_TRY(refuseSecondWalk(book, rig.id));
        return act;
    });
    if (!receipt)
        return receipt.error();
    return walk;
}

Result<MarkReceipt> markPoint(Logbook &book, const Catalogue &catalogue, const Rig &rig, const Walk &walk,
                              const MarkDraft &draft, const Doer &doer)
{
    const Point *point = catalogue.find(draft.point);
    if (point == nullptr || !isOnTape(walk, draft.point))
        return Error{Errc::NotFound, "no such point on this walk", draft.point, "see `snugwalk walk show`"};
    const Result<CheckedMark> checked = checkMark(draft, *point, rig);
    if (!checked)
        return checked.error();

    const LocalTime at = doer.at.value_or(book.now());
    const Mark mark{markId(walk.id, draft.point),
                    walk.id,
                    draft.point,
                    draft.state,
                    draft.how,
                    draft.reason,
                    draft.note,
                    checked->readings,
                    at,
                    doer.by,
                    doer.where};
    Act act = actOn(walk, doer);
    act.changes.push_back(markChange(mark));
    MarkReceipt receipt{mark.id, {}, {}, checked->warnings, walk.id};
    const Result<Receipt> written = book.record([&]() -> Result<Act> {
        SNUG_TRY(refuseFinished(book.db(), walk.id));
        SNUG_TRY(addFindings(book, rig, walk, draft, *checked, at, doer, act, receipt));
        return act;
    });
    if (!written)
        return written.error();
    return receipt;
}

namespace {

// What several points may get in one go: attention needs a finding of its own, see `markPoint`.
Status checkLineMark(const Walk &walk, const TapeLine &line, MarkState state, const std::string &reason)
{
    for (const std::string &point : line.points) {
        if (!isOnTape(walk, point))
            return Error{Errc::NotFound, "no such point on this walk", point, "see `snugwalk walk show`"};
    }
    if (state == MarkState::Attention || state == MarkState::NotLooked)
        return Error{Errc::InvalidInput, "a whole line cannot be marked so", line.slug,
                     "mark its points one by one"};
    if (state == MarkState::CouldNotLook &&
        std::find(reasons().begin(), reasons().end(), reason) == reasons().end())
        return Error{Errc::InvalidInput, reason.empty() ? "no reason given" : "unknown reason",
                     line.slug + ", reason", "use one of " + join(reasons(), ", ")};
    return done();
}

} // namespace

Status markLine(Logbook &book, const Walk &walk, const TapeLine &line, MarkState state, LookedHow how,
                const std::string &reason, const Doer &doer)
{
    SNUG_TRY(checkLineMark(walk, line, state, reason));
    const LocalTime at = doer.at.value_or(book.now());
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        SNUG_TRY(refuseFinished(book.db(), walk.id));
        const auto marks = marksOf(book, walk.id);
        if (!marks)
            return marks.error();
        Act act = actOn(walk, doer);
        for (const std::string &point : line.points) {
            if (findMark(*marks, point) == nullptr)
                act.changes.push_back(markChange({markId(walk.id, point),
                                                  walk.id,
                                                  point,
                                                  state,
                                                  how,
                                                  reason,
                                                  "",
                                                  {},
                                                  at,
                                                  doer.by,
                                                  doer.where}));
        }
        return act;
    });
    return receipt ? done() : Status(receipt.error());
}

Status finishWalk(Logbook &book, const Walk &walk, const Doer &doer)
{
    Act act = actOn(walk, doer);
    act.scope = Id{};
    act.changes = {{walk.id, "walk", {{"finished", formatLocal(doer.at.value_or(book.now()))}}}};
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        SNUG_TRY(refuseFinished(book.db(), walk.id));
        return act;
    });
    return receipt ? done() : Status(receipt.error());
}

} // namespace snugwalk

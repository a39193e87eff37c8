// SPDX-License-Identifier: Apache-2.0
// A finding on its own: within the open walk where that has the point, else between walks.
#include <algorithm>

#include "logbook/acts.hpp"
#include "logbook/finding_changes.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

MarkDraft draftOf(const std::string &point, const FindingDraft &finding,
                  const std::vector<TypedReading> &readings)
{
    MarkDraft draft;
    draft.point = point;
    draft.state = finding.grade > 0 || finding.same.isNull() ? MarkState::Attention : MarkState::Pass;
    draft.readings = readings;
    draft.findings = {finding};
    return draft;
}

// The rig's open walk when its tape has the point.
Result<std::optional<Walk>> walkWith(Logbook &book, const Id &rig, const std::string &point)
{
    auto open = openWalk(book, rig);
    if (!open)
        return open.error();
    if (*open && !isOnTape(**open, point))
        return std::optional<Walk>();
    return open;
}

// A reading taken again at one place replaces the one before.
void merge(std::vector<Reading> &into, const std::vector<Reading> &readings)
{
    for (const Reading &reading : readings) {
        std::erase_if(into,
                      [&](const Reading &r) { return r.slug == reading.slug && r.place == reading.place; });
        into.push_back(reading);
    }
}

// The point's mark after the look; nothing when it stays as it is.
std::optional<Mark> markAfter(const Mark *before, const FindingSpot &spot, bool isThere,
                              const std::vector<Reading> &readings)
{
    if (before == nullptr && !isThere)
        return std::nullopt;
    Mark mark = before == nullptr ? Mark{} : *before;
    const bool becomes = isThere && mark.state != MarkState::Attention;
    if (!becomes && readings.empty())
        return std::nullopt;
    if (becomes) {
        mark.state = MarkState::Attention;
        mark.reason.clear();
        mark.at = spot.at;
        mark.by = spot.doer.by;
        mark.where = spot.doer.where;
    }
    mark.id = markId(spot.walk, spot.point);
    mark.walk = spot.walk;
    mark.point = spot.point;
    merge(mark.readings, readings);
    return mark;
}

Result<Act> actFor(Logbook &book, FindingSpot spot, const FindingDraft &draft, const CheckedMark &checked,
                   MarkReceipt &receipt)
{
    const auto walk = walkWith(book, spot.rig, spot.point);
    if (!walk)
        return walk.error();
    Act act{spot.doer.by, spot.doer.at, spot.doer.where, Id{}, Id{}, {}};
    std::vector<Reading> onLook = checked.readings;
    if (*walk) {
        spot.walk = (*walk)->id;
        const auto marks = marksOf(book, spot.walk);
        if (!marks)
            return marks.error();
        const Mark *before = findMark(*marks, spot.point);
        const auto mark = markAfter(before, spot, draft.grade > 0, checked.readings);
        if (mark) {
            act.changes.push_back(markChange(*mark));
            receipt.mark = mark->id;
            onLook.clear();
        }
    }
    act.scope = spot.walk;
    receipt.walk = spot.walk;
    SNUG_TRY(addFindingChanges(book, spot, draft, checked.extents.front(), onLook, act, receipt));
    return act;
}

} // namespace

Result<MarkReceipt> lookAtFinding(Logbook &book, const Catalogue &catalogue, const Rig &rig,
                                  const std::string &point, const FindingDraft &draft,
                                  const std::vector<TypedReading> &readings, const Doer &doer)
{
    const Point *known = catalogue.find(point);
    if (known == nullptr || (draft.same.isNull() && !applies(*known, rig)))
        return Error{Errc::NotFound, known == nullptr ? "no such point" : "this rig does not have the point",
                     point, "see `snugwalk points`"};
    const Result<CheckedMark> checked = checkMark(draftOf(point, draft, readings), *known, rig);
    if (!checked)
        return checked.error();
    const FindingSpot spot{rig.id, point, Id{}, doer.at.value_or(book.now()), doer};
    MarkReceipt receipt{Id{}, {}, {}, checked->warnings};
    const Result<Receipt> written =
        book.record([&]() -> Result<Act> { return actFor(book, spot, draft, *checked, receipt); });
    if (!written)
        return written.error();
    return receipt;
}

} // namespace snugwalk

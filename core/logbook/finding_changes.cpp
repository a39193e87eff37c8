// SPDX-License-Identifier: Apache-2.0
// The two entities of a finding: what it is, and what was seen of it.
#include "logbook/finding_changes.hpp"

#include <algorithm>

#include "logbook/query.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

Status checkSame(Logbook &book, const FindingSpot &spot, const Id &same)
{
    const Result<Finding> known = findingOf(book, same);
    if (!known)
        return known.error();
    if (known->point == spot.point && known->rig == spot.rig)
        return done();
    return Error{Errc::InvalidInput, "finding " + same.shortText() + " is of " + known->point,
                 spot.point + ", same", "name a finding of this point"};
}

} // namespace

Status addFindingChanges(Logbook &book, const FindingSpot &spot, const FindingDraft &draft,
                         const std::optional<Extent> &extent, const std::vector<Reading> &readings, Act &act,
                         MarkReceipt &receipt)
{
    Id id = draft.same;
    if (id.isNull()) {
        id = book.newId();
        const Finding opened{id, spot.rig, spot.point, draft.defect, draft.place, spot.walk, spot.at};
        act.changes.push_back({id, "finding", toValue(opened).map()});
    } else {
        SNUG_TRY(checkSame(book, spot, id));
    }
    const Look look{book.newId(), id,     spot.walk,  spot.at,         spot.doer.by,
                    draft.grade,  extent, draft.note, spot.doer.where, readings};
    act.changes.push_back({look.id, "look", toValue(look).map()});
    receipt.findings.push_back(id);
    receipt.looks.push_back(look.id);
    return done();
}

bool isOnTape(const Walk &walk, const std::string &point)
{
    return std::any_of(walk.tape.begin(), walk.tape.end(), [&](const TapeLine &line) {
        return std::find(line.points.begin(), line.points.end(), point) != line.points.end();
    });
}

EntityChange markChange(const Mark &mark)
{
    return {markId(mark.walk, mark.point), "mark", toValue(mark).map()};
}

} // namespace snugwalk

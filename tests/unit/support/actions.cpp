// SPDX-License-Identifier: Apache-2.0
// Acts of the logbook behind short names.
#include "support/actions.hpp"

#include "logbook/query.hpp"

namespace snugwalk::test {

MarkDraft passOf(const std::string &point, const std::string &note)
{
    MarkDraft draft;
    draft.point = point;
    draft.state = MarkState::Pass;
    draft.note = note;
    return draft;
}

MarkDraft attentionOn(const std::string &point, int grade, const std::string &note)
{
    MarkDraft draft = passOf(point, note);
    draft.state = MarkState::Attention;
    FindingDraft finding;
    const Point *known = realCatalogue().find(point);
    finding.defect = known == nullptr ? "other" : known->defects.front();
    finding.grade = grade;
    finding.note = note;
    draft.findings = {finding};
    return draft;
}

MarkDraft lookAgain(const std::string &point, const Id &finding, int grade)
{
    MarkDraft draft = attentionOn(point, grade);
    draft.state = grade == 0 ? MarkState::Pass : MarkState::Attention;
    draft.findings.front().same = finding;
    draft.findings.front().defect.clear();
    return draft;
}

MarkDraft couldNotLook(const std::string &point, const std::string &reason)
{
    MarkDraft draft = passOf(point);
    draft.state = MarkState::CouldNotLook;
    draft.reason = reason;
    return draft;
}

Walker::Walker(const std::string &seed, const std::string &kind) : home(seed), rig(tandem())
{
    rig.id = saveRig(home.book(), rig, doer).value();
    walk = startWalk(home.book(), realCatalogue(), rig, kind, {}, {}, doer).value();
}

Result<MarkReceipt> Walker::mark(const MarkDraft &draft)
{
    home.clock.advance(std::chrono::minutes(1));
    return markPoint(home.book(), realCatalogue(), rig, walk, draft, doer);
}

Result<Receipt> Walker::undo()
{
    home.clock.advance(std::chrono::minutes(1));
    return home.book().undo(walk.id, doer.by);
}

Status Walker::finish()
{
    home.clock.advance(std::chrono::minutes(1));
    return finishWalk(home.book(), walk, doer);
}

void Walker::nextWalk(const std::string &kind)
{
    SNUG_ASSERT(finish().has_value());
    home.clock.advance(std::chrono::hours(24));
    walk = startWalk(home.book(), realCatalogue(), rig, kind, {}, {}, doer).value();
}

MarkState Walker::stateOf(const std::string &point)
{
    const auto marks = marksOf(home.book(), walk.id).value();
    const Mark *mark = findMark(marks, point);
    return mark == nullptr ? MarkState::NotLooked : mark->state;
}

} // namespace snugwalk::test

// SPDX-License-Identifier: Apache-2.0
// What was looked at before the road, with what somebody moved on their own decision.
#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "words/state_words.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

std::string markWords(const Paper &paper, const Mark &mark)
{
    std::string out = stateWords(mark.state, paper.texts());
    if (mark.state == MarkState::Pass)
        out += ", " + paper.say("how_" + std::string(slug(mark.how)));
    if (!mark.reason.empty())
        out += ": " + paper.texts().word("reasons", mark.reason);
    for (const Reading &reading : mark.readings)
        out += "; " + readingOf(paper, reading);
    return mark.note.empty() ? out : out + "; " + mark.note;
}

void acceptanceBlocks(Paper &paper, const Walk &walk)
{
    bool headed = false;
    for (const Acceptance &acceptance : paper.history().acceptances) {
        if (acceptance.walk != walk.id)
            continue;
        if (!headed)
            paper.heading("accepted");
        headed = true;
        paper.text(acceptanceSentence(acceptance, paper.texts()));
        paper.text(paper.say("accepted_by", {acceptance.by, timeWithZone(acceptance.at)}), TextTone::Quiet);
    }
    if (headed)
        paper.text(paper.say("accepted_ends"), TextTone::Quiet);
}

void tapeTable(Paper &paper, const WalkRecord &record)
{
    std::vector<std::vector<std::string>> rows;
    for (const TapeLine &line : record.walk.tape) {
        for (const std::string &point : line.points) {
            if (const Mark *mark = findMark(record.marks, point))
                rows.push_back(
                    {paper.title(point), markWords(paper, *mark), mark->by.empty() ? "" : mark->by});
        }
    }
    if (!paper.table({paper.say("col_point"), paper.say("col_mark"), paper.say("col_by")}, std::move(rows)))
        paper.text(paper.texts().phrase("looked_none"));
}

} // namespace

Result<Document> roadSlipPaper(Paper paper)
{
    const Result<const WalkRecord *> walk = chosenWalk(paper, paper.options().walk, {"before_road"});
    if (!walk)
        return walk.error();
    if (*walk == nullptr)
        return Error{Errc::NotFound, "no walk before the road is written", paper.rig().name,
                     "walk it, or name another walk"};
    const WalkRecord &record = **walk;
    walkBlock(paper, record);
    if (civilDate(record.walk.started) != civilDate(paper.source().standing.now))
        paper.text(paper.say("walk_of_other_day", {dayOf(record.walk.started)}));
    acceptanceBlocks(paper, record.walk);
    paper.heading("looked_at");
    tapeTable(paper, record);
    paper.heading("state_now");
    stateBlocks(paper);
    if (!paper.report().findings.empty()) {
        paper.heading("open_findings");
        for (const ReportFinding &finding : paper.report().findings)
            findingLine(paper, finding);
    }
    notLookedBlocks(paper, &record);
    std::string title = paperTitle(PaperKind::RoadSlip, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

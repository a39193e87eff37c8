// SPDX-License-Identifier: Apache-2.0
// Handing out and taking back: the same points twice, beside each other, and both signatures twice.
#include <algorithm>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/tape.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

struct Sides {
    const WalkRecord *out = nullptr;
    const WalkRecord *back = nullptr;
};

// The last handing out, or the one named; the first taking back after it.
Result<Sides> sidesOf(const Paper &paper)
{
    const Result<const WalkRecord *> named = chosenWalk(paper, paper.options().walk, {"handing_out"});
    if (!named)
        return named.error();
    Sides sides{*named, nullptr};
    if (sides.out != nullptr && sides.out->walk.kind == "taking_back") {
        sides.back = sides.out;
        sides.out = nullptr;
    }
    for (const WalkRecord &record : paper.history().walks) {
        if (sides.back != nullptr && sides.out == nullptr && record.walk.kind == "handing_out" &&
            record.walk.started.instant < sides.back->walk.started.instant)
            sides.out = &record;
    }
    for (const WalkRecord &record : paper.history().walks) {
        if (sides.back == nullptr && sides.out != nullptr && record.walk.kind == "taking_back" &&
            record.walk.started.instant > sides.out->walk.started.instant)
            sides.back = &record;
    }
    return sides;
}

// What both walks asked for; without either, what a handing out would ask for today.
std::vector<std::string> pointsOf(const Paper &paper, const Sides &sides)
{
    std::vector<std::string> points;
    const auto take = [&](const std::vector<TapeLine> &tape) {
        for (const TapeLine &line : tape) {
            for (const std::string &point : line.points) {
                if (std::find(points.begin(), points.end(), point) == points.end())
                    points.push_back(point);
            }
        }
    };
    for (const WalkRecord *side : {sides.out, sides.back}) {
        if (side != nullptr)
            take(side->walk.tape);
    }
    if (points.empty()) {
        const auto tape = tapeForWalk(paper.source().catalogue, paper.history(), "handing_out", {}, {},
                                      paper.source().standing.now);
        if (tape)
            take(*tape);
    }
    return points;
}

std::string markOf(const Paper &paper, const WalkRecord *side, const std::string &point)
{
    if (side == nullptr)
        return {};
    const Mark *mark = findMark(side->marks, point);
    if (mark == nullptr)
        return stateWords(MarkState::NotLooked, paper.texts());
    std::string out = stateWords(mark->state, paper.texts());
    if (!mark->reason.empty())
        out += ": " + paper.texts().word("reasons", mark->reason);
    for (const Reading &reading : mark->readings)
        out += "; " + readingOf(paper, reading);
    return mark->note.empty() ? out : out + "; " + mark->note;
}

void sideBlock(Paper &paper, std::string_view heading, const WalkRecord *side)
{
    paper.heading(heading);
    if (side != nullptr) {
        walkBlock(paper, *side);
        return;
    }
    paper.text(paper.say("by_hand"), TextTone::Quiet);
    paper.add(BlankBlock{paper.say("blank_day_and_time"), 1});
}

} // namespace

Result<Document> outAndBackPaper(Paper paper)
{
    const Result<Sides> sides = sidesOf(paper);
    if (!sides)
        return sides.error();
    rigTable(paper);
    for (const StateHold &hold : paper.source().standing.state.holds)
        paper.text(paper.say("hold_on_order",
                             {paper.title(hold.hit.point), paper.texts().word("forbids", hold.hit.forbids)}));
    sideBlock(paper, "out", sides->out);
    sideBlock(paper, "back", sides->back);
    std::vector<std::vector<std::string>> rows;
    for (const std::string &point : pointsOf(paper, *sides))
        rows.push_back(
            {paper.title(point), markOf(paper, sides->out, point), markOf(paper, sides->back, point)});
    paper.heading("points");
    paper.table({paper.say("col_point"), paper.say("col_out"), paper.say("col_back")}, std::move(rows));
    if (!paper.report().findings.empty()) {
        paper.heading("open_findings");
        drawingBlock(paper, paper.report().findings);
        for (const ReportFinding &finding : paper.report().findings)
            findingBlocks(paper, finding);
    }
    if (sides->out != nullptr && sides->back != nullptr) {
        const Comparison comparison = compareWalks(paper.source().catalogue, paper.history(),
                                                   sides->out->walk.id, sides->back->walk.id);
        paper.add(HeadingBlock{2, paper.texts().phrase("changes")});
        changeBlocks(paper, comparison, photoPairs(comparison, paper.history()));
    }
    for (const char *label : {"blank_keys", "blank_fuel_and_gas", "blank_missing"})
        paper.add(BlankBlock{paper.say(label), 1});
    notLookedBlocks(paper, sides->back != nullptr ? sides->back : sides->out);
    for (const char *when : {"signed_out", "signed_back"}) {
        paper.heading(when);
        paper.add(SignatureBlock{paper.say("sign_gives")});
        paper.add(SignatureBlock{paper.say("sign_takes_rig")});
    }
    std::string title = paperTitle(PaperKind::OutAndBack, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

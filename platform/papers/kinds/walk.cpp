// SPDX-License-Identifier: Apache-2.0
// How the rig stands: state, findings, what changed, what is due next, the last walk.
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"

namespace snugwalk::papers {
namespace {

constexpr std::size_t mostDueLines = 15;
constexpr std::size_t mostReadings = 2;

} // namespace

Result<Document> walkPaper(Paper paper)
{
    const Result<const WalkRecord *> walk = chosenWalk(paper, paper.options().walk, {});
    if (!walk)
        return walk.error();
    stateBlocks(paper);
    drawingBlock(paper, paper.report().findings);
    paper.add(HeadingBlock{2, paper.texts().phrase("findings")});
    if (paper.report().findings.empty())
        paper.text(paper.texts().phrase("no_finding"));
    for (const ReportFinding &finding : paper.report().findings)
        findingBlocks(paper, finding);
    if (!paper.report().cautions.empty()) {
        paper.add(HeadingBlock{2, paper.texts().phrase("cautions")});
        cautionBlock(paper, paper.report().cautions);
    }
    if (*walk != nullptr) {
        paper.add(
            HeadingBlock{2, paper.options().walk ? paper.say("the_walk") : paper.texts().phrase("walk")});
        walkBlock(paper, **walk);
    }
    notLookedBlocks(paper, *walk);
    if (paper.report().comparison) {
        paper.add(HeadingBlock{2, paper.texts().phrase("changes")});
        changeBlocks(paper, *paper.report().comparison, paper.report().pairs);
    }
    paper.add(HeadingBlock{2, paper.texts().phrase("due")});
    dueBlocks(paper, mostDueLines);
    readingPlots(paper, mostReadings);
    std::string title = paper.say("title_walk");
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

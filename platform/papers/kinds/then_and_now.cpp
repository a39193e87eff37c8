// SPDX-License-Identifier: Apache-2.0
// Two walks of one rig laid side by side.
#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/compare.hpp"
#include "words/compare_words.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

Result<WalkPair> pairOf(const Paper &paper)
{
    const PaperOptions &options = paper.options();
    for (const auto &id : {options.walk, options.other}) {
        if (id) {
            const auto known = chosenWalk(paper, id, {});
            if (!known)
                return known.error();
        }
    }
    if (options.walk && options.other)
        return WalkPair{*options.other, *options.walk, PairedBy::Named};
    Result<WalkPair> pair =
        options.walk ? lastOfKind(paper.history(), *options.walk) : lastTwo(paper.history());
    if (pair && options.other) {
        pair->then = *options.other;
        pair->by = PairedBy::Named;
    }
    return pair;
}

std::string walkWords(const Paper &paper, const Walk &walk)
{
    return paper.texts().kindName(walk.kind) + ", " + timeWithZone(walk.started) +
           (walk.by.empty() ? "" : ", " + walk.by);
}

void readingRows(Paper &paper, const Comparison &comparison)
{
    std::vector<std::vector<std::string>> rows;
    for (const PointChange &point : comparison.points) {
        for (const ReadingChange &reading : point.readings) {
            if (isTold(reading))
                rows.push_back({paper.title(point.point),
                                readingChangeWords(reading, paper.texts(), paper.options().units)});
        }
    }
    if (rows.empty())
        return;
    paper.heading("readings");
    paper.table({paper.say("col_point"), paper.say("col_reading")}, std::move(rows));
}

} // namespace

Result<Document> thenAndNowPaper(Paper paper)
{
    const Result<WalkPair> pair = pairOf(paper);
    if (!pair)
        return pair.error();
    const Comparison comparison =
        compareWalks(paper.source().catalogue, paper.history(), pair->then, pair->now);
    const Result<const WalkRecord *> then = chosenWalk(paper, comparison.thenWalk, {});
    const Result<const WalkRecord *> now = chosenWalk(paper, comparison.nowWalk, {});
    if (!then || !now)
        return then ? now.error() : then.error();
    paper.table({paper.say("col_when"), paper.say("col_walk")},
                {{paper.say("col_then"), walkWords(paper, (*then)->walk)},
                 {paper.say("col_now"), walkWords(paper, (*now)->walk)}});
    paper.text(paper.say("paired_by", {paper.texts().phrase("pair_" + std::string(slug(pair->by)))}),
               TextTone::Quiet);
    placeBlock(paper, (*now)->walk.where);
    paper.lookedBy(**then);
    paper.lookedBy(**now);
    if (const std::string rig = rigChangesWords(comparison.rigChanges, paper.texts(), paper.options().units);
        !rig.empty())
        paper.text(paper.say("rig_changes", {rig}));
    paper.add(HeadingBlock{2, paper.texts().phrase("changes")});
    changeBlocks(paper, comparison, photoPairs(comparison, paper.history()));
    readingRows(paper, comparison);
    for (const std::string_view line : split(pointListsWords(comparison, paper.texts()), '\n'))
        paper.text(std::string(line), TextTone::Quiet);
    notLookedBlocks(paper, *now);
    std::string title = paperTitle(PaperKind::ThenAndNow, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

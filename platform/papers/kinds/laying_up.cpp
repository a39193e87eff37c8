// SPDX-License-Identifier: Apache-2.0
// Laying up by stand, to tick, with cautions in full and the emergency card.
#include <set>
#include <utility>

#include "base/text.hpp"
#include "catalogue/pick.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/tape.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

void emergencyCard(Paper &paper)
{
    paper.add(HeadingBlock{2, paper.texts().word("emergency", "title")});
    CautionBlock card;
    for (const char *line : {"gas", "co", "fire", "tingle"})
        card.lines.push_back(paper.texts().word("emergency", line));
    paper.add(std::move(card));
}

std::string lineWords(const Paper &paper, const std::string &point, const WalkRecord *record)
{
    const Mark *mark = record != nullptr ? findMark(record->marks, point) : nullptr;
    return paper.title(point) +
           (mark != nullptr ? ": " + stateWords(mark->state, paper.texts()) + ", " + dayOf(mark->at) : "");
}

// Boxes to tick, a heading a stand; what was marked already stands behind its line.
void tapeTicks(Paper &paper, const std::vector<TapeLine> &tape, const WalkRecord *record)
{
    std::string stand;
    std::set<std::string> told;
    TickBlock ticks;
    const auto flush = [&] {
        if (!ticks.lines.empty())
            paper.add(std::exchange(ticks, {}));
    };
    for (const TapeLine &line : tape) {
        const std::string here = standOf(paper.source().catalogue, line);
        if (here != stand) {
            flush();
            paper.add(HeadingBlock{3, paper.texts().standName(here)});
            if (told.insert(here).second)
                paper.text(paper.texts().standInstruction(here), TextTone::Quiet);
        }
        stand = here;
        for (const std::string &point : line.points)
            ticks.lines.push_back(lineWords(paper, point, record));
    }
    flush();
}

} // namespace

Result<Document> layingUpPaper(Paper paper)
{
    const Result<const WalkRecord *> named = chosenWalk(paper, paper.options().walk, {"laying_up"});
    if (!named)
        return named.error();
    // the last one counts while nobody has brought the rig out since
    const WalkRecord *record = *named;
    const Result<const WalkRecord *> out = chosenWalk(paper, std::nullopt, {"bringing_out"});
    if (!paper.options().walk && record != nullptr && out && *out != nullptr &&
        (*out)->walk.started.instant > record->walk.started.instant)
        record = nullptr;
    std::vector<TapeLine> tape;
    if (record != nullptr) {
        tape = record->walk.tape;
    } else {
        Result<std::vector<TapeLine>> today = tapeForWalk(paper.source().catalogue, paper.history(),
                                                          "laying_up", {}, {}, paper.source().standing.now);
        if (!today)
            return today.error();
        tape = std::move(today).value();
    }
    emergencyCard(paper);
    std::vector<std::string> codes;
    for (const TapeLine &line : tape) {
        for (const std::string &slug : line.points) {
            if (const Point *point = paper.source().catalogue.find(slug))
                codes.insert(codes.end(), point->cautions.begin(), point->cautions.end());
        }
    }
    paper.add(HeadingBlock{2, paper.texts().phrase("cautions")});
    cautionBlock(paper, codes);
    paper.add(HeadingBlock{2, paper.texts().kindName("laying_up")});
    if (record != nullptr)
        walkBlock(paper, *record);
    tapeTicks(paper, tape, record);
    for (const char *label :
         {"blank_stored", "blank_water_out", "blank_gas_shut", "blank_battery", "blank_next_look"})
        paper.add(BlankBlock{paper.say(label), 1});
    notLookedBlocks(paper, record);
    paper.add(SignatureBlock{paper.say("sign_laid_up")});
    std::string title = paperTitle(PaperKind::LayingUp, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

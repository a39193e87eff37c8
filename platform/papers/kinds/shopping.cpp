// SPDX-License-Identifier: Apache-2.0
// What to get for open findings and for what falls due.
#include <set>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/supplies.hpp"
#include "words/supply_words.hpp"

namespace snugwalk::papers {
namespace {

std::string usesOf(const Paper &paper, const SupplyItem &item, const SupplyLine &line)
{
    std::vector<std::string> uses;
    for (const SupplyUse &use : line.uses)
        uses.push_back(paper.title(use.point) + " (" +
                       (use.finding.isNull() ? paper.texts().phrase("due_word") : paper.say("finding_word")) +
                       "): " + supplyAmount(item, use.si, paper.options().units) +
                       (use.assumed ? ", " + paper.texts().phrase("supply_assumed") : ""));
    return join(uses, "; ");
}

} // namespace

Result<Document> shoppingPaper(Paper paper)
{
    const Standing &standing = paper.source().standing;
    const SupplyList &list = paper.source().supplies;
    const UnitSystem units = paper.options().units;
    const std::vector<SupplyLine> lines =
        suppliesFor(list, standing.history, standing.bands, standing.now, paper.options().days);
    TickBlock ticks;
    std::vector<std::vector<std::string>> rows;
    std::set<std::string> codes;
    for (const SupplyLine &line : lines) {
        const SupplyItem *item = list.find(line.item);
        if (item == nullptr)
            continue;
        const std::string name = paper.texts().word("supplies", line.item);
        if (line.packs > 0)
            ticks.lines.push_back(
                paper.say("get", {name, std::to_string(line.packs), packWords(*item, paper.texts(), units)}));
        rows.push_back({name, supplyAmount(*item, line.neededSi, units),
                        supplyAmount(*item, line.onHandSi, units), usesOf(paper, *item, line)});
        codes.insert(item->cautions.begin(), item->cautions.end());
    }
    if (ticks.lines.empty())
        paper.text(paper.say(lines.empty() ? "nothing_needed" : "enough_on_hand",
                             {std::to_string(paper.options().days)}));
    else
        paper.add(std::move(ticks));
    CautionBlock cautions;
    for (const std::string &code : codes)
        cautions.lines.push_back(paper.texts().cautionFull(code));
    if (!cautions.lines.empty())
        paper.add(std::move(cautions));
    if (!rows.empty()) {
        paper.heading("what_for");
        paper.table(
            {paper.say("col_item"), paper.say("col_needed"), paper.say("col_on_hand"), paper.say("col_for")},
            std::move(rows), {false, true, true, false});
        paper.text(paper.texts().phrase("supply_basis"), TextTone::Quiet);
    }
    paper.add(BlankBlock{paper.say("blank_also"), 3});
    for (const ReportFinding &finding : paper.report().findings)
        paper.lookedBy(finding.history);
    notLookedBlocks(paper, nullptr);
    std::string title = paperTitle(PaperKind::Shopping, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

// SPDX-License-Identifier: Apache-2.0
// What is asked of who mends: each job with its place, photos, cautions and parts, and room for prices.
#include <algorithm>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/supplies.hpp"
#include "words/finding_words.hpp"
#include "words/supply_words.hpp"

namespace snugwalk::papers {
namespace {

using Findings = std::vector<ReportFinding>;

const Point *pointOf(const Paper &paper, const ReportFinding &finding)
{
    return paper.source().catalogue.find(finding.history.finding.point);
}

// "1, 3", the numbers of findings whose point `holds`.
template <typename Holds>
std::string numbersWhere(const Paper &paper, const Findings &findings, Holds holds)
{
    std::vector<std::string> numbers;
    for (const ReportFinding &finding : findings) {
        const Point *point = pointOf(paper, finding);
        if (point != nullptr && holds(*point))
            numbers.push_back(std::to_string(finding.number));
    }
    return join(numbers, ", ");
}

bool carries(const std::vector<std::string> &list, std::string_view slug)
{
    return std::find(list.begin(), list.end(), slug) != list.end();
}

void beforeTheWork(Paper &paper, const Findings &findings)
{
    paper.heading("before_work");
    TickBlock ticks;
    const auto line = [&](std::string_view phrase, const std::string &numbers) {
        if (!numbers.empty())
            ticks.lines.push_back(paper.say(phrase, {numbers}));
    };
    line("need_level",
         numbersWhere(paper, findings, [](const Point &p) { return carries(p.cautions, "b"); }));
    line("need_ladder", numbersWhere(paper, findings, [](const Point &p) {
             return carries(p.cautions, "a") || carries(p.tools, "ladder") || p.stand == "roof";
         }));
    line("need_dead", numbersWhere(paper, findings, [](const Point &p) { return carries(p.cautions, "e"); }));
    line("need_gas_shut",
         numbersWhere(paper, findings, [](const Point &p) { return carries(p.cautions, "c"); }));
    line("need_inside", numbersWhere(paper, findings, [](const Point &p) {
             return p.stand == "inside" || p.stand == "inside-front" || p.stand == "inside-rear";
         }));
    if (!ticks.lines.empty())
        paper.add(std::move(ticks));
    const SiteWords &site = paper.options().site;
    const std::pair<const char *, const std::string &> lines[] = {
        {"blank_access", site.access}, {"blank_power", site.power}, {"blank_key", site.key}};
    for (const auto &[label, typed] : lines) {
        if (typed.empty())
            paper.add(BlankBlock{paper.say(label), 1});
        else
            paper.text(paper.say(label) + ": " + typed);
    }
}

std::string toolsOf(const Paper &paper, const Point &point)
{
    std::vector<std::string> tools;
    tools.reserve(point.tools.size());
    for (const std::string &tool : point.tools)
        tools.push_back(paper.texts().word("tools", tool));
    return join(tools, ", ");
}

// In full where a code comes up first, its short line after that.
void jobCautions(Paper &paper, const Point &point, std::set<std::string> &told)
{
    CautionBlock block;
    for (const std::string &code : point.cautions)
        block.lines.push_back(told.insert(code).second ? paper.texts().cautionFull(code)
                                                       : paper.texts().cautionShort(code));
    if (!block.lines.empty())
        paper.add(std::move(block));
}

bool partsTable(Paper &paper, const std::vector<SupplyLine> &supplies, const Id &finding)
{
    const SupplyList &list = paper.source().supplies;
    std::vector<std::vector<std::string>> rows;
    for (const SupplyLine &line : supplies) {
        const SupplyItem *item = list.find(line.item);
        for (const SupplyUse &use : line.uses) {
            if (use.finding == finding && item != nullptr)
                rows.push_back({paper.texts().word("supplies", line.item),
                                supplyAmount(*item, use.si, paper.options().units) +
                                    (use.assumed ? ", " + paper.texts().phrase("supply_assumed") : ""),
                                supplyAmount(*item, line.onHandSi, paper.options().units)});
        }
    }
    return paper.table({paper.say("col_part"), paper.say("col_needed"), paper.say("col_on_hand")},
                       std::move(rows), {false, true, true});
}

// Whether it needs parts.
bool job(Paper &paper, const ReportFinding &finding, const std::vector<SupplyLine> &supplies,
         std::set<std::string> &told)
{
    findingBlocks(paper, finding);
    if (const Point *point = pointOf(paper, finding)) {
        jobCautions(paper, *point, told);
        if (isLicensedWork(paper, point->slug)) {
            paper.text(paper.say("licensed"));
            paper.add(BlankBlock{paper.say("blank_certificate"), 1});
        }
        paper.text(paper.say("stand_at", {paper.texts().standName(point->stand),
                                          paper.texts().standInstruction(point->stand)}));
        if (const std::string tools = toolsOf(paper, *point); !tools.empty())
            paper.text(paper.say("tools", {tools}), TextTone::Quiet);
        paper.text(paper.say("done_when", {paper.texts().point(point->slug).pass}));
    }
    return partsTable(paper, supplies, finding.history.finding.id);
}

void prices(Paper &paper, const Findings &findings)
{
    paper.heading("prices");
    std::vector<std::vector<std::string>> rows;
    for (const ReportFinding &finding : findings)
        rows.push_back(
            {std::to_string(finding.number), paper.title(finding.history.finding.point), "", "", ""});
    rows.push_back({"", paper.say("total"), "", "", ""});
    paper.table({paper.say("col_number"), paper.say("col_work"), paper.say("col_parts"),
                 paper.say("col_time"), paper.say("col_price")},
                std::move(rows), {true, false, true, true, true});
}

} // namespace

Result<Document> workOrderPaper(Paper paper)
{
    Result<Findings> chosen = chosenFindings(paper, paper.options().findings);
    if (!chosen)
        return chosen.error();
    if (paper.options().findings.empty()) // what is mended waits for a pass, not for work
        std::erase_if(*chosen, [](const ReportFinding &f) { return f.open.status != FindingStatus::Open; });
    for (std::size_t i = 0; i < chosen->size(); ++i)
        (*chosen)[i].number = static_cast<int>(i) + 1;
    rigTable(paper);
    for (const StateHold &hold : paper.source().standing.state.holds)
        paper.text(paper.say("hold_on_order",
                             {paper.title(hold.hit.point), paper.texts().word("forbids", hold.hit.forbids)}));
    beforeTheWork(paper, *chosen);
    drawingBlock(paper, *chosen);
    paper.heading("work");
    if (chosen->empty()) {
        paper.text(paper.texts().phrase("no_finding"));
        paper.add(BlankBlock{paper.say("blank_work"), 4});
    }
    const Standing &standing = paper.source().standing;
    const std::vector<SupplyLine> supplies =
        suppliesFor(paper.source().supplies, standing.history, {}, standing.now, 0);
    std::set<std::string> told;
    bool parts = false;
    for (const ReportFinding &finding : *chosen)
        parts = job(paper, finding, supplies, told) || parts;
    if (parts)
        paper.text(paper.texts().phrase("supply_basis"), TextTone::Quiet);
    prices(paper, *chosen);
    notLookedBlocks(paper, nullptr);
    paper.add(SignatureBlock{paper.say("sign_asks")});
    paper.add(SignatureBlock{paper.say("sign_takes")});
    std::string title = paperTitle(PaperKind::WorkOrder, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

// SPDX-License-Identifier: Apache-2.0
// For a buyer: how the rig stands, all that is written of it, and hashes by which that can be checked later.
#include <algorithm>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "walk/progress.hpp"
#include "words/finding_words.hpp"

namespace snugwalk::papers {
namespace {

constexpr std::size_t mostReadings = 4;

std::string number(int count) { return std::to_string(count); }

void fittingsLine(Paper &paper)
{
    std::vector<std::string> words;
    for (const std::string &fitting : allFittings(paper.rig()))
        words.push_back(paper.texts().word("fittings", fitting));
    if (!words.empty())
        paper.text(paper.say("fitted", {join(words, ", ")}), TextTone::Quiet);
}

void walksTable(Paper &paper)
{
    std::vector<std::vector<std::string>> rows;
    for (const WalkRecord &record : paper.history().walks) {
        const Counts counts = countMarks(record.walk, record.marks);
        rows.push_back({dayOf(record.walk.started), paper.texts().kindName(record.walk.kind), record.walk.by,
                        number(counts.pass), number(counts.attention), number(counts.couldNotLook),
                        number(counts.notLooked)});
        paper.lookedBy(record);
    }
    paper.heading("walks");
    if (!paper.table({paper.say("col_date"), paper.say("col_walk"), paper.say("col_by"),
                      paper.texts().phrase("state_pass"), paper.texts().phrase("state_attention"),
                      paper.texts().phrase("state_could_not_look"), paper.texts().phrase("state_not_looked")},
                     std::move(rows), {false, false, false, true, true, true, true}))
        paper.text(paper.texts().phrase("looked_none"));
}

void mendsTable(Paper &paper)
{
    std::vector<std::vector<std::string>> rows;
    for (const Mend &mend : paper.history().mends) {
        std::vector<std::string> points = mend.points;
        for (const Id &id : mend.findings) {
            const FindingHistory *finding = findHistory(paper.history(), id);
            if (finding != nullptr &&
                std::find(points.begin(), points.end(), finding->finding.point) == points.end())
                points.push_back(finding->finding.point);
        }
        rows.push_back({dayOf(mend.at), paper.titles(points), mendWords(mend), mend.by});
    }
    paper.heading("mends");
    if (!paper.table(
            {paper.say("col_date"), paper.say("col_point"), paper.say("col_done"), paper.say("col_by")},
            std::move(rows)))
        paper.text(paper.say("no_mend"));
}

void closedTable(Paper &paper)
{
    std::vector<std::vector<std::string>> rows;
    for (const FindingHistory &history : paper.history().findings) {
        const FindingStatus status = statusOf(history);
        if (status != FindingStatus::Confirmed && status != FindingStatus::Gone)
            continue;
        rows.push_back({dayOf(history.finding.opened),
                        findingWords(paper.rig(), history, paper.texts(), paper.options().units),
                        paper.texts().word("statuses", slug(status))});
        paper.lookedBy(history);
    }
    if (rows.empty())
        return;
    paper.heading("closed_findings");
    paper.table({paper.say("col_opened"), paper.say("col_finding"), paper.say("col_state")}, std::move(rows));
}

void roadLines(Paper &paper)
{
    Distance driven;
    for (const Trip &trip : paper.history().trips)
        driven = driven + trip.summary.length;
    paper.heading("road");
    if (paper.history().trips.empty())
        paper.text(paper.say("no_trip"));
    else
        paper.text(paper.say("driven", {number(static_cast<int>(paper.history().trips.size())),
                                        format(driven, paper.options().units),
                                        dayOf(paper.history().trips.front().start),
                                        dayOf(paper.history().trips.back().end)}));
    std::vector<std::vector<std::string>> rows;
    for (const Happening &happening : paper.history().happenings)
        rows.push_back({dayOf(happening.at), paper.texts().word("events", happening.kind), happening.note});
    paper.table({paper.say("col_date"), paper.say("col_happened"), paper.say("col_note")}, std::move(rows));
}

void proof(Paper &paper)
{
    paper.heading("proof");
    paper.text(paper.say("proof_about"));
    std::vector<std::vector<std::string>> heads;
    for (const ChainHead &head : paper.source().chains)
        heads.push_back({head.label.empty() ? head.stream.substr(0, 8) : head.label,
                         std::to_string(head.entries), head.hash.text()});
    paper.table({paper.say("col_device"), paper.say("col_entries"), paper.say("col_hash")}, std::move(heads),
                {false, true, false});
    hashTable(paper, paper.source().photos);
}

} // namespace

Result<Document> surveyPaper(Paper paper)
{
    Result<const WalkRecord *> walk = chosenWalk(paper, paper.options().walk, {"buying"});
    if (walk && *walk == nullptr)
        walk = chosenWalk(paper, std::nullopt, {"full_round"});
    if (!walk)
        return walk.error();
    rigTable(paper);
    fittingsLine(paper);
    stateBlocks(paper);
    if (*walk != nullptr)
        walkBlock(paper, **walk);
    drawingBlock(paper, paper.report().findings);
    paper.add(HeadingBlock{2, paper.texts().phrase("findings")});
    if (paper.report().findings.empty())
        paper.text(paper.texts().phrase("no_finding"));
    for (const ReportFinding &finding : paper.report().findings)
        findingBlocks(paper, finding);
    notLookedBlocks(paper, *walk);
    walksTable(paper);
    mendsTable(paper);
    closedTable(paper);
    recurringBlocks(paper);
    roadLines(paper);
    overTimePlots(paper);
    readingPlots(paper, mostReadings);
    mapBlock(paper, paper.report().findings, true);
    proof(paper);
    paper.add(SignatureBlock{paper.say("sign_sells")});
    paper.add(SignatureBlock{paper.say("sign_buys")});
    std::string title = paperTitle(PaperKind::Survey, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

// SPDX-License-Identifier: Apache-2.0
// The answer to a work order: what is written of each mend, and lines to fill in for the rest.
#include <algorithm>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "walk/mend_part.hpp"
#include "walk/progress.hpp"

namespace snugwalk::papers {
namespace {

constexpr int monthsBack = 12;

std::string partsOf(const Mend &mend)
{
    std::vector<std::string> parts;
    parts.reserve(mend.parts.size());
    for (const MendPart &part : mend.parts)
        parts.push_back(partText(part));
    return join(parts, "; ");
}

std::string minutesOf(const Mend &mend)
{
    return mend.minutes ? amountText(*mend.minutes) + "\u00a0min" : std::string();
}

bool isLately(const Paper &paper, const Mend &mend)
{
    const CivilDate since = addMonths(civilDate(paper.source().standing.now), -monthsBack);
    return civilDate(mend.at) >= since && mend.at.instant <= paper.source().standing.now.instant;
}

// Open ones, and those that somebody mended in the last twelve months.
std::vector<Id> findingsToTell(const Paper &paper)
{
    std::vector<Id> ids;
    for (const ReportFinding &finding : paper.report().findings)
        ids.push_back(finding.open.id);
    for (const FindingHistory &history : paper.history().findings) {
        const bool lately = std::any_of(history.mends.begin(), history.mends.end(),
                                        [&](const Mend &mend) { return isLately(paper, mend); });
        if (lately && std::find(ids.begin(), ids.end(), history.finding.id) == ids.end())
            ids.push_back(history.finding.id);
    }
    return ids;
}

void mendTable(Paper &paper, const std::vector<Mend> &mends)
{
    std::vector<std::vector<std::string>> rows;
    for (const Mend &mend : mends)
        rows.push_back({dayOf(mend.at), mend.by, mend.what, partsOf(mend), minutesOf(mend), mend.cost});
    paper.table({paper.say("col_date"), paper.say("col_by"), paper.say("col_done"), paper.say("col_parts"),
                 paper.say("col_time"), paper.say("col_cost")},
                std::move(rows), {false, false, false, false, true, true});
}

// Torque figures read at the point since the first of its mends, with the tool.
void torqueBlock(Paper &paper, const FindingHistory &history)
{
    const Point *point = paper.source().catalogue.find(history.finding.point);
    const bool asks =
        point != nullptr &&
        (std::find(point->cautions.begin(), point->cautions.end(), "d") != point->cautions.end() ||
         std::any_of(point->readings.begin(), point->readings.end(),
                     [](const ReadingSpec &r) { return r.dimension == Dimension::Torque; }));
    std::vector<std::vector<std::string>> rows;
    for (const WalkRecord &record : paper.history().walks) {
        const Mark *mark = findMark(record.marks, history.finding.point);
        if (mark == nullptr || history.mends.empty() || mark->at.instant < history.mends.front().at.instant)
            continue;
        for (const Reading &reading : mark->readings) {
            if (reading.dimension == Dimension::Torque)
                rows.push_back({dayOf(mark->at), mark->by, readingOf(paper, reading)});
        }
    }
    if (!paper.table({paper.say("col_date"), paper.say("col_by"), paper.say("col_torque")},
                     std::move(rows)) &&
        asks)
        paper.add(BlankBlock{paper.say("blank_torque"), 1});
}

void recheckBlock(Paper &paper, const FindingHistory &history, FindingStatus status)
{
    if (status == FindingStatus::Confirmed && !history.mends.empty()) {
        for (const Mark &pass : history.pointPasses) {
            if (pass.at.instant < history.mends.back().at.instant)
                continue;
            paper.lookedBy(pass.by);
            return paper.text(
                paper.say("recheck_passed", {dayOf(pass.at) + (pass.by.empty() ? "" : ", " + pass.by),
                                             paper.say("how_" + std::string(slug(pass.how)))}));
        }
    }
    paper.add(BlankBlock{paper.say("blank_recheck"), 1});
}

void answer(Paper &paper, const ReportFinding &finding)
{
    findingLine(paper, finding);
    if (finding.history.mends.empty()) {
        paper.add(BlankBlock{paper.say("blank_done"), 2});
        paper.add(BlankBlock{paper.say("blank_parts"), 1});
        paper.add(BlankBlock{paper.say("blank_time"), 1});
    } else {
        mendTable(paper, finding.history.mends);
    }
    if (isLicensedWork(paper, finding.history.finding.point)) {
        paper.text(paper.say("licensed"));
        paper.add(BlankBlock{paper.say("blank_certificate"), 1});
    }
    torqueBlock(paper, finding.history);
    recheckBlock(paper, finding.history, finding.open.status);
}

void otherWork(Paper &paper)
{
    std::vector<std::vector<std::string>> rows;
    for (const Mend &mend : paper.history().mends) {
        if (mend.findings.empty() && isLately(paper, mend))
            rows.push_back({dayOf(mend.at), mend.by,
                            paper.titles(mend.points) + (mend.what.empty() ? "" : ": " + mend.what),
                            partsOf(mend), minutesOf(mend), mend.cost});
    }
    if (rows.empty())
        return;
    paper.heading("other_work");
    paper.table({paper.say("col_date"), paper.say("col_by"), paper.say("col_done"), paper.say("col_parts"),
                 paper.say("col_time"), paper.say("col_cost")},
                std::move(rows), {false, false, false, false, true, true});
}

} // namespace

Result<Document> workDonePaper(Paper paper)
{
    const bool named = !paper.options().findings.empty();
    const std::vector<Id> ids = named ? paper.options().findings : findingsToTell(paper);
    Result<std::vector<ReportFinding>> chosen =
        ids.empty() ? std::vector<ReportFinding>() : chosenFindings(paper, ids);
    if (!chosen)
        return chosen.error();
    paper.text(paper.say("work_done_about"), TextTone::Quiet);
    paper.heading("findings_worked_on");
    if (chosen->empty()) {
        paper.text(paper.texts().phrase("no_finding"));
        paper.add(BlankBlock{paper.say("blank_done"), 4});
    }
    for (const ReportFinding &finding : *chosen)
        answer(paper, finding);
    if (!named)
        otherWork(paper);
    paper.add(BlankBlock{paper.say("blank_seen"), 3});
    notLookedBlocks(paper, nullptr);
    paper.add(SignatureBlock{paper.say("sign_worked")});
    std::string title = paperTitle(PaperKind::WorkDone, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

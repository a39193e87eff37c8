// SPDX-License-Identifier: Apache-2.0
// Seals and damp: when each place that keeps water out was looked at and mended, and moisture over time.
#include <algorithm>

#include "base/text.hpp"
#include "catalogue/pick.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "walk/draft.hpp"
#include "words/finding_words.hpp"
#include "words/place_words.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

// Points whose first consequence is that water gets in.
std::vector<const Point *> sealPoints(const Paper &paper)
{
    std::vector<const Point *> points;
    for (const Point &point : paper.source().catalogue.points()) {
        if (!point.consequence.empty() && point.consequence.front() == "W" && isOnRig(point, paper.rig()))
            points.push_back(&point);
    }
    return points;
}

const Mark *lastMark(const Paper &paper, const std::string &point)
{
    const Mark *last = nullptr;
    for (const WalkRecord &record : paper.history().walks) {
        const Mark *mark = findMark(record.marks, point);
        if (mark != nullptr && (last == nullptr || last->at.instant <= mark->at.instant))
            last = mark;
    }
    return last;
}

const Mend *lastMend(const Paper &paper, const std::string &point)
{
    const Mend *last = nullptr;
    for (const Mend &mend : paper.history().mends) {
        bool here = std::find(mend.points.begin(), mend.points.end(), point) != mend.points.end();
        for (const Id &id : mend.findings) {
            const FindingHistory *finding = findHistory(paper.history(), id);
            here = here || (finding != nullptr && finding->finding.point == point);
        }
        if (here && (last == nullptr || last->at.instant <= mend.at.instant))
            last = &mend;
    }
    return last;
}

void sealTable(Paper &paper, const std::vector<const Point *> &points)
{
    std::vector<std::vector<std::string>> rows;
    for (const Point *point : points) {
        const Mark *mark = lastMark(paper, point->slug);
        const Mend *mend = lastMend(paper, point->slug);
        rows.push_back(
            {paper.title(point->slug), mark != nullptr ? dayOf(mark->at) : "",
             stateWords(mark != nullptr ? mark->state : MarkState::NotLooked, paper.texts()),
             mark != nullptr ? mark->by : "",
             mend != nullptr ? dayOf(mend->at) + (mend->what.empty() ? "" : ", " + mend->what) : ""});
        if (mark != nullptr)
            paper.lookedBy(mark->by);
    }
    paper.heading("seals");
    paper.table({paper.say("col_point"), paper.say("col_date"), paper.say("col_mark"), paper.say("col_by"),
                 paper.say("col_mended")},
                std::move(rows));
}

std::string limitWords(const Paper &paper, const Point &point, const ReadingSpec &spec)
{
    const Limits limits = limitsFor(spec, point, paper.rig());
    std::vector<std::string> parts;
    if (limits.lowSi)
        parts.push_back(paper.texts().phrase("limit_low", {paper.amount(spec.dimension, *limits.lowSi)}));
    if (limits.highSi)
        parts.push_back(paper.texts().phrase("limit_high", {paper.amount(spec.dimension, *limits.highSi)}));
    if (!parts.empty() && !limits.basis.empty())
        parts.push_back(paper.texts().phrase("set_by_" + limits.basis));
    return join(parts, ", ");
}

bool dampTable(Paper &paper, const std::vector<const Point *> &points)
{
    std::vector<std::vector<std::string>> rows;
    for (const WalkRecord &record : paper.history().walks) {
        for (const Point *point : points) {
            const Mark *mark = findMark(record.marks, point->slug);
            if (mark == nullptr)
                continue;
            for (const Reading &reading : mark->readings) {
                const ReadingSpec *spec = point->reading(reading.slug);
                rows.push_back(
                    {dayOf(mark->at),
                     paper.title(point->slug) +
                         (reading.place.empty() ? "" : ", " + placeName(reading.place, paper.texts())),
                     paper.texts().word("readings", reading.slug),
                     paper.amount(reading.dimension, reading.si), reading.tool,
                     spec != nullptr ? limitWords(paper, *point, *spec) : ""});
                paper.lookedBy(mark->by);
            }
        }
    }
    paper.heading("damp");
    return paper.table({paper.say("col_date"), paper.say("col_point"), paper.say("col_reading"),
                        paper.say("col_figure"), paper.say("col_tool"), paper.say("col_limit")},
                       std::move(rows), {false, false, false, true, false, false});
}

} // namespace

Result<Document> sealsAndDampPaper(Paper paper)
{
    const std::vector<const Point *> points = sealPoints(paper);
    sealTable(paper, points);
    if (!dampTable(paper, points))
        paper.text(paper.say("no_reading"));
    paper.add(HeadingBlock{2, paper.texts().phrase("findings")});
    std::vector<ReportFinding> leaks;
    for (const ReportFinding &finding : paper.report().findings) {
        if (std::any_of(points.begin(), points.end(),
                        [&](const Point *p) { return p->slug == finding.history.finding.point; }))
            leaks.push_back(finding);
    }
    drawingBlock(paper, leaks);
    if (leaks.empty())
        paper.text(paper.texts().phrase("no_finding"));
    for (const ReportFinding &finding : leaks)
        findingBlocks(paper, finding);
    notLookedBlocks(paper, nullptr);
    std::string title = paperTitle(PaperKind::SealsAndDamp, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

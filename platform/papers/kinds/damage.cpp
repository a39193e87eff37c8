// SPDX-License-Identifier: Apache-2.0
// Damage for an insurer: what was found when and by whom, photos of then and now, and their hashes.
#include <algorithm>

#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "round/where_seen.hpp"

namespace snugwalk::papers {
namespace {

// Happenings this long before the first of the findings may have to do with them.
constexpr long long daysBefore = 60;

void happeningTable(Paper &paper, const std::vector<ReportFinding> &findings)
{
    if (findings.empty())
        return;
    Instant first = Instant::max();
    for (const ReportFinding &finding : findings)
        first = std::min(first, finding.history.finding.opened.instant);
    std::vector<std::vector<std::string>> rows;
    for (const Happening &happening : paper.history().happenings) {
        if (happening.at.instant >= first - std::chrono::hours(24 * daysBefore))
            rows.push_back(
                {timeWithZone(happening.at), paper.texts().word("events", happening.kind), happening.note});
    }
    if (rows.empty())
        return;
    paper.heading("happenings");
    paper.table({paper.say("col_date"), paper.say("col_happened"), paper.say("col_note")}, std::move(rows));
}

} // namespace

Result<Document> damagePaper(Paper paper)
{
    const Result<std::vector<ReportFinding>> chosen = chosenFindings(paper, paper.options().findings);
    if (!chosen)
        return chosen.error();
    if (chosen->empty())
        return Error{Errc::NotFound, "no open finding to tell of", paper.rig().name,
                     "mark what is damaged first, or name a finding"};
    rigTable(paper);
    paper.add(BlankBlock{paper.say("blank_policy"), 1});
    paper.add(BlankBlock{paper.say("blank_claim"), 1});
    drawingBlock(paper, *chosen);
    paper.add(HeadingBlock{2, paper.texts().phrase("findings")});
    std::vector<Photo> photos;
    for (const ReportFinding &finding : *chosen) {
        const FindingHistory &history = finding.history;
        findingBlocks(paper, finding);
        thenAndNowBlock(paper, history);
        paper.text(paper.say("first_seen", {timeWithZone(history.finding.opened)}));
        if (paper.options().place != PlaceDetail::LeftOut)
            placeBlock(paper, whereSeen(paper.history(), history));
        photos.insert(photos.end(), history.photos.begin(), history.photos.end());
    }
    mapBlock(paper, *chosen, false);
    if (paper.options().place == PlaceDetail::LeftOut)
        placeBlock(paper,
                   whereSeen(paper.history(), chosen->front().history)); // says that it is left out, once
    happeningTable(paper, *chosen);
    paper.add(BlankBlock{paper.say("blank_how"), 4});
    if (!photos.empty()) {
        paper.heading("proof");
        paper.text(paper.say("proof_photos"));
        hashTable(paper, photos);
    }
    notLookedBlocks(paper, nullptr);
    paper.add(SignatureBlock{paper.say("sign_owner")});
    std::string title = paperTitle(PaperKind::Damage, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

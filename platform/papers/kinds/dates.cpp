// SPDX-License-Identifier: Apache-2.0
// When each point is due: earliest, likely, latest, why, and where the figure is from.
#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"

namespace snugwalk::papers {
namespace {

std::string dateOrNone(const std::optional<CivilDate> &date) { return date ? formatDate(*date) : ""; }

void bandTable(Paper &paper, std::string_view heading, const std::vector<const DueBand *> &bands)
{
    if (bands.empty())
        return;
    std::vector<std::vector<std::string>> rows;
    for (const DueBand *band : bands)
        rows.push_back({paper.title(band->point), dateOrNone(band->early), dateOrNone(band->likely),
                        dateOrNone(band->late), reasonsOf(paper, *band),
                        paper.texts().phrase("basis_" + band->basis)});
    paper.add(HeadingBlock{2, paper.say(heading, {std::to_string(paper.options().days)})});
    paper.table({paper.say("col_point"), paper.say("col_early"), paper.say("col_likely"),
                 paper.say("col_late"), paper.say("col_why"), paper.say("col_origin")},
                std::move(rows));
}

} // namespace

Result<Document> datesPaper(Paper paper)
{
    const CivilDate horizon = addDays(civilDate(paper.source().standing.now), paper.options().days);
    std::vector<const DueBand *> past;
    std::vector<const DueBand *> soon;
    std::vector<const DueBand *> later;
    std::vector<std::string> moves;
    for (const DueBand &band : paper.source().standing.bands) {
        if (!band.likely) {
            if (band.everyMove)
                moves.push_back(band.point);
            continue;
        }
        if (!band.everLooked) // listed with what was not looked at
            continue;
        (band.pastDue ? past : band.early && *band.early <= horizon ? soon : later).push_back(&band);
    }
    paper.text(paper.say("dates_about"), TextTone::Quiet);
    if (past.empty() && soon.empty())
        paper.text(paper.say("nothing_due", {std::to_string(paper.options().days)}));
    bandTable(paper, "past_due", past);
    bandTable(paper, "due_within", soon);
    bandTable(paper, "due_later", later);
    if (!moves.empty()) {
        paper.heading("each_move");
        paper.text(paper.titles(moves) + ".");
    }
    for (const WalkRecord &record : paper.history().walks)
        paper.lookedBy(record);
    notLookedBlocks(paper, nullptr);
    std::string title = paperTitle(PaperKind::Dates, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

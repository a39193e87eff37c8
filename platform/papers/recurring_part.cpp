// SPDX-License-Identifier: Apache-2.0
// Where the rig keeps failing: its drawing with every place, and a table of them.
#include "base/text.hpp"
#include "papers/parts.hpp"
#include "round/recurring_places.hpp"
#include "words/place_words.hpp"

namespace snugwalk::papers {
namespace {

std::string stateWord(const Paper &paper, const RecurringPlace &place)
{
    return paper.texts().word("statuses", place.isOpen ? "open" : place.lastMend ? "mended" : "gone");
}

} // namespace

void recurringBlocks(Paper &paper)
{
    const RecurringPlaces all = recurringPlaces(paper.rig(), paper.history().findings);
    if (all.places.empty())
        return;
    paper.heading("recurring");
    RigDrawingBlock drawing{paper.rig(), {}, {}};
    std::vector<std::vector<std::string>> rows;
    for (const RecurringPlace &place : all.places) {
        const auto number = static_cast<int>(rows.size()) + 1;
        if (place.face && place.at)
            drawing.spots.push_back({number,
                                     Call::None,
                                     {place.place.named, place.face, place.at},
                                     place.isOpen ? SpotShape::EverOpen : SpotShape::EverMended,
                                     place.times});
        rows.push_back({std::to_string(number),
                        placeWords(paper.rig(), place.place, paper.texts(), paper.options().units),
                        paper.titles(place.points), std::to_string(place.times), dayOf(place.first),
                        dayOf(place.last), place.lastMend ? dayOf(*place.lastMend) : std::string(),
                        stateWord(paper, place)});
    }
    if (!drawing.spots.empty())
        paper.add(std::move(drawing)); // first: a heading stays with what follows it
    paper.text(paper.say("recurring_about"), TextTone::Quiet);
    paper.table({paper.say("col_number"), paper.say("col_where"), paper.say("col_what"),
                 paper.say("col_times"), paper.say("col_opened"), paper.say("col_last_found"),
                 paper.say("col_mended"), paper.say("col_state")},
                std::move(rows), {true, false, false, true, false, false, false, false});
    if (all.withoutPlace > 0)
        paper.text(paper.say("without_place", {std::to_string(all.withoutPlace)}), TextTone::Quiet);
}

} // namespace snugwalk::papers

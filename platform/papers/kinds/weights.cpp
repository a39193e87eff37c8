// SPDX-License-Identifier: Apache-2.0
// Ratings, the weighings that were kept, and lines for the next one.
#include <algorithm>

#include "base/text.hpp"
#include "papers/kinds/kinds.hpp"
#include "papers/parts.hpp"
#include "words/place_words.hpp"

namespace snugwalk::papers {
namespace {

// The plate that a weight is held against; nothing where it is not read or no plate says it.
std::optional<Mass> ratingFor(const Rig &rig, const Reading &reading)
{
    if (reading.slug == "gross-weight")
        return rig.ratings.gross;
    if (reading.slug == "nose-weight")
        return rig.ratings.nose;
    if (reading.slug == "wheel-load")
        return rig.tires.maxLoad;
    for (std::size_t i = 0; i < rig.ratings.axle.size(); ++i) {
        if (reading.slug == "axle-load" && reading.place == "axle " + std::to_string(i + 1))
            return rig.ratings.axle[i];
    }
    return std::nullopt;
}

std::string leftWords(const Paper &paper, const Reading &reading)
{
    const std::optional<Mass> rating = ratingFor(paper.rig(), reading);
    if (!rating)
        return {};
    const double left = rating->si() - reading.si;
    return left < 0.0 ? paper.say("over_by", {paper.amount(Dimension::Mass, -left)})
                      : paper.amount(Dimension::Mass, left);
}

void keptWeighings(Paper &paper)
{
    std::vector<std::vector<std::string>> rows;
    for (const WalkRecord &record : paper.history().walks) {
        for (const Mark &mark : record.marks) {
            const Point *point = paper.source().catalogue.find(mark.point);
            if (point == nullptr || point->zone != "weights")
                continue;
            for (const Reading &reading : mark.readings) {
                const std::optional<Mass> rating = ratingFor(paper.rig(), reading);
                rows.push_back(
                    {dayOf(mark.at),
                     paper.texts().word("readings", reading.slug) +
                         (reading.place.empty() ? "" : ", " + placeName(reading.place, paper.texts())),
                     paper.amount(reading.dimension, reading.si),
                     rating ? paper.amount(Dimension::Mass, rating->si()) : "", leftWords(paper, reading),
                     reading.tool, mark.by});
                paper.lookedBy(mark.by);
            }
        }
    }
    paper.heading("weighings");
    if (!paper.table({paper.say("col_date"), paper.say("col_what"), paper.say("col_weighed"),
                      paper.say("col_rating"), paper.say("col_left"), paper.say("col_tool"),
                      paper.say("col_by")},
                     std::move(rows), {false, false, true, true, true, false, false}))
        paper.text(paper.say("no_weighing"));
    else
        paper.text(paper.say("rating_is_makers"), TextTone::Quiet);
}

void nextWeighing(Paper &paper)
{
    paper.heading("next_weighing");
    const Point *point = paper.source().catalogue.find("gross-weight");
    paper.text(paper.texts().standInstruction(point != nullptr ? point->stand : "scales"));
    for (const char *label : {"blank_day_and_time", "blank_scale", "blank_loaded"})
        paper.add(BlankBlock{paper.say(label), 1});
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < paper.rig().measures.axles.size(); ++i)
        rows.push_back(
            {replaceAll(paper.texts().word("places", "axle"), "%1", std::to_string(i + 1)), "", "", ""});
    if (isTowed(paper.rig().kind))
        rows.push_back({paper.texts().word("readings", "nose-weight"), "", "", ""});
    rows.push_back({paper.texts().word("readings", "gross-weight"), "", "", ""});
    if (isTowed(paper.rig().kind))
        rows.push_back({paper.say("tow_vehicle_axles"), "", "", ""});
    paper.table({paper.say("col_what"), paper.say("col_left_side"), paper.say("col_right_side"),
                 paper.say("col_together")},
                std::move(rows), {false, true, true, true});
}

} // namespace

Result<Document> weightsPaper(Paper paper)
{
    rigTable(paper);
    keptWeighings(paper);
    std::vector<std::string> cautions;
    for (const Point &point : paper.source().catalogue.points()) {
        if (point.zone == "weights")
            cautions.insert(cautions.end(), point.cautions.begin(), point.cautions.end());
    }
    cautionBlock(paper, cautions);
    nextWeighing(paper);
    notLookedBlocks(paper, nullptr);
    std::string title = paperTitle(PaperKind::Weights, paper.texts());
    return std::move(paper).finish(std::move(title));
}

} // namespace snugwalk::papers

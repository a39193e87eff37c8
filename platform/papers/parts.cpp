// SPDX-License-Identifier: Apache-2.0
// State, walks, changes and dates in blocks.
#include "papers/parts.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "report/near_words.hpp"
#include "words/compare_words.hpp"
#include "words/finding_words.hpp"
#include "words/reason_words.hpp"
#include "words/rule_words.hpp"
#include "words/state_words.hpp"
#include "words/words.hpp"

namespace snugwalk::papers {
namespace {

std::vector<std::string> couldNotLook(const Paper &paper, const WalkRecord &record)
{
    std::vector<std::string> out;
    for (const Mark &mark : record.marks) {
        if (mark.state == MarkState::CouldNotLook)
            out.push_back(paper.title(mark.point) + " (" + paper.texts().word("reasons", mark.reason) +
                          (mark.note.empty() ? "" : ": " + mark.note) + ")");
    }
    return out;
}

// "Near Twizel."
std::string sentence(std::string words)
{
    if (!words.empty() && words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words + ".";
}

} // namespace

std::string reasonsOf(const Paper &paper, const DueBand &band)
{
    std::vector<std::string> told;
    for (const Reason &reason : band.reasons) {
        std::string words = reasonWords(reason, paper.texts(), paper.options().units);
        if (std::find(told.begin(), told.end(), words) == told.end())
            told.push_back(std::move(words));
    }
    return join(told, "; ");
}

void stateBlocks(Paper &paper)
{
    const RigState &state = paper.source().standing.state;
    paper.text(stateSentence(paper.source().standing, paper.texts()), TextTone::State);
    for (const StateHold &hold : state.holds)
        paper.text(paper.texts().phrase("hold_word") + ": " + holdWords(hold, paper.texts()));
    paper.lookedBy(state.by);
}

void placeBlock(Paper &paper, const std::optional<GeoPoint> &where)
{
    if (!where || !isValid(*where))
        return;
    const auto told = placeToTell(where, paper.options().place);
    if (!told)
        return paper.text(paper.say("place_left_out"), TextTone::Quiet);
    const bool coarse = paper.options().place == PlaceDetail::Coarse;
    const int digits = coarse ? 2 : 5;
    const auto near = nearToTell(paper.source().places, where, paper.options().place);
    const std::string named =
        near ? " " + sentence(nearWords(near, paper.options().place, paper.texts(), paper.options().units))
             : std::string();
    paper.text(paper.say(coarse ? "place_coarse" : "place_exact",
                         {fixed(told->latitude, digits), fixed(told->longitude, digits)}) +
                   named,
               TextTone::Quiet);
}

void cautionBlock(Paper &paper, const std::vector<std::string> &codes)
{
    CautionBlock block;
    for (const std::string &code : std::set<std::string>(codes.begin(), codes.end()))
        block.lines.push_back(paper.texts().cautionFull(code));
    if (!block.lines.empty())
        paper.add(std::move(block));
}

void walkBlock(Paper &paper, const WalkRecord &record)
{
    const Walk &walk = record.walk;
    paper.text(paper.texts().kindName(walk.kind) + ", " + timeWithZone(walk.started) +
               (walk.by.empty() ? "" : ", " + walk.by) + ": " +
               countWords(countMarks(walk, record.marks), paper.texts()) + "." +
               (walk.finished ? "" : " " + paper.say("walk_open")));
    placeBlock(paper, walk.where);
    paper.lookedBy(record);
}

void notLookedBlocks(Paper &paper, const WalkRecord *record)
{
    const Texts &texts = paper.texts();
    paper.heading("not_looked");
    if (record == nullptr && paper.report().lastWalk) {
        record = &*paper.report().lastWalk;
        paper.text(
            paper.say("by_last_walk", {texts.kindName(record->walk.kind), dayOf(record->walk.started)}),
            TextTone::Quiet);
    }
    const std::size_t said = paper.size();
    std::set<std::string> told;
    if (record != nullptr) {
        const std::vector<std::string> missed = couldNotLook(paper, *record);
        if (!missed.empty())
            paper.text(texts.phrase("unseen_list", {join(missed, ", ")}));
        std::vector<std::string> unmarked;
        for (const TapeLine &line : record->walk.tape) {
            for (const std::string &point : line.points) {
                told.insert(point);
                if (findMark(record->marks, point) == nullptr)
                    unmarked.push_back(point);
            }
        }
        if (!unmarked.empty())
            paper.text(texts.phrase("not_looked_list", {paper.titles(unmarked)}));
        if (record->walk.budget && !record->walk.budget->leftOut.empty())
            paper.text(paper.say("budget", {fixed(record->walk.budget->minutes, 0),
                                            paper.titles(record->walk.budget->leftOut)}));
    }
    std::vector<std::string> never;
    for (const DueBand &band : paper.source().standing.bands) {
        if (!band.everLooked && !told.contains(band.point))
            never.push_back(band.point);
    }
    if (!never.empty())
        paper.text(paper.say("never_looked", {std::to_string(never.size()), paper.titles(never)}));
    for (const HiddenInSight &hidden : paper.source().standing.state.hidden)
        paper.text(paper.title(hidden.point) + ": " +
                   texts.phrase("hidden_by", {hidden.by.by, formatDate(hidden.by.date)}));
    if (paper.size() == said)
        paper.text(paper.say("nothing_unlooked"));
}

void changeBlocks(Paper &paper, const Comparison &comparison, const std::vector<ReportPhotoPair> &pairs)
{
    const Texts &texts = paper.texts();
    std::vector<std::string> counts;
    for (const Change change : allChanges) {
        if (const int count = comparison.pointCounts.of(change); count > 0)
            counts.push_back(paper.say("count_of", {std::to_string(count), changeWords(change, texts)}));
    }
    if (!counts.empty())
        paper.text(join(counts, ", ") + ".");
    std::vector<std::vector<std::string>> rows;
    for (const PointChange &p : comparison.points) {
        if (p.change != Change::Same && p.change != Change::FirstLook)
            rows.push_back({paper.title(p.point), stateWords(p.then, texts), stateWords(p.now, texts),
                            changeWords(p.change, texts)});
    }
    paper.table(
        {paper.say("col_point"), paper.say("col_then"), paper.say("col_now"), paper.say("col_change")},
        std::move(rows));
    for (const ReportPhotoPair &pair : pairs) {
        const FindingHistory *finding = findHistory(paper.history(), pair.finding);
        PairBlock block{finding ? findingWords(paper.rig(), *finding, texts, paper.options().units) : "",
                        std::nullopt, std::nullopt};
        if (pair.then)
            block.then = paper.picture(*pair.then, texts.phrase("photo_then"));
        if (pair.now)
            block.now = paper.picture(*pair.now, texts.phrase("photo_now"));
        paper.add(std::move(block));
    }
}

void dueBlocks(Paper &paper, std::size_t most)
{
    std::vector<std::vector<std::string>> rows;
    std::size_t more = 0;
    for (const DueBand &band : paper.report().due) {
        if (!band.everLooked) // listed with what was not looked at
            continue;
        if (rows.size() < most)
            rows.push_back({paper.title(band.point), whenWords(band, paper.texts()), reasonsOf(paper, band)});
        else
            ++more;
    }
    if (!paper.table({paper.say("col_point"), paper.say("col_when"), paper.say("col_why")}, std::move(rows)))
        paper.text(paper.texts().phrase("no_due"));
    if (more > 0)
        paper.text(paper.say(more == 1 ? "due_more_1" : "due_more_n", {std::to_string(more)}),
                   TextTone::Quiet);
}

} // namespace snugwalk::papers

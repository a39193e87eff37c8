// SPDX-License-Identifier: Apache-2.0
// Findings, their photos and the rig's plates in blocks.
#include <algorithm>

#include "base/text.hpp"
#include "papers/parts.hpp"
#include "rig/names.hpp"
#include "words/finding_words.hpp"
#include "words/place_words.hpp"
#include "words/reason_words.hpp"

namespace snugwalk::papers {
namespace {

std::string byAndDay(const LocalTime &at, const std::string &by)
{
    return dayOf(at) + (by.empty() ? "" : ", " + by);
}

template <typename Q>
std::string plate(const Paper &paper, const std::optional<Q> &value)
{
    return value ? format(*value, paper.options().units) : paper.say("plate_unread");
}

} // namespace

std::string findingCall(const Paper &paper, const ReportFinding &finding)
{
    return finding.open.status == FindingStatus::Mended ? paper.texts().phrase("waits")
                                                        : callWords(finding.open.concern, paper.texts());
}

std::vector<std::string> findingStory(const Paper &paper, const FindingHistory &finding)
{
    std::vector<std::pair<Instant, std::string>> story;
    for (const Look &look : finding.looks)
        story.emplace_back(look.at.instant,
                           byAndDay(look.at, look.by) + ": " +
                               lookWords(finding, look, paper.texts(), paper.options().units));
    for (const Mend &mend : finding.mends)
        story.emplace_back(mend.at.instant, paper.texts().phrase("mended_on", {byAndDay(mend.at, mend.by)}) +
                                                ": " + mendWords(mend));
    std::stable_sort(story.begin(), story.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    std::vector<std::string> lines;
    lines.reserve(story.size());
    for (auto &[at, words] : story)
        lines.push_back(std::move(words));
    return lines;
}

void drawingBlock(Paper &paper, std::span<const ReportFinding> findings)
{
    RigDrawingBlock block{paper.rig(), {}, paper.texts().phrase("from_above")};
    for (const ReportFinding &f : findings) {
        if (!f.history.finding.place.isEmpty())
            block.spots.push_back({f.number, f.open.concern.call, f.history.finding.place});
    }
    if (!block.spots.empty())
        paper.add(std::move(block));
}

void findingBlocks(Paper &paper, const ReportFinding &finding)
{
    FindingBlock block{finding.number,
                       finding.open.concern.call,
                       findingWords(paper.rig(), finding.history, paper.texts(), paper.options().units),
                       {}};
    if (std::string call = findingCall(paper, finding); !call.empty())
        block.lines.push_back(std::move(call));
    for (std::string &line : findingStory(paper, finding.history))
        block.lines.push_back(std::move(line));
    paper.add(std::move(block));
    PhotosBlock photos;
    for (const Photo &photo : finding.history.photos)
        photos.photos.push_back(paper.picture(photo));
    if (!photos.photos.empty())
        paper.add(std::move(photos));
    paper.lookedBy(finding.history);
}

void findingLine(Paper &paper, const ReportFinding &finding)
{
    FindingBlock block{finding.number,
                       finding.open.concern.call,
                       findingWords(paper.rig(), finding.history, paper.texts(), paper.options().units),
                       {}};
    if (std::string call = findingCall(paper, finding); !call.empty())
        block.lines.push_back(std::move(call));
    paper.add(std::move(block));
    paper.lookedBy(finding.history);
}

void hashTable(Paper &paper, const std::vector<Photo> &photos)
{
    std::vector<std::vector<std::string>> rows;
    for (const Photo &photo : photos) {
        const FindingHistory *finding = findHistory(paper.history(), photo.finding);
        const std::string about = finding != nullptr ? paper.title(finding->finding.point) : photo.caption;
        rows.push_back({paper.takenWords(photo), about, photo.hash});
    }
    paper.table({paper.say("col_photo"), paper.say("col_what"), paper.say("col_hash")}, std::move(rows));
}

bool isLicensedWork(const Paper &paper, std::string_view slug)
{
    const Point *point = paper.source().catalogue.find(slug);
    return point != nullptr &&
           std::any_of(point->cautions.begin(), point->cautions.end(),
                       [](const std::string &code) { return code == "c" || code == "e"; });
}

std::string readingOf(const Paper &paper, const Reading &reading)
{
    return paper.texts().word("readings", reading.slug) + " " + paper.amount(reading.dimension, reading.si) +
           (reading.place.empty() ? "" : ", " + placeName(reading.place, paper.texts())) +
           (reading.tool.empty() ? "" : ", " + paper.say("with_tool", {reading.tool}));
}

void thenAndNowBlock(Paper &paper, const FindingHistory &finding)
{
    if (finding.photos.size() < 2)
        return;
    paper.add(PairBlock{findingWords(paper.rig(), finding, paper.texts(), paper.options().units),
                        paper.picture(finding.photos.front(), paper.texts().phrase("photo_then")),
                        paper.picture(finding.photos.back(), paper.texts().phrase("photo_now"))});
}

void rigTable(Paper &paper)
{
    const Rig &rig = paper.rig();
    const UnitSystem units = paper.options().units;
    const auto member = [&](const char *slug) { return paper.texts().word("rig_members", slug); };
    const std::string plateOrigin = paper.texts().phrase("basis_maker");
    const std::string measured = paper.say("as_typed");
    std::vector<std::vector<std::string>> rows = {
        {member("kind"), paper.texts().word("rig_kinds", snugwalk::slug(rig.kind)), ""},
        {member("measures.length"), format(rig.measures.length, units), measured},
        {member("ratings.gvwr"), plate(paper, rig.ratings.gross), plateOrigin}};
    for (std::size_t i = 0; i < rig.measures.axles.size(); ++i) {
        const std::optional<Mass> rating = i < rig.ratings.axle.size() ? rig.ratings.axle[i] : std::nullopt;
        rows.push_back(
            {paper.say("axle_rating", {std::to_string(i + 1)}), plate(paper, rating), plateOrigin});
    }
    if (isTowed(rig.kind))
        rows.push_back({member("ratings.nose_max"), plate(paper, rig.ratings.nose), plateOrigin});
    rows.push_back({member("tires.size"), rig.tires.size.empty() ? paper.say("plate_unread") : rig.tires.size,
                    plateOrigin});
    rows.push_back({member("tires.placard"), plate(paper, rig.tires.placard), plateOrigin});
    rows.push_back({member("tires.max_pressure"), plate(paper, rig.tires.maxPressure), plateOrigin});
    rows.push_back({member("wheels.torque"), plate(paper, rig.wheels.torque), plateOrigin});
    for (auto &row : rows) {
        if (row[1] == paper.say("plate_unread"))
            row[2].clear();
    }
    paper.table({paper.say("col_what"), paper.say("col_figure"), paper.say("col_origin")}, std::move(rows));
}

Result<std::vector<ReportFinding>> chosenFindings(const Paper &paper, const std::vector<Id> &ids)
{
    if (ids.empty())
        return paper.report().findings;
    std::vector<ReportFinding> chosen;
    for (const Id &id : ids) {
        const FindingHistory *history = findHistory(paper.history(), id);
        if (history == nullptr)
            return Error{Errc::NotFound, "no such finding of this rig: " + id.shortText(), "finding",
                         "choose one of its findings"};
        const auto &open = paper.report().findings;
        const auto known =
            std::find_if(open.begin(), open.end(), [&](const ReportFinding &f) { return f.open.id == id; });
        if (known != open.end()) {
            chosen.push_back(*known);
        } else {
            OpenFinding closed;
            closed.id = id;
            closed.point = history->finding.point;
            closed.defect = history->finding.defect;
            closed.status = statusOf(*history);
            chosen.push_back({0, closed, *history});
        }
        chosen.back().number = static_cast<int>(chosen.size());
    }
    return chosen;
}

Result<const WalkRecord *> chosenWalk(const Paper &paper, const std::optional<Id> &id,
                                      std::initializer_list<std::string_view> kinds)
{
    const WalkRecord *found = nullptr;
    for (const WalkRecord &record : paper.history().walks) {
        if (id ? record.walk.id == *id
               : kinds.size() == 0 || std::find(kinds.begin(), kinds.end(), record.walk.kind) != kinds.end())
            found = &record;
    }
    if (id && found == nullptr)
        return Error{Errc::NotFound, "no such walk of this rig: " + id->shortText(), "walk",
                     "choose one of its walks"};
    return found;
}

} // namespace snugwalk::papers

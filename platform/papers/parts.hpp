// SPDX-License-Identifier: Apache-2.0
// Parts that several kinds of document share.
#pragma once

#include <span>

#include "papers/paper.hpp"

namespace snugwalk::papers {

/// The state's sentence, its holds with who accepted them.
void stateBlocks(Paper &paper);
/// Place on earth as far as it may be told, or that it is left out; nothing where none is known.
void placeBlock(Paper &paper, const std::optional<GeoPoint> &where);

/// "mend soon, 64", or that it is mended and waits for a pass.
[[nodiscard]] std::string findingCall(const Paper &paper, const ReportFinding &finding);
/// Each look and mend of a finding, a line each.
[[nodiscard]] std::vector<std::string> findingStory(const Paper &paper, const FindingHistory &finding);
/// The rig with a numbered shape a finding; nothing without a place of any.
void drawingBlock(Paper &paper, std::span<const ReportFinding> findings);
/// Every place where something was ever found, with how often: drawing and table; nothing without a finding.
void recurringBlocks(Paper &paper);
/// Where a finding was seen first, as far as anybody knows: the look's own place, else that of its walk.
[[nodiscard]] std::optional<GeoPoint> whereSeen(const Paper &paper, const FindingHistory &history);
/// Where they were seen, each by its number; with `trips` the rig's ways too, where places are exact. Nothing
/// where places are left out or not known.
void mapBlock(Paper &paper, std::span<const ReportFinding> findings, bool trips);
/// A finding with its story and its photos.
void findingBlocks(Paper &paper, const ReportFinding &finding);
/// First photo and last, where there are two.
void thenAndNowBlock(Paper &paper, const FindingHistory &finding);

/// In full, each code once.
void cautionBlock(Paper &paper, const std::vector<std::string> &codes);

/// Kind, time, who, counts.
void walkBlock(Paper &paper, const WalkRecord &record);
/// What could not be looked at and why, what has no mark, what a limit of time left out, what no look is
/// written for, and what the owner hid: in every document. `record` is the walk it tells of; null: the last
/// one.
void notLookedBlocks(Paper &paper, const WalkRecord *record);
/// Counts and what is not the same, then photos side by side.
void changeBlocks(Paper &paper, const Comparison &comparison, const std::vector<ReportPhotoPair> &pairs);
/// Why a point is due, each ground once.
[[nodiscard]] std::string reasonsOf(const Paper &paper, const DueBand &band);
/// Due points that somebody has looked at before, `most` at most, and how many more there are.
void dueBlocks(Paper &paper, std::size_t most);

/// Readings on their way to a limit, those that meet it first, `most` at most; of each the place that is
/// first.
void readingPlots(Paper &paper, std::size_t most);
/// Weathering and shake by month, cost by year, the worst concern from walk to walk: those with data.
void overTimePlots(Paper &paper);

/// "Wheel nut torque 130 N·m, wheel 1L, with torque wrench".
[[nodiscard]] std::string readingOf(const Paper &paper, const Reading &reading);
/// A finding as one line with its call, without story and photos.
void findingLine(Paper &paper, const ReportFinding &finding);
/// Date, what it shows and BLAKE2b-256 of its bytes, a photo a row.
void hashTable(Paper &paper, const std::vector<Photo> &photos);
/// Code c or e: mending it belongs to a licensed person.
[[nodiscard]] bool isLicensedWork(const Paper &paper, std::string_view point);

/// What the plates say, "maker's figure: not typed in" where nobody has read them.
void rigTable(Paper &paper);

/// Every finding as reports number them: open ones with their concern first, then those of `ids` that are no
/// longer open. With ids only those; `NotFound` names the one that is not this rig's.
[[nodiscard]] Result<std::vector<ReportFinding>> chosenFindings(const Paper &paper,
                                                                const std::vector<Id> &ids);
/// The walk of `id`, or the last one of a kind; null where there is none. `NotFound` for a walk of another
/// rig.
[[nodiscard]] Result<const WalkRecord *> chosenWalk(const Paper &paper, const std::optional<Id> &id,
                                                    std::initializer_list<std::string_view> kinds);

} // namespace snugwalk::papers

// SPDX-License-Identifier: Apache-2.0
// What people do, as acts of the logbook. Each is one transaction, on the disk when it returns.
#pragma once

#include <string>
#include <vector>

#include "catalogue/pick.hpp"
#include "logbook/logbook.hpp"
#include "logbook/photo_facts.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"
#include "walk/acceptance.hpp"
#include "walk/draft.hpp"
#include "walk/progress.hpp"

namespace snugwalk {

/// Who does it, when and where; time defaults to the logbook's clock.
struct Doer {
    std::string by;
    std::optional<LocalTime> at;
    std::optional<GeoPoint> where;
};

/// Adds a rig, or with its id set, changes the fields that differ. `InvalidInput` with the first
/// fault of `validate`.
[[nodiscard]] Result<Id> saveRig(Logbook &book, const Rig &rig, const Doer &doer);

/// Starts a walk. `Conflict` when one of this rig is not finished: go on with that one, or finish it.
[[nodiscard]] Result<Walk> startWalk(Logbook &book, const Catalogue &catalogue, const Rig &rig,
                                     const std::string &kind, const std::vector<std::string> &extraSets,
                                     const std::vector<std::string> &extraPoints, const Doer &doer);

/// The same with a tape laid out before, such as one that fits a time budget.
[[nodiscard]] Result<Walk> startWalk(Logbook &book, const Rig &rig, const std::string &kind,
                                     std::vector<TapeLine> tape, const std::optional<WalkBudget> &budget,
                                     const Doer &doer);

struct MarkReceipt {
    Id mark;                  ///< null when none was written
    std::vector<Id> findings; ///< opened or looked at again, as in the draft
    std::vector<Id> looks;
    std::vector<LimitWarning> warnings;
    Id walk = Id{}; ///< null for a look between walks
};

/// Marks a point of an unfinished walk; marking again replaces. Findings of the draft are written in
/// the same act. \returns errors of `checkMark`, `NotFound` for a point that is not on this walk,
/// `Conflict` when the walk is finished.
[[nodiscard]] Result<MarkReceipt> markPoint(Logbook &book, const Catalogue &catalogue, const Rig &rig,
                                            const Walk &walk, const MarkDraft &draft, const Doer &doer);

/// Marks all points of a line that have no mark yet, in one act. `InvalidInput` for attention, which
/// needs a finding, and for could not look without a reason; `NotFound` and `Conflict` as `markPoint`.
[[nodiscard]] Status markLine(Logbook &book, const Walk &walk, const TapeLine &line, MarkState state,
                              LookedHow how, const std::string &reason, const Doer &doer);

/// Opens a finding, or looks at one again (`draft.same`), without marking a whole point.
/// Where the rig's open walk has the point, it is written on that walk and the point's mark becomes
/// attention, keeping its note and readings; a finding that is gone leaves the mark alone, for it says
/// nothing of the rest of the point. Else it is a look between walks: no walk, no mark, and comparisons of
/// walks see it by its time alone.
/// Readings go to the mark, and to the look where there is none.
/// \returns errors of `checkMark`, `NotFound` for a point that the catalogue or the rig does not have.
[[nodiscard]] Result<MarkReceipt> lookAtFinding(Logbook &book, const Catalogue &catalogue, const Rig &rig,
                                                const std::string &point, const FindingDraft &draft,
                                                const std::vector<TypedReading> &readings, const Doer &doer);

[[nodiscard]] Status finishWalk(Logbook &book, const Walk &walk, const Doer &doer);

/// `NotFound` when a finding does not exist, `InvalidInput` for an unknown action or for none named.
[[nodiscard]] Result<Id> addMend(Logbook &book, const Mend &mend, const Doer &doer);

/// Says how much of a supply is on hand now; a later count replaces it. `OutOfRange` below zero.
[[nodiscard]] Result<Id> setStock(Logbook &book, const Stock &stock, const Doer &doer);

/// Enters a photo whose bytes are already in the photo folder.
[[nodiscard]] Result<Id> addPhoto(Logbook &book, const Photo &photo, const Doer &doer);

/// `Conflict` when a trip of the same rig, start and source is there already.
[[nodiscard]] Result<Id> addTrip(Logbook &book, const Trip &trip, const Doer &doer);
/// Writes what differs of a trip that is there; the entry supersedes, nothing is lost. `NotFound`.
[[nodiscard]] Status changeTrip(Logbook &book, const Trip &trip, const Doer &doer);
[[nodiscard]] Result<Id> addStay(Logbook &book, const Stay &stay, const Doer &doer);
/// `Conflict` when a record of the same rig, place and days is there; `OutOfRange` for an impossible place,
/// no day or more than `weatherDaysLimit`; `InvalidInput` for days out of order.
[[nodiscard]] Result<Id> addWeather(Logbook &book, const WeatherRecord &record, const Doer &doer);
[[nodiscard]] Result<Id> addHappening(Logbook &book, const Happening &happening, const Doer &doer);

/// Writes that one person moves once although a point could not be looked at. `Conflict` unless the
/// point's mark on that walk says so, or when `role` is not the owner; `InvalidInput` without reason,
/// what may follow, or a name. Whether the point is on a found hold is asked first: round/accept.hpp.
[[nodiscard]] Result<Id> acceptMissed(Logbook &book, const Acceptance &acceptance, Role role,
                                      const Doer &doer);

} // namespace snugwalk

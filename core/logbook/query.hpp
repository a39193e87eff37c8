// SPDX-License-Identifier: Apache-2.0
// Reading the logbook back as values. Lists are oldest first.
#pragma once

#include <vector>

#include "logbook/logbook.hpp"
#include "rig/rig.hpp"
#include "rig/rig_version.hpp"
#include "trip/trip.hpp"
#include "trip/weather_record.hpp"
#include "walk/acceptance.hpp"
#include "walk/finding_state.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

[[nodiscard]] Result<std::vector<Rig>> allRigs(Logbook &book);
/// `NotFound` when there is none; by id, id prefix, or whole name (case as typed).
[[nodiscard]] Result<Rig> rigOf(Logbook &book, const Id &id);
[[nodiscard]] Result<Rig> findRig(Logbook &book, std::string_view nameOrId);

/// What the rig was from each moment on at which it changed, folded from the logbook's own entries by
/// the times that people gave; oldest first, the last being the rig as it is now.
[[nodiscard]] Result<std::vector<RigVersion>> rigVersions(Logbook &book, const Id &rig);
/// The rig as it stood at `when`; before it was entered, as it was entered first.
[[nodiscard]] Result<Rig> rigAt(Logbook &book, const Id &rig, Instant when);

[[nodiscard]] Result<std::vector<Walk>> walksOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<Walk> walkOf(Logbook &book, const Id &id);
/// The walk of a rig that is not finished, or nothing.
[[nodiscard]] Result<std::optional<Walk>> openWalk(Logbook &book, const Id &rig);
/// One mark a point; a mark taken back is not among them.
[[nodiscard]] Result<std::vector<Mark>> marksOf(Logbook &book, const Id &walk);

[[nodiscard]] Result<Finding> findingOf(Logbook &book, const Id &id);
[[nodiscard]] Result<std::vector<FindingHistory>> findingHistories(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<Photo>> photosOf(Logbook &book, const Id &rig);

[[nodiscard]] Result<std::vector<Mend>> mendsOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<Trip>> tripsOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<Stay>> staysOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<WeatherRecord>> weatherOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<Happening>> happeningsOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<std::vector<Acceptance>> acceptancesOf(Logbook &book, const Id &rig);

/// One a photo at most.
[[nodiscard]] Result<std::vector<Drawing>> drawingsOf(Logbook &book, const Id &rig);
[[nodiscard]] Result<Photo> photoOf(Logbook &book, const Id &id);
[[nodiscard]] Result<std::vector<Stock>> stocksOf(Logbook &book, const Id &rig);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// What is measured in the real app, one file each. Nothing is judged.
#pragma once

#include "app_life.hpp"
#include "watched_app.hpp"

namespace snugwalk::speed {

/// A full round at a person's pace.
void roundOfFrames(journey::Life &life, WatchedApp &watch);
/// The logbook's shelves from one end to the other.
void scrollTheLogbook(journey::Life &life, WatchedApp &watch);
/// Tap to mark, beside bare commits.
void latencyOfMarks(journey::Life &life, WatchedApp &watch);
/// A long track, then photos.
void importTrack(journey::Life &life, WatchedApp &watch);
void importPhotos(journey::Life &life, WatchedApp &watch);

} // namespace snugwalk::speed

// SPDX-License-Identifier: Apache-2.0
// Acts and queries for the points that an owner adds, hides and looks at at other intervals.
#pragma once

#include "catalogue/own.hpp"
#include "logbook/acts.hpp"

namespace snugwalk {

/// Everything the owner of a rig chose, oldest first.
[[nodiscard]] Result<OwnChoices> ownChoicesOf(Logbook &book, const Id &rig);

/// Adds a point to one rig; its slug is made from the title, who and when are those of `doer`.
/// \param catalogue the rig's own (`Catalogue::withOwn`)
/// \returns the slug; errors of `checkOwnPoint`, `Conflict` when the rig has a point of this title.
[[nodiscard]] Result<std::string> addOwnPoint(Logbook &book, const Catalogue &catalogue, const Id &rig,
                                              OwnPoint point, const Doer &doer);

/// Takes a point out of a rig's walks and due list. What was written about it stays, and so do its
/// holds and open findings. `NotFound` for an unknown point, `Conflict` when it is hidden already,
/// `InvalidInput` for a point of road safety or fire when nobody is named.
[[nodiscard]] Status hidePoint(Logbook &book, const Catalogue &catalogue, const Id &rig,
                               const std::string &point, const std::string &note, const Doer &doer);
/// `NotFound` for an unknown point, `Conflict` when it is not hidden.
[[nodiscard]] Status showPoint(Logbook &book, const Catalogue &catalogue, const Id &rig,
                               const std::string &point, const Doer &doer);

/// Sets an interval; limits not given stay as they were set before.
/// \param product the catalogue without the owner's choices: what an interval is held against
/// \returns errors of `checkOwnInterval`.
[[nodiscard]] Status setOwnInterval(Logbook &book, const Catalogue &product, const Id &rig,
                                    const OwnInterval &every, const Doer &doer);
/// Back to the catalogue's interval. `NotFound` when there is none of the owner's.
[[nodiscard]] Status clearOwnInterval(Logbook &book, const Id &rig, const std::string &point,
                                      const Doer &doer);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Taking back what was written outside a walk: a mend, a count, a figure of the rig, the end of a walk.
#pragma once

#include "logbook/logbook.hpp"

namespace snugwalk {

/// This device's last act outside a walk that still stands.
struct LastAct {
    Id act;
    std::string by;
    LocalTime at;
    std::string type; ///< of the first thing it wrote: mend, stock, rig, walk (its end), trip, finding …
    Id entity;        ///< that thing
};

/// \returns `NotFound` when nothing is left to take back.
[[nodiscard]] Result<LastAct> lastAct(Logbook &book);

/// \returns `Conflict` when the act began a rig or a walk: others stand on those.
[[nodiscard]] Status mayTakeBack(Logbook &book, const Id &act);

/// Sets every field that the act set to what it was before, by new entries. A thing that someone wrote over
/// since stays as it is. \param act of `lastAct` \returns `Conflict` as `mayTakeBack`, when something was
/// written here since, and when all that it set was
///          written over.
[[nodiscard]] Result<Receipt> takeBack(Logbook &book, const Id &act, const std::string &by);

} // namespace snugwalk

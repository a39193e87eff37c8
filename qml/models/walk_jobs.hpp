// SPDX-License-Identifier: Apache-2.0
// What a tap on the walk writes, as jobs for the worker: values in, the walk as it now stands out.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "act_desk.hpp"
#include "attention_form.hpp"
#include "walk/draft.hpp"

namespace snugwalk {

/// A walk as the disk has it after a job.
struct WalkNow {
    Walk walk;
    std::vector<Mark> marks;
    std::vector<Error> mishaps; ///< photos that could not be kept; the mark itself stands
};

/// Where and by whom, with everything a job needs beside the logbook.
struct WalkJob {
    const AppParts *parts = nullptr;
    Rig rig;
    Walk walk;
    Doer doer;
    std::shared_ptr<std::vector<int>> taps;     ///< acts that each tap wrote; touched by jobs only
    std::shared_ptr<const Catalogue> catalogue; ///< the rig's own
};

/// Marks `points` alike, readings with theirs. Points that were never marked and carry no reading go
/// in one act; the rest are marked again one by one.
[[nodiscard]] Result<WalkNow> markAlike(Logbook &book, const WalkJob &job, const TapeLine &line,
                                        const MarkDraft &how, const std::vector<std::string> &points,
                                        const std::vector<std::vector<TypedReading>> &readings);

/// Writes a mark a form; then keeps the photos with what is drawn on them, which never undo the mark.
/// A photo that waited in the folder of taken ones leaves it once it is kept.
[[nodiscard]] Result<WalkNow> markAttention(Logbook &book, const WalkJob &job,
                                            const std::vector<AttentionForm> &forms);

/// Takes back what the last tap wrote; taps of an earlier run of the app one act at a time.
[[nodiscard]] Result<WalkNow> takeBack(Logbook &book, const WalkJob &job);
[[nodiscard]] Result<WalkNow> finishNow(Logbook &book, const WalkJob &job);

} // namespace snugwalk

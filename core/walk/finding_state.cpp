// SPDX-License-Identifier: Apache-2.0
// The life of a finding from its looks, mends and the passes of its point.
#include "walk/finding_state.hpp"

#include <algorithm>

namespace snugwalk {

std::string_view slug(FindingStatus status)
{
    switch (status) {
    case FindingStatus::Open:
        return "open";
    case FindingStatus::Mended:
        return "mended";
    case FindingStatus::Confirmed:
        return "confirmed";
    case FindingStatus::Gone:
        return "gone";
    }
    return "open";
}

const Look *lookAt(const FindingHistory &history, Instant when)
{
    const Look *last = nullptr;
    for (const Look &look : history.looks) {
        if (look.at.instant <= when && (last == nullptr || last->at.instant <= look.at.instant))
            last = &look;
    }
    return last;
}

const Drawing *drawingOf(const FindingHistory &history, const Id &photo)
{
    const auto found = std::find_if(history.drawings.begin(), history.drawings.end(),
                                    [&](const Drawing &drawing) { return drawing.photo == photo; });
    return found == history.drawings.end() ? nullptr : &*found;
}

FindingStatus statusAt(const FindingHistory &history, Instant when)
{
    const Look *look = lookAt(history, when);
    std::optional<Instant> mended;
    for (const Mend &mend : history.mends) {
        if (mend.at.instant <= when && (!mended || mend.at.instant > *mended))
            mended = mend.at.instant;
    }
    const bool lookIsLast = look != nullptr && (!mended || look->at.instant > *mended);
    if (lookIsLast && look->grade == 0) {
        // what came back after the mend and then went away was not mended
        const bool cameBack =
            mended && std::any_of(history.looks.begin(), history.looks.end(), [&](const Look &l) {
                return l.grade > 0 && l.at.instant > *mended && l.at.instant <= when;
            });
        return mended && !cameBack ? FindingStatus::Confirmed : FindingStatus::Gone;
    }
    if (!mended || lookIsLast)
        return FindingStatus::Open;
    const bool confirmed =
        std::any_of(history.pointPasses.begin(), history.pointPasses.end(),
                    [&](const Mark &pass) { return pass.at.instant > *mended && pass.at.instant <= when; });
    return confirmed ? FindingStatus::Confirmed : FindingStatus::Mended;
}

FindingStatus statusOf(const FindingHistory &history) { return statusAt(history, Instant::max()); }

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The life of a finding cut at two moments.
#include "compare/findings.hpp"

#include <algorithm>
#include <cmath>

#include "due/ordered.hpp"

namespace snugwalk {
namespace {

// Photos are often copied from the camera after the walk.
constexpr auto sameEvening = std::chrono::hours(24);

// The look of the walk itself, or else the last one by the moment.
const Look *lookOf(const FindingHistory &f, const Moment &moment)
{
    const Look *own = nullptr;
    for (const Look &look : f.looks) {
        if (look.walk == moment.walk && look.at.instant <= moment.at)
            own = &look;
    }
    return own != nullptr ? own : lastLook(f, moment.at);
}

bool mendedWithin(const FindingHistory &f, Instant after, Instant by)
{
    return std::any_of(f.mends.begin(), f.mends.end(),
                       [&](const Mend &m) { return m.at.instant > after && m.at.instant <= by; });
}

bool seenWithin(const FindingHistory &f, Instant after, Instant by)
{
    return std::any_of(f.looks.begin(), f.looks.end(), [&](const Look &look) {
        return look.grade > 0 && look.at.instant > after && look.at.instant <= by;
    });
}

Change byGrade(const Look &then, const Look &now)
{
    if (then.grade != now.grade)
        return now.grade > then.grade ? Change::Worse : Change::Better;
    const int size = compareExtent(then.extent, now.extent);
    if (size == 0)
        return Change::Same;
    return size > 0 ? Change::Worse : Change::Better;
}

void closed(FindingChange &c, FindingStatus status)
{
    c.change = status == FindingStatus::Gone ? Change::Gone : Change::Mended;
    if (status == FindingStatus::Mended)
        c.reason = "confirm_pending";
}

void stillOpen(FindingChange &c, const FindingHistory &f, const Look *before, const Moment &then,
               const Moment &now)
{
    const Look *seen = lookOf(f, now);
    const bool since = seen != nullptr && seen->at.instant > then.at;
    if (since && mendedWithin(f, then.at, seen->at.instant)) {
        c.change = Change::New;
        c.reason = "came_back";
    } else if (since && seen->walk == now.walk && before != nullptr) {
        c.change = byGrade(*before, *seen);
    } else {
        c.change = Change::NotLooked;
        if (now.mark == MarkState::Pass)
            c.reason = "point_passed";
    }
}

// A photo belongs to the look it proves; without one, to the walk it was added on or soon after.
void sortPhotos(FindingChange &c, const FindingHistory &f, const Look *before, const Look *after,
                const Moment &now)
{
    for (const Photo &photo : f.photos) {
        const bool loose = photo.look.isNull();
        const Instant added = photo.added.instant;
        const bool isThen = loose ? added < now.started : before != nullptr && photo.look == before->id;
        const bool isNow = loose ? added >= now.started && added <= now.ended + sameEvening
                                 : after != nullptr && photo.look == after->id;
        if (isThen)
            c.thenPhotos.push_back(photo.id);
        else if (isNow)
            c.nowPhotos.push_back(photo.id);
    }
}

} // namespace

int compareExtent(const std::optional<Extent> &then, const std::optional<Extent> &now)
{
    if (!then || !now || then->dimension != now->dimension)
        return 0;
    const double difference = now->si - then->si;
    double least = 0.1 * std::abs(then->si);
    if (then->dimension == Dimension::Length)
        least = std::max(least, 1e-3);
    if (then->dimension == Dimension::Count)
        least = 0.5;
    // a difference of exactly the least counts as none, whatever the last bit says
    if (!(std::abs(difference) > least * (1.0 + 1e-9)))
        return 0;
    return difference > 0.0 ? 1 : -1;
}

std::optional<FindingChange> compareFinding(const FindingHistory &f, const Moment &then, const Moment &now)
{
    if (f.finding.opened.instant > now.at)
        return std::nullopt;
    const bool knownThen = f.finding.opened.instant <= then.at;
    const FindingStatus before = knownThen ? statusAt(f, then.at) : FindingStatus::Gone;
    const FindingStatus after = statusAt(f, now.at);
    const bool openThen = knownThen && before == FindingStatus::Open;
    const bool openNow = after == FindingStatus::Open;
    if (!openThen && !openNow && knownThen && !seenWithin(f, then.at, now.at))
        return std::nullopt; // closed before, and nothing happened since
    const Look *thenLook = openThen ? lookOf(f, then) : nullptr;
    const Look *nowLook = lookOf(f, now);
    if (nowLook != nullptr && nowLook->at.instant <= then.at)
        nowLook = nullptr;

    FindingChange c;
    c.finding = f.finding.id;
    if (thenLook != nullptr) {
        c.thenGrade = thenLook->grade;
        c.thenExtent = thenLook->extent;
    }
    if (nowLook != nullptr) {
        c.nowGrade = nowLook->grade;
        c.nowExtent = nowLook->extent;
    }
    if (!openNow) {
        closed(c, after);
    } else if (openThen) {
        stillOpen(c, f, thenLook, then, now);
    } else {
        c.change = Change::New;
        if (knownThen)
            c.reason = "came_back";
        else if (now.mark == MarkState::Pass)
            c.reason = "point_passed";
    }
    sortPhotos(c, f, thenLook, nowLook, now);
    return c;
}

std::optional<Change> worstOf(const std::vector<FindingChange> &changes)
{
    for (const Change change : {Change::New, Change::Worse, Change::Same, Change::Better}) {
        if (std::any_of(changes.begin(), changes.end(),
                        [&](const FindingChange &f) { return f.change == change; }))
            return change;
    }
    return std::nullopt;
}

} // namespace snugwalk

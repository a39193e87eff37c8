// SPDX-License-Identifier: Apache-2.0
// Gathering oldest first; nothing here is an average.
#include "round/recurring_places.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace snugwalk {
namespace {

double apart(const RigPosition &a, const RigPosition &b)
{
    return std::hypot(a.aft.si() - b.aft.si(), a.right.si() - b.right.si(), a.up.si() - b.up.si());
}

// The place that a finding belongs to, or null.
RecurringPlace *placeOf(std::vector<RecurringPlace> &places, const RecurringPlace &found)
{
    RecurringPlace *nearest = nullptr;
    double least = std::numeric_limits<double>::infinity();
    for (RecurringPlace &place : places) {
        if (!found.place.named.empty() && place.place.named == found.place.named)
            return &place;
        if (place.face != found.face || place.at.has_value() != found.at.has_value())
            continue;
        if (!found.at) {
            if (found.face && place.place.named.empty() && found.place.named.empty())
                return &place;
            continue;
        }
        const double distance = apart(*place.at, *found.at);
        if (distance <= handsBreadth && distance < least) {
            least = distance;
            nearest = &place;
        }
    }
    return nearest;
}

RecurringPlace placeAlone(const Rig &rig, const FindingHistory &history)
{
    RecurringPlace place;
    place.place = history.finding.place;
    place.face = place.place.face;
    place.at = place.place.at;
    if (!place.at && !place.place.named.empty()) {
        if (const auto known = findNamedPlace(rig, place.place.named)) {
            place.face = known->face;
            place.at = known->at;
        }
    }
    place.first = history.finding.opened;
    return place;
}

void add(RecurringPlace &place, const FindingHistory &history)
{
    const FindingStatus status = statusOf(history);
    const std::vector<LocalTime> times = timesFound(history);
    place.times += static_cast<int>(times.size());
    place.isOpen = place.isOpen || status == FindingStatus::Open || status == FindingStatus::Mended;
    place.findings.push_back(history.finding.id);
    if (place.last.instant < times.back().instant)
        place.last = times.back();
    for (const Mend &mend : history.mends) {
        if (!place.lastMend || place.lastMend->instant < mend.at.instant)
            place.lastMend = mend.at;
    }
    if (std::find(place.points.begin(), place.points.end(), history.finding.point) == place.points.end())
        place.points.push_back(history.finding.point);
}

} // namespace

std::vector<LocalTime> timesFound(const FindingHistory &finding)
{
    std::vector<LocalTime> times{finding.finding.opened};
    bool isThere = true;
    std::size_t mends = 0;
    for (const Look &look : finding.looks) {
        for (; mends < finding.mends.size() && finding.mends[mends].at.instant < look.at.instant; ++mends)
            isThere = false;
        if (look.grade > 0 && !isThere)
            times.push_back(look.at);
        isThere = look.grade > 0;
    }
    return times;
}

RecurringPlaces recurringPlaces(const Rig &rig, const std::vector<FindingHistory> &findings)
{
    std::vector<const FindingHistory *> order;
    for (const FindingHistory &history : findings)
        order.push_back(&history);
    std::stable_sort(order.begin(), order.end(), [](const FindingHistory *a, const FindingHistory *b) {
        return a->finding.opened.instant < b->finding.opened.instant;
    });
    RecurringPlaces out;
    for (const FindingHistory *history : order) {
        if (history->finding.place.isEmpty()) {
            ++out.withoutPlace;
            continue;
        }
        RecurringPlace found = placeAlone(rig, *history);
        RecurringPlace *place = placeOf(out.places, found);
        if (place == nullptr) {
            out.places.push_back(std::move(found));
            place = &out.places.back();
        }
        add(*place, *history);
    }
    std::stable_sort(out.places.begin(), out.places.end(),
                     [](const RecurringPlace &a, const RecurringPlace &b) {
                         return a.times != b.times ? a.times > b.times : a.last.instant > b.last.instant;
                     });
    return out;
}

} // namespace snugwalk

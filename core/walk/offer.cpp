// SPDX-License-Identifier: Apache-2.0
// Ordering by distance on the rig.
#include "walk/offer.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace snugwalk {
namespace {

constexpr Length nearLimit = metres(0.3); // common practice, no source

// A named place's own coordinate, where only its name was given.
RigPlace located(const Rig &rig, const RigPlace &place)
{
    if (place.at || place.named.empty())
        return place;
    return findNamedPlace(rig, place.named).value_or(place);
}

// On one face the coordinate that runs into it is often not given, and says nothing.
Length apart(const RigPlace &from, const RigPlace &to)
{
    const Length aft = from.at->aft - to.at->aft;
    const Length right = from.at->right - to.at->right;
    const Length up = from.at->up - to.at->up;
    if (from.face != to.face || !from.face)
        return metres(std::hypot(aft.si(), right.si(), up.si()));
    switch (*from.face) {
    case Face::Top:
    case Face::Underside:
        return metres(std::hypot(aft.si(), right.si()));
    case Face::Left:
    case Face::Right:
        return metres(std::hypot(aft.si(), up.si()));
    case Face::Front:
    case Face::Rear:
        return metres(std::hypot(right.si(), up.si()));
    }
    return {};
}

std::optional<Length> between(const Rig &rig, const RigPlace &a, const RigPlace &b)
{
    if (!a.named.empty() && a.named == b.named && !(a.at && b.at))
        return Length();
    const RigPlace from = located(rig, a);
    const RigPlace to = located(rig, b);
    if (!from.at || !to.at)
        return std::nullopt;
    return apart(from, to);
}

Instant lastLooked(const FindingHistory &history)
{
    const Look *last = lookAt(history, Instant::max());
    return last == nullptr ? history.finding.opened.instant : last->at.instant;
}

} // namespace

std::vector<OfferedFinding> offerFor(const std::vector<FindingHistory> &histories, std::string_view point,
                                     const Rig &rig, const RigPlace &place)
{
    struct Row {
        OfferedFinding offer;
        Instant looked;
    };
    std::vector<Row> rows;
    for (const FindingHistory &history : histories) {
        const FindingStatus status = statusOf(history);
        if (history.finding.point != point ||
            (status != FindingStatus::Open && status != FindingStatus::Mended))
            continue;
        const auto away = between(rig, place, history.finding.place);
        rows.push_back({{history.finding.id, status, away, away && *away <= nearLimit}, lastLooked(history)});
    }
    std::sort(rows.begin(), rows.end(), [](const Row &a, const Row &b) {
        const auto rank = [](const Row &r) {
            return std::tuple(!r.offer.near,
                              r.offer.away ? r.offer.away->si() : std::numeric_limits<double>::infinity());
        };
        if (rank(a) != rank(b))
            return rank(a) < rank(b);
        return a.looked != b.looked ? a.looked > b.looked : a.offer.finding < b.offer.finding;
    });
    std::vector<OfferedFinding> offers;
    for (const Row &row : rows)
        offers.push_back(row.offer);
    return offers;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The first rule to fire, and the order of the list.
#include "due/band.hpp"

#include <algorithm>
#include <tuple>

#include "catalogue/pick.hpp"
#include "due/clock.hpp"
#include "due/rules.hpp"

namespace snugwalk {
namespace {

bool isEachMove(const Point &point)
{
    const auto &uses = point.interval.uses;
    return std::any_of(uses.begin(), uses.end(), [](const std::string &use) {
        return use == "every_move" || use == "first_of_day" || use == "first_of_trip" || use == "at_stop";
    });
}

void addLookReasons(const PointClock &clock, DueBand &band)
{
    band.everLooked = clock.lastLook.has_value();
    if (clock.lastLook) {
        band.lastLook = civilDate(*clock.lastLook);
        band.reasons.push_back({"last_look", formatDate(*band.lastLook), std::nullopt, Dimension::Count});
    }
    if (clock.from && clock.startedBy != "look")
        band.reasons.push_back({"mended", clock.startedBy, std::nullopt, Dimension::Count});
    if (clock.couldNotLook)
        band.reasons.push_back(
            {"could_not_look", formatDate(civilDate(*clock.couldNotLook)), std::nullopt, Dimension::Count});
}

void takeFirst(const std::vector<Firing> &all, DueBand &band)
{
    const auto by = [&](CivilDate Firing::*date) {
        return std::min_element(all.begin(), all.end(),
                                [&](const Firing &a, const Firing &b) { return a.*date < b.*date; });
    };
    band.early = by(&Firing::early)->early;
    band.likely = by(&Firing::likely)->likely;
    band.late = by(&Firing::late)->late;
    band.rule = by(&Firing::likely)->rule;
    band.basis = by(&Firing::likely)->basis;
}

void judgeAgainst(CivilDate today, DueBand &band)
{
    band.dueNow = band.early && *band.early <= today;
    band.pastDue = band.late && *band.late < today;
    band.alert = band.severity == Severity::IV    ? band.late
                 : band.severity == Severity::III ? band.likely
                                                  : band.early;
}

std::optional<DueBand> bandOf(DueContext &context, const Point &point, const PointClock &clock)
{
    if (clock.notFitted)
        return std::nullopt;
    DueBand band;
    band.point = point.slug;
    band.severity = severityOf(point);
    band.everyMove = isEachMove(point);
    addLookReasons(clock, band);
    if (clock.lastLook)
        band.afterLook = likelyAfterLook(context, point, *clock.lastLook);
    const std::vector<Firing> all = firings(context, point, clock, band);
    if (!all.empty()) {
        takeFirst(all, band);
    } else {
        if (!band.everyMove)
            return std::nullopt;
        band.rule = "every_move";
        band.basis = "common_practice";
    }
    judgeAgainst(civilDate(context.now), band);
    return band;
}

bool comesBefore(const DueBand &a, const DueBand &b)
{
    const auto key = [](const DueBand &band) {
        const CivilDate never = std::chrono::year(9999) / 12 / 31;
        const int severity = static_cast<int>(band.severity);
        return std::tuple(!band.pastDue, band.pastDue ? severity : 0, band.early.value_or(never), severity,
                          band.point);
    };
    return key(a) < key(b);
}

} // namespace

std::vector<DueBand> dueBands(const Catalogue &catalogue, const RigHistory &history, LocalTime now,
                              const Ahead &ahead)
{
    DueContext context(catalogue, history, now, ahead);
    const auto clocks = clocksOf(history, now);
    std::vector<DueBand> bands;
    for (const Point &point : catalogue.points()) {
        if (!applies(point, history.rig))
            continue;
        const auto clock = clocks.find(point.slug);
        if (auto band = bandOf(context, point, clock == clocks.end() ? PointClock() : clock->second))
            bands.push_back(std::move(*band));
    }
    std::sort(bands.begin(), bands.end(), comesBefore);
    return bands;
}

const DueBand *findBand(const std::vector<DueBand> &bands, std::string_view point)
{
    const auto found =
        std::find_if(bands.begin(), bands.end(), [&](const DueBand &band) { return band.point == point; });
    return found == bands.end() ? nullptr : &*found;
}

} // namespace snugwalk

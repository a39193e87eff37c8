// SPDX-License-Identifier: Apache-2.0
// The tests by name.
#include "concern/checks.hpp"

#include <algorithm>
#include <cmath>

#include "due/events.hpp"

namespace snugwalk {
namespace {

// A limit worked out by a product may be a hair above what was printed; at the limit nothing holds.
constexpr double rounding = 1e-12;
bool isUnder(double si, double limit) { return si < limit * (1.0 - rounding); }
bool isOver(double si, double limit) { return si > limit * (1.0 + rounding); }

/// One check on one point, with the numbers read there last.
struct Case {
    const ConcernContext &context;
    const HoldRule &rule;
    const HoldCheck &check;
    const Point &point;
    const std::vector<LastReading> &readings;
    std::vector<HoldHit> &hits;

    [[nodiscard]] double figure(std::string_view name) const { return check.figure(name)->si; }
    template <typename Test>
    void each(Test holds) const
    {
        for (const LastReading &last : readings) {
            if (last.reading.slug == check.reading && holds(last))
                addHit(hits, rule, point, last.reading);
        }
    }
};

std::vector<double> otherHubs(const Case &c, const LastReading &hub)
{
    std::vector<double> others;
    for (const LastReading &other : c.readings) {
        if (other.reading.place != hub.reading.place && other.walk == hub.walk &&
            other.reading.slug == hub.reading.slug)
            others.push_back(other.reading.si);
    }
    return others;
}

bool allAlikeAfterDescent(const Case &c, const LastReading &hub)
{
    const auto within = std::chrono::duration<double>(c.figure("after_descent"));
    const auto &happened = c.context.history.happenings;
    const bool descended = std::any_of(happened.begin(), happened.end(), [&](const Happening &h) {
        return std::find(c.check.events.begin(), c.check.events.end(), h.kind) != c.check.events.end() &&
               h.at.instant <= hub.at.instant && hub.at.instant - h.at.instant <= within;
    });
    const std::vector<double> others = otherHubs(c, hub);
    return descended && !others.empty() && std::all_of(others.begin(), others.end(), [&](double other) {
               return std::abs(other - hub.reading.si) <= c.figure("alike");
           });
}

void hubTooHot(const Case &c)
{
    c.each([&](const LastReading &hub) {
        return hub.reading.si > c.figure("hot") && !allAlikeAfterDescent(c, hub);
    });
}

void hubOverMates(const Case &c)
{
    c.each([&](const LastReading &hub) {
        const std::vector<double> others = otherHubs(c, hub);
        return !others.empty() && hub.reading.si > c.figure("warm") &&
               hub.reading.si - *std::max_element(others.begin(), others.end()) > c.figure("over_mates");
    });
}

// "axle 2" is the second of the plates; without a number the load of a single axle.
std::optional<Mass> axleRating(const Rig &rig, const std::string &place)
{
    const auto digit = std::find_if(place.begin(), place.end(), [](char c) { return c >= '1' && c <= '9'; });
    if (digit == place.end() && rig.ratings.axle.size() != 1)
        return std::nullopt;
    const auto index = digit == place.end() ? 0U : static_cast<std::size_t>(*digit - '1');
    return index < rig.ratings.axle.size() ? rig.ratings.axle[index] : std::nullopt;
}

void over(const Case &c, const std::optional<Mass> &rating)
{
    c.each([&](const LastReading &last) { return rating && isOver(last.reading.si, rating->si()); });
}

// What one tire carries at the pressure read last at `wheel`; full load when nobody read it.
std::optional<Mass> tireRating(const Case &c, const std::string &wheel)
{
    const Tires &tires = c.context.history.rig.tires;
    if (!tires.maxLoad)
        return std::nullopt;
    double share = 1.0;
    for (const LastReading &last : lastReadings(c.context, "tire-pressure")) {
        if (last.reading.slug == "cold-pressure" && last.reading.place == wheel && tires.maxPressure &&
            last.reading.si > 0.0)
            share = std::min(1.0, std::pow(last.reading.si / tires.maxPressure->si(), c.figure("exponent")));
    }
    return *tires.maxLoad * share;
}

void overTireRating(const Case &c)
{
    c.each([&](const LastReading &last) {
        const std::optional<Mass> rating = tireRating(c, last.reading.place);
        return rating && isOver(last.reading.si, rating->si());
    });
}

std::optional<Mass> measuredGross(const ConcernContext &context)
{
    for (const LastReading &last : lastReadings(context, "gross-weight")) {
        if (last.reading.slug == "gross-weight")
            return Mass::fromSi(last.reading.si);
    }
    return std::nullopt;
}

std::optional<Mass> leastNose(const Case &c)
{
    const std::optional<Mass> gross = measuredGross(c.context);
    const auto share = [&](std::string_view name) {
        return gross ? std::optional(*gross * c.figure(name)) : std::nullopt;
    };
    switch (c.context.history.rig.practice) {
    case Practice::NorthAmerica:
        return share("north_america");
    case Practice::AustraliaNewZealand:
        return share("australia_new_zealand");
    case Practice::Europe: {
        const Mass least = Mass::fromSi(c.figure("europe_least"));
        return std::max(share("europe").value_or(least), least);
    }
    case Practice::Other:
        break;
    }
    return std::nullopt;
}

void underNoseLowEnd(const Case &c)
{
    const std::optional<Mass> least = leastNose(c);
    c.each([&](const LastReading &last) { return least && isUnder(last.reading.si, least->si()); });
}

void run(const Case &c)
{
    const Rig &rig = c.context.history.rig;
    const std::string &name = c.check.name;
    if (name == "hub_too_hot")
        hubTooHot(c);
    else if (name == "hub_over_mates")
        hubOverMates(c);
    else if (name == "over_axle_rating")
        c.each([&](const LastReading &last) {
            const std::optional<Mass> rating = axleRating(rig, last.reading.place);
            return rating && last.reading.si > rating->si();
        });
    else if (name == "over_gross_rating")
        over(c, rig.ratings.gross);
    else if (name == "over_nose_rating")
        over(c, rig.ratings.nose);
    else if (name == "over_tire_rating")
        overTireRating(c);
    else if (name == "under_nose_low_end")
        underNoseLowEnd(c);
}

bool concerns(const HoldCheck &check, const Point &point)
{
    if (std::find(check.except.begin(), check.except.end(), point.slug) != check.except.end())
        return false;
    return std::any_of(check.consequences.begin(), check.consequences.end(), [&](const std::string &letter) {
        return letter == point.forbids || std::find(point.consequence.begin(), point.consequence.end(),
                                                    letter) != point.consequence.end();
    });
}

// The holding happenings alone: an earlier harmless one must not hide them.
RigHistory onlyEvents(const RigHistory &history, const std::vector<std::string> &events)
{
    RigHistory only;
    for (const Happening &h : history.happenings) {
        if (std::find(events.begin(), events.end(), h.kind) != events.end())
            only.happenings.push_back(h);
    }
    return only;
}

} // namespace

void addHit(std::vector<HoldHit> &hits, const HoldRule &rule, const Point &point, const Reading &reading)
{
    HoldHit hit = hitOf(rule, point);
    hit.place = reading.place;
    hit.si = reading.si;
    hit.dimension = reading.dimension;
    if (std::find(hits.begin(), hits.end(), hit) == hits.end())
        hits.push_back(std::move(hit));
}

void addChecks(const ConcernContext &context, const Point &point, const std::vector<LastReading> &readings,
               std::vector<HoldHit> &hits)
{
    for (const auto &[rule, check] : context.catalogue.holds().checksOf(point.slug))
        run({context, *rule, *check, point, readings, hits});
}

std::vector<HoldHit> holdsByEvent(const ConcernContext &context, const Point &point)
{
    std::vector<HoldHit> hits;
    if (context.history.happenings.empty())
        return hits;
    for (const auto &[rule, check] : context.catalogue.holds().eventChecks()) {
        const RigHistory only = onlyEvents(context.history, check->events);
        if (only.happenings.empty() || !concerns(*check, point))
            continue;
        PointClock clock;
        const PointHistory &of = context.index.of(point.slug);
        if (const Mark *look = of.lastLook())
            clock.lastWork = look->at;
        for (const Mend *mend : of.work) { // work that stands for a look, as in due/clock
            const bool stands = mend->action == "replace" || mend->action == "retorque";
            if (stands && (!clock.lastWork || mend->at.instant > clock.lastWork->instant))
                clock.lastWork = mend->at;
        }
        if (const Happening *open = unanswered(context.catalogue, only, point, clock, context.now)) {
            HoldHit hit = hitOf(*rule, point);
            hit.place = open->kind;
            hits.push_back(std::move(hit));
        }
    }
    return hits;
}

} // namespace snugwalk

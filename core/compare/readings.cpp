// SPDX-License-Identifier: Apache-2.0
// Readings in pairs, against their uncertainty.
#include "compare/readings.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "walk/draft.hpp"

namespace snugwalk {
namespace {

constexpr double changedFrom = 1.96; // two sides, 5 %
constexpr double worseFrom = 1.645;  // one side, 5 %
constexpr double otherHand = 2.0;    // another unit, person or instrument: common practice, no source

bool isSameThing(const Reading *a, const Reading *b) { return a->slug == b->slug && a->place == b->place; }

bool byThing(const Reading *a, const Reading *b)
{
    return std::tie(a->slug, a->place) < std::tie(b->slug, b->place);
}

// By reading and place, each once: the largest where a mark has it twice.
std::vector<const Reading *> byName(const std::vector<Reading> &readings)
{
    std::vector<const Reading *> all;
    all.reserve(readings.size());
    for (const Reading &r : readings)
        all.push_back(&r);
    std::sort(all.begin(), all.end(), [](const Reading *a, const Reading *b) {
        return std::tie(a->slug, a->place, b->si) < std::tie(b->slug, b->place, a->si);
    });
    all.erase(std::unique(all.begin(), all.end(), isSameThing), all.end());
    return all;
}

// "degC" and "°C" are one unit.
bool isSameUnit(Dimension dimension, const std::string &a, const std::string &b)
{
    if (a == b)
        return true;
    const auto one = findUnit(dimension, a);
    const auto other = findUnit(dimension, b);
    return one && other && one->symbol == other->symbol;
}

} // namespace

double worseDirection(double then, double now, std::optional<double> low, std::optional<double> high)
{
    if (high && (!low || now > *high))
        return 1.0;
    if (low && (!high || now < *low))
        return -1.0;
    if (low && high && then > *high)
        return 1.0; // back inside from above
    return low && high && then < *low ? -1.0 : 0.0;
}

ReadingChange compareReading(const Reading &then, const Reading &now, std::optional<double> lowSi,
                             std::optional<double> highSi, bool otherObserver)
{
    ReadingChange c{now.slug, now.place, now.dimension, now.unit, then.si,
                    now.si,   0.0,       0.0,           false,    Change::Same};
    c.uncertainty =
        std::hypot(readingUncertainty(then.dimension, then.si), readingUncertainty(now.dimension, now.si));
    if (!isSameUnit(now.dimension, then.unit, now.unit))
        c.doubled.emplace_back("unit");
    if (otherObserver)
        c.doubled.emplace_back("observer");
    if (then.tool != now.tool)
        c.doubled.emplace_back("tool");
    if (!c.doubled.empty())
        c.uncertainty *= otherHand;
    c.z = (now.si - then.si) / c.uncertainty;
    c.changed = std::abs(c.z) > changedFrom;
    const double bad = c.z * worseDirection(then.si, now.si, lowSi, highSi);
    if (bad > worseFrom)
        c.change = Change::Worse;
    else if (bad < -changedFrom)
        c.change = Change::Better;
    return c;
}

std::vector<ReadingChange> compareReadings(const Catalogue &catalogue, const Rig &rig, const Mark &then,
                                           const Mark &now)
{
    const Point *point = catalogue.find(now.point);
    const auto before = byName(then.readings);
    const bool otherObserver = !then.by.empty() && !now.by.empty() && then.by != now.by;
    std::vector<ReadingChange> changes;
    for (const Reading *reading : byName(now.readings)) {
        const auto old = std::lower_bound(before.begin(), before.end(), reading, byThing);
        if (old == before.end() || !isSameThing(*old, reading) || (*old)->dimension != reading->dimension)
            continue;
        const ReadingSpec *spec = point != nullptr ? point->reading(reading->slug) : nullptr;
        const Limits limits = spec != nullptr ? limitsFor(*spec, *point, rig) : Limits();
        changes.push_back(compareReading(**old, *reading, limits.lowSi, limits.highSi, otherObserver));
    }
    return changes;
}

void holdAgainst(ReadingChange &c, const Expectation &expectation, double direction)
{
    c.expected = expectation.change;
    c.expectedUncertainty = expectation.uncertainty;
    c.expectedFrom = expectation.from;
    c.expectedZ =
        (c.nowSi - c.thenSi - expectation.change) / std::hypot(c.uncertainty, expectation.uncertainty);
    c.faster = c.expectedZ * direction > worseFrom;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Readings in pairs, against their uncertainty.
#include "compare/readings.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "walk/draft.hpp"

namespace snugwalk {
namespace {

constexpr double changedFrom = 1.96; // two sides, 5 %
constexpr double worseFrom = 1.645;  // one side, 5 %
constexpr double otherHand = 2.0;    // another unit, person or instrument: common practice, no source

std::map<std::pair<std::string, std::string>, Reading> byName(std::vector<Reading> readings)
{
    std::sort(readings.begin(), readings.end(),
              [](const Reading &a, const Reading &b) { return a.si < b.si; });
    std::map<std::pair<std::string, std::string>, Reading> named;
    for (Reading &r : readings)
        named[{r.slug, r.place}] = std::move(r);
    return named;
}

} // namespace

double readingUncertainty(Dimension dimension, double si)
{
    const double size = std::abs(si);
    switch (dimension) {
    case Dimension::Length:
        return std::max(0.25e-3, 0.02 * size);
    case Dimension::Distance:
        return std::max(100.0, 0.01 * size);
    case Dimension::Mass:
    case Dimension::Force:
        return std::max(5.0, 0.01 * size);
    case Dimension::Pressure:
        return std::max(7.0e3, 0.01 * size); // a pocket gauge, about 1 psi
    case Dimension::Torque:
        return std::max(2.0, 0.04 * size); // a click wrench, 4 %
    case Dimension::Temperature:
    case Dimension::TemperatureDifference:
        return 2.0; // an infrared thermometer
    case Dimension::Voltage:
        return std::max(0.05, 0.005 * size);
    case Dimension::Current:
        return std::max(0.1, 0.02 * size);
    case Dimension::Resistance:
        return std::max(0.1, 0.02 * size);
    case Dimension::Fraction:
        return 0.02;
    case Dimension::Count:
        return 0.5;
    case Dimension::Speed:
    case Dimension::Area:
    case Dimension::Volume:
    case Dimension::Angle:
    case Dimension::Duration:
        break;
    }
    return std::max(1e-9, 0.05 * size);
}

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
    if (then.unit != now.unit)
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
    std::vector<ReadingChange> changes;
    for (const auto &[name, reading] : byName(now.readings)) {
        const auto old = before.find(name);
        if (old == before.end() || old->second.dimension != reading.dimension)
            continue;
        const ReadingSpec *spec = point != nullptr ? point->reading(reading.slug) : nullptr;
        const Limits limits = spec != nullptr ? limitsFor(*spec, *point, rig) : Limits();
        const bool otherObserver = !then.by.empty() && !now.by.empty() && then.by != now.by;
        changes.push_back(compareReading(old->second, reading, limits.lowSi, limits.highSi, otherObserver));
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

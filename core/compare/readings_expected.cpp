// SPDX-License-Identifier: Apache-2.0
// Earlier readings of the same thing, back to when it was last replaced.
#include "compare/readings_expected.hpp"

#include <algorithm>

#include "walk/draft.hpp"

namespace snugwalk {
namespace {

std::vector<ReadAt> readBefore(const PointRecords &records, const ReadingChange &c, Instant from, Instant to)
{
    std::vector<ReadAt> earlier;
    earlier.reserve(records.looks.size());
    std::size_t at = 0; // a reading stands at the same place in its mark as a rule
    for (const Mark *mark : records.looks) {
        const std::vector<Reading> &readings = mark->readings;
        if (mark->at.instant < from || mark->at.instant >= to)
            continue;
        const auto fits = [&](const Reading &r) {
            return r.place == c.place && r.slug == c.slug && r.dimension == c.dimension;
        };
        if (at >= readings.size() || !fits(readings[at]))
            at = static_cast<std::size_t>(std::find_if(readings.begin(), readings.end(), fits) -
                                          readings.begin());
        if (at < readings.size())
            earlier.push_back({mark->at.instant, readings[at].si});
    }
    return earlier;
}

void tellReplaced(const ReadingsContext &context, const ReadingSpec &spec, const Mark &then, const Mark &now,
                  ReadingChange &c)
{
    const Replacement *last = lastReplacement(context.replacements, now.point, c.place, now.at.instant);
    c.replaced = last != nullptr && last->at > then.at.instant;
    if (!c.replaced && isRise(spec, c.thenSi, c.nowSi)) {
        c.replaced = tireChangedBetween(context.history, now.point, then.at.instant, now.at.instant);
        c.ask = !c.replaced;
    }
}

void tellExpected(const ReadingsContext &context, const Point &point, const ReadingSpec &spec,
                  const PointRecords &records, const Mark &then, const Mark &now, ReadingChange &c)
{
    const Limits limits = limitsFor(spec, point, context.rig);
    const double direction = worseDirection(c.thenSi, c.nowSi, limits.lowSi, limits.highSi);
    if (direction == 0.0 || c.replaced || c.ask)
        return;
    const Replacement *renewed = lastReplacement(context.replacements, now.point, c.place, then.at.instant);
    const auto earlier =
        readBefore(records, c, renewed != nullptr ? renewed->at : Instant::min(), then.at.instant);
    const double limit = direction > 0.0 ? *limits.highSi : *limits.lowSi;
    // past the limit there is no room left to wear; a quantity that does not wear has only its own habit
    if ((limit - c.thenSi) * direction <= 0.0 || (earlier.size() < 3 && !isWear(spec)))
        return;
    const WearQuestion question{{then.at.instant, c.thenSi},
                                now.at.instant,
                                earlier,
                                limit,
                                readingUncertainty(c.dimension, c.thenSi)};
    if (const auto expectation = expectedChange(point, context.driven, question))
        holdAgainst(c, *expectation, direction);
}

} // namespace

std::vector<ReadingChange> readingChanges(const ReadingsContext &context, const PointRecords &records,
                                          const Mark &then, const Mark &now)
{
    std::vector<ReadingChange> changes = compareReadings(context.catalogue, context.rig, then, now);
    const Point *point = context.catalogue.find(now.point);
    for (ReadingChange &c : changes) {
        const ReadingSpec *spec = point != nullptr ? point->reading(c.slug) : nullptr;
        if (spec == nullptr)
            continue;
        tellReplaced(context, *spec, then, now, c);
        tellExpected(context, *point, *spec, records, then, now, c);
    }
    return changes;
}

} // namespace snugwalk

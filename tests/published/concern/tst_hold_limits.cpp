// SPDX-License-Identifier: Apache-2.0
// Hold limits are those of the publications they cite, in the units printed there.
#include <doctest/doctest.h>

#include "../../unit/due/story.hpp"
#include "concern/reading_holds.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Whether a value just below or just above what is printed holds the rig.
bool holds(const std::string &point, const std::string &reading, double si)
{
    Story story;
    const Dimension dimension = realCatalogue().find(point)->reading(reading)->dimension;
    story.mark(story.walk(at("2026-01-01")), point, MarkState::Pass, at("2026-01-01")).readings = {
        {reading, "wheel 1L", dimension, si, ""}};
    const RigHistory history = story.history();
    const ConcernContext context(realCatalogue(), history, at("2026-01-02"));
    return !holdsByReading(context, *realCatalogue().find(point)).empty();
}

double inches(double v) { return v * 0.0254; }

} // namespace

TEST_CASE("49 CFR 570.62: tread not less than 2/32 inch")
{
    CHECK(holds("tread-depth", "tread-depth", inches(2.0 / 32) * 0.99));
    CHECK_FALSE(holds("tread-depth", "tread-depth", inches(2.0 / 32) * 1.01 + 1e-5));
}

TEST_CASE("49 CFR 570.59: lining not less than 1/16 inch")
{
    CHECK(holds("brake-linings", "lining-thickness", inches(1.0 / 16) * 0.99));
    CHECK_FALSE(holds("brake-linings", "lining-thickness", inches(1.0 / 16) * 1.01));
}

TEST_CASE("Utah Admin. Code R714-162-10: fifth wheel slack not over 1/2 inch")
{
    CHECK(holds("fifth-wheel-head", "head-play", inches(0.5) * 1.01));
    CHECK_FALSE(holds("fifth-wheel-head", "head-play", inches(0.5) * 0.99));
}

TEST_CASE("200 degrees Fahrenheit at a hub: common practice, no source")
{
    CHECK(holds("hub-temperature", "hub-temperature", (200.0 + 459.67) * 5.0 / 9.0));
    CHECK_FALSE(holds("hub-temperature", "hub-temperature", (198.0 + 459.67) * 5.0 / 9.0));
}

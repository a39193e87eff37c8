// SPDX-License-Identifier: Apache-2.0
// Laws of shut-in gas and of dates over seeded random input, absurd ones included.
#include <doctest/doctest.h>

#include "absurd.hpp"
#include "base/units.hpp"
#include "bench/gas/ages.hpp"
#include "bench/gas/gas_hold.hpp"

using namespace snugwalk;
using namespace snugwalk::property;

TEST_CASE("gas: nothing lost reads as nothing lost at any temperature, and a lower end never as less lost")
{
    Absurd draw(31);
    int answered = 0;
    for (int i = 0; i < draws(); ++i) {
        GasHold h;
        h.start = Pressure::fromSi(draw.maybe(500, 5000));
        h.end = Pressure::fromSi(draw.maybe(500, 5000));
        h.time = Duration::fromSi(draw.maybe(60, 3600));
        h.startPipe = celsius(draw.maybe(-20, 50));
        if (draw.coin())
            h.endPipe = celsius(draw.maybe(-20, 50));
        if (draw.coin())
            h.piping = Volume::fromSi(draw.maybe(1e-4, 1e-2));
        h.air = AbsolutePressure::fromSi(draw.maybe(7e4, 1.05e5));
        const auto r = gasHold(h);
        if (!r) {
            REQUIRE(sane(r.error()));
            continue;
        }
        ++answered;
        REQUIRE((sane(r->lost) && sane(r->temperature)));
        REQUIRE(r->flow.has_value() == h.piping.has_value());
        GasHold lower = h;
        lower.end = h.end - Pressure::fromSi(10.0);
        if (const auto more = gasHold(lower))
            REQUIRE(more->lost.value > r->lost.value);
        GasHold still = h;
        still.end = h.start + Pressure::fromSi(r->temperature.value);
        if (const auto none = gasHold(still)) {
            REQUIRE(std::abs(none->lost.value) < 1e-6);
            REQUIRE(none->lost.warnings.front() == "not_shown");
        }
    }
    CHECK(answered > draws() / 10);
}

TEST_CASE("dates: a day later is a day less, and the latest that a source gives is never before the earliest")
{
    using namespace std::chrono;
    Absurd draw(32);
    for (int i = 0; i < draws(); ++i) {
        const CivilDate made = year(draw.whole(1930, 2210)) / draw.whole(0, 13) / draw.whole(0, 32);
        const CivilDate on = year(draw.whole(1930, 2210)) / draw.whole(1, 12) / draw.whole(1, 28);
        const auto kinds = agedKinds();
        const auto &kind = kinds[static_cast<std::size_t>(draw.whole(0, static_cast<int>(kinds.size()) - 1))];
        const auto due = agedDue({kind.slug, made, {}, on});
        const auto cylinder = cylinderDue(made, static_cast<CylinderTest>(draw.whole(0, 3)), on);
        REQUIRE(bool(due) == bool(cylinder));
        if (!due) {
            REQUIRE((sane(due.error()) && sane(cylinder.error())));
            continue;
        }
        REQUIRE((sane(due->left) && sane(due->age) && sane(cylinder->left)));
        REQUIRE(due->due > made);
        if (const auto tomorrow = agedDue({kind.slug, made, {}, addDays(on, 1)}))
            REQUIRE(due->left.value - tomorrow->left.value == 86400.0);
    }
}

// SPDX-License-Identifier: Apache-2.0
// Laws of beads, seams, rivets and screws over seeded random input, absurd ones included.
#include <doctest/doctest.h>

#include <vector>

#include "absurd.hpp"
#include "base/units.hpp"
#include "bench/joints/cure.hpp"
#include "bench/joints/rivet.hpp"
#include "bench/joints/screw.hpp"
#include "bench/joints/sealant.hpp"
#include "bench/joints/seam.hpp"

using namespace snugwalk;
using namespace snugwalk::property;

TEST_CASE("beads: a figure or a refusal that names the input; cartridges hold the bead")
{
    Absurd draw(11);
    int answered = 0;
    for (int i = 0; i < draws(); ++i) {
        const Bead bead{static_cast<BeadShape>(draw.whole(0, 4)), metres(draw.maybe(0.001, 0.03)),
                        metres(draw.maybe(0.001, 0.03)), metres(draw.maybe(0, 40)), draw.maybe(0, 0.3)};
        const auto volume = beadVolume(bead);
        if (!volume) {
            REQUIRE(sane(volume.error()));
            continue;
        }
        ++answered;
        REQUIRE(sane(*volume));
        const Volume cartridge = Volume::fromSi(draw.maybe(1e-4, 1e-3));
        const auto count = cartridgesFor(Volume::fromSi(volume->value), cartridge);
        if (count) {
            REQUIRE(*count * cartridge.si() * 0.97 >= volume->value * (1.0 - 1e-9));
            REQUIRE((*count - 1) * cartridge.si() * 0.97 <= volume->value);
        } else {
            REQUIRE(sane(count.error()));
        }
    }
    CHECK(answered > draws() / 5);
}

TEST_CASE("seams: more run, swing or expansion moves more; the least width is just followed")
{
    Absurd draw(12);
    for (int i = 0; i < draws(); ++i) {
        Seam s{draw.maybe(1e-5, 2e-4), metres(draw.maybe(0.1, 12)), metres(draw.maybe(0.002, 0.05)),
               TemperatureDifference::fromSi(draw.maybe(5, 90)), draw.maybe(0.1, 0.5)};
        const auto m = seamMovement(s);
        if (!m) {
            REQUIRE(sane(m.error()));
            continue;
        }
        REQUIRE((sane(m->movement) && sane(m->strain) && sane(m->width)));
        REQUIRE(m->strain.warnings.empty() == (m->strain.value <= s.allowed));
        s.width = metres(m->width.value * (1.0 + 1e-9));
        if (const auto again = seamMovement(s))
            REQUIRE(again->strain.warnings.empty());
        s.swing = s.swing * 1.01;
        if (const auto more = seamMovement(s))
            REQUIRE(more->movement.value >= m->movement.value);
    }
}

TEST_CASE("cure: damper air never slows it, depth never speeds it; life grows with the bead")
{
    Absurd draw(13);
    for (int i = 0; i < draws(); ++i) {
        const Length depth = metres(draw.maybe(0.001, 0.025));
        const Temperature air = celsius(draw.maybe(4, 50));
        const double humidity = draw.maybe(1, 100);
        const auto t = cureTimes(depth, air, humidity);
        if (!t) {
            REQUIRE(sane(t.error()));
            continue;
        }
        REQUIRE((sane(t->full) && sane(t->skin) && sane(t->rain)));
        if (const auto damper = cureTimes(depth, air, humidity * 1.05))
            REQUIRE(damper->full.value <= t->full.value * (1.0 + 1e-12));
        if (const auto deeper = cureTimes(depth * 1.05, air, humidity))
            REQUIRE(deeper->full.value >= t->full.value);
        const auto thin = sealantLife(depth, RoofClimate::Mixed);
        const auto thick = sealantLife(depth * 1.1, RoofClimate::Mixed);
        REQUIRE((thin && thick && sane(*thin) && thick->low >= thin->low));
    }
}

TEST_CASE("rivets: thicker sheets never take a thinner rivet, and its grip takes the sheets")
{
    Absurd draw(14);
    for (int i = 0; i < draws(); ++i) {
        std::vector<Length> sheets;
        for (int n = draw.whole(0, 7); n > 0; --n)
            sheets.push_back(metres(draw.coin() ? draw.between(0.0003, 0.003) : draw.maybe(0.0003, 0.004)));
        RivetJoint joint{sheets, draw.coin(), {}, {}};
        if (draw.whole(0, 3) == 0)
            joint.enlargedHole = metres(draw.maybe(0.002, 0.007));
        const auto c = chooseRivet(joint);
        if (!c) {
            REQUIRE(sane(c.error()));
            continue;
        }
        REQUIRE(
            (sane(c->diameter) && sane(c->grip) && sane(c->edge) && sane(c->pitch) && sane(c->solidLength)));
        REQUIRE(c->blindGrip.si() >= c->grip.value * (1.0 - 1e-8));
        if (joint.enlargedHole)
            REQUIRE(c->size.hole >= *joint.enlargedHole);
        for (Length &t : sheets)
            t = t * 1.1;
        if (const auto thicker = chooseRivet({sheets, joint.countersunk, joint.enlargedHole, {}}))
            REQUIRE(thicker->size.diameter >= c->size.diameter);
    }
}

TEST_CASE("screws: thicker, longer, denser holds more; wet wood never does")
{
    Absurd draw(15);
    for (int i = 0; i < draws(); ++i) {
        Screw s{
            draw.whole(2, 16), metres(draw.maybe(0.002, 0.15)), draw.maybe(0.3, 0.7), draw.maybe(0, 0.3), {}};
        const auto hold = screwHold(s);
        if (!hold) {
            REQUIRE(sane(hold.error()));
            continue;
        }
        REQUIRE((sane(hold->snug) && sane(hold->pull) && sane(hold->design)));
        REQUIRE(hold->design.high < hold->pull.low);
        Screw more = s;
        more.number += 2;
        if (const auto thicker = screwHold(more)) {
            REQUIRE(thicker->pull.value > hold->pull.value);
            REQUIRE(thicker->snug.value > hold->snug.value);
        }
        more = s;
        more.moisture = 0.9;
        REQUIRE(screwHold(more)->pull.value <= hold->pull.value);
    }
}

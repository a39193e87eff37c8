// SPDX-License-Identifier: Apache-2.0
// Laws of batteries, wire, the breakaway and lamps over seeded random input, absurd ones included.
#include <doctest/doctest.h>

#include "absurd.hpp"
#include "base/units.hpp"
#include "bench/electric/battery.hpp"
#include "bench/electric/breakaway.hpp"
#include "bench/electric/lamps.hpp"
#include "bench/electric/wire.hpp"

using namespace snugwalk;
using namespace snugwalk::property;

TEST_CASE("batteries: more volts never mean less charge; less rest never narrows the doubt")
{
    Absurd draw(21);
    int answered = 0;
    for (int i = 0; i < draws(); ++i) {
        BatteryReading r{static_cast<BatteryKind>(draw.whole(0, 3)), Voltage::fromSi(draw.maybe(10, 14.5)),
                         celsius(draw.maybe(-40, 60)), Duration::fromSi(draw.maybe(0, 86400))};
        const auto state = batteryState(r);
        if (!state) {
            REQUIRE(sane(state.error()));
            continue;
        }
        ++answered;
        REQUIRE((sane(state->charge) && sane(state->cold)));
        REQUIRE((state->charge.low >= 0.0 && state->charge.high <= 1.0));
        BatteryReading more = r;
        more.rest = r.rest + Voltage::fromSi(0.05);
        if (const auto higher = batteryState(more)) {
            REQUIRE(higher->charge.value >= state->charge.value);
            if (state->freezes)
                REQUIRE(*higher->freezes <= *state->freezes);
        }
        more = r;
        more.rested = r.rested * 0.5;
        REQUIRE(batteryState(more)->charge.low <= state->charge.low);
        more = r;
        more.battery = r.battery + TemperatureDifference::fromSi(1.0);
        if (const auto warmer = batteryState(more))
            REQUIRE(warmer->cold.value >= state->cold.value);
    }
    CHECK(answered > draws() / 5);
}

TEST_CASE("draw: twice the current, half the time; what is left never lasts longer with less in it")
{
    Absurd draw(22);
    for (int i = 0; i < draws(); ++i) {
        Draw d{Charge::fromSi(draw.maybe(3.6e4, 3.6e6)), draw.maybe(0, 1),
               Current::fromSi(draw.maybe(0.01, 20)), static_cast<BatteryKind>(draw.whole(0, 3)),
               celsius(draw.maybe(-40, 60))};
        const auto t = drawTimes(d);
        if (!t) {
            REQUIRE(sane(t.error()));
            continue;
        }
        REQUIRE((sane(t->toHalf) && sane(t->halfOfWhat)));
        REQUIRE(t->toHalf.value <= t->halfOfWhat.value * (1.0 + 1e-12));
        Draw other = d;
        other.current = d.current * 2.0;
        if (const auto twice = drawTimes(other))
            REQUIRE(twice->halfOfWhat.value == doctest::Approx(t->halfOfWhat.value / 2.0));
        other = d;
        other.charge = d.charge * 0.9;
        REQUIRE(drawTimes(other)->toHalf.value <= t->toHalf.value);
    }
}

TEST_CASE("wire: longer, thinner, warmer drops more; the gauge that it names keeps to the goal")
{
    Absurd draw(23);
    for (int i = 0; i < draws(); ++i) {
        WireRun r{Area::fromSi(draw.maybe(0.5e-6, 60e-6)),
                  metres(draw.maybe(0, 20)),
                  Current::fromSi(draw.maybe(0, 60)),
                  Voltage::fromSi(draw.maybe(10, 15)),
                  celsius(draw.maybe(-40, 90)),
                  draw.maybe(0.01, 0.1),
                  draw.coin()};
        const auto d = wireDrop(r);
        if (!d) {
            REQUIRE(sane(d.error()));
            continue;
        }
        REQUIRE((sane(d->drop) && sane(d->share) && sane(d->resistance)));
        if (d->thinnest) {
            WireRun named = r;
            named.copper = gaugeArea(*d->thinnest).value();
            REQUIRE(wireDrop(named)->share.value <= r.goal * (1.0 + 1e-12));
        }
        WireRun more = r;
        more.copper = r.copper * 0.9;
        if (const auto thinner = wireDrop(more))
            REQUIRE(thinner->drop.value >= d->drop.value);
        more = r;
        more.copperTemperature = r.copperTemperature + TemperatureDifference::fromSi(1.0);
        if (const auto warmer = wireDrop(more))
            REQUIRE(warmer->drop.value >= d->drop.value);
        more = r;
        more.oneWay = r.oneWay * 2.0;
        if (const auto longer = wireDrop(more))
            REQUIRE(longer->drop.value == doctest::Approx(2.0 * d->drop.value));
    }
}

TEST_CASE("gauges: a thicker number is a thinner wire, names read back")
{
    for (int gauge = -3; gauge < 30; ++gauge) {
        CHECK(gaugeArea(gauge).value() > gaugeArea(gauge + 1).value());
        CHECK(wireArea(gaugeName(gauge)).value() == gaugeArea(gauge).value());
    }
}

TEST_CASE("breakaway: more current or cold never holds longer, more capacity never shorter")
{
    Absurd draw(24);
    for (int i = 0; i < draws(); ++i) {
        Breakaway b{Charge::fromSi(draw.maybe(7200, 36e4)),
                    Current::fromSi(draw.maybe(1, 30)),
                    Duration::fromSi(draw.maybe(3600, 72000)),
                    draw.maybe(1.05, 1.3),
                    celsius(draw.maybe(-40, 50)),
                    draw.maybe(0.1, 1)};
        const auto e = breakawayHold(b);
        if (!e) {
            REQUIRE(sane(e.error()));
            continue;
        }
        REQUIRE(sane(*e));
        Breakaway other = b;
        other.current = b.current * 1.1;
        if (const auto harder = breakawayHold(other))
            REQUIRE(harder->value < e->value);
        other = b;
        other.capacity = b.capacity * 1.1;
        if (const auto larger = breakawayHold(other))
            REQUIRE(larger->value > e->value);
        other = b;
        other.battery = b.battery + TemperatureDifference::fromSi(-1.0);
        if (const auto colder = breakawayHold(other))
            REQUIRE(colder->value <= e->value);
    }
}

TEST_CASE("lamps: a larger trailer never has fewer")
{
    Absurd draw(25);
    for (int i = 0; i < draws(); ++i) {
        const TrailerSize t{metres(draw.maybe(1.5, 2.6)), metres(draw.maybe(3, 14)),
                            kilograms(draw.maybe(300, 9000))};
        const auto list = lampsFor(t);
        if (!list) {
            REQUIRE(sane(list.error()));
            continue;
        }
        REQUIRE(list->lamps() >= 11);
        if (const auto larger = lampsFor({t.width * 1.05, t.length * 1.05, t.rating * 1.05})) {
            REQUIRE(larger->lamps() >= list->lamps());
            REQUIRE(larger->reflectors() >= list->reflectors());
        }
    }
}

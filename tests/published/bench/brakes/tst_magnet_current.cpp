// SPDX-License-Identifier: Apache-2.0
// Magnet current: within +20 and -30 % of the maker's most, [PA-TRAILER] as quoted; the most read divided by
// the number of brakes, [CFR49-570] 570.58. What magnets commonly draw is common practice, no source.
#include "../sourced.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/brakes/magnet_current.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

Current amps(double v) { return Current::fromSi(v); }
MagnetDraw drawOf(double total, int magnets, std::optional<Current> maker = {})
{
    return magnetDraw({amps(total), magnets, maker}).value();
}
bool warns(const MagnetDraw &d, const char *slug)
{
    return std::find(d.each.warnings.begin(), d.each.warnings.end(), slug) != d.each.warnings.end();
}

} // namespace

TEST_CASE("the trade's examples: 12.9 A for four at 3.75 A is 3.23 A, -14 %; 9.8 A is 2.45 A, -35 %")
{
    const MagnetDraw pass = drawOf(12.9, 4, amps(3.75));
    SOURCED("PA-TRAILER", pass.each.value, 3.23, half(0.01));
    SOURCED("PA-TRAILER", 100 * pass.deviation.value, -14, half(1));
    CHECK(pass.call == MagnetCall::WithinMaker);
    CHECK(pass.each.warnings.empty());
    const MagnetDraw fail = drawOf(9.8, 4, amps(3.75));
    SOURCED("PA-TRAILER", fail.each.value, 2.45, half(0.01));
    SOURCED("PA-TRAILER", 100 * fail.deviation.value, -35, half(1));
    CHECK(fail.call == MagnetCall::Low);
    CHECK(warns(fail, "magnet_low"));
}

TEST_CASE("the edges of the band are within it")
{
    CHECK(drawOf(4 * 4.5, 4, amps(3.75)).call == MagnetCall::WithinMaker);
    CHECK(drawOf(4 * 4.51, 4, amps(3.75)).call == MagnetCall::High);
    CHECK(drawOf(4 * 2.625, 4, amps(3.75)).call == MagnetCall::WithinMaker);
    CHECK(drawOf(4 * 2.62, 4, amps(3.75)).call == MagnetCall::Low);
    CHECK(drawOf(0.05, 4, amps(3.75)).call == MagnetCall::None);
}

TEST_CASE("what two, four and six magnets commonly draw passes without a maker's figure, and says so")
{
    const struct {
        int magnets;
        double low, high;
        MagnetSize size;
    } rows[] = {{2, 7.5, 8.2, MagnetSize::Large},
                {4, 15.0, 16.3, MagnetSize::Large},
                {6, 22.6, 24.5, MagnetSize::Large},
                {2, 6.3, 6.8, MagnetSize::Small}};
    for (const auto &row : rows) {
        for (const double total : {row.low, row.high}) {
            MagnetReading reading{amps(total), row.magnets};
            reading.size = row.size;
            const MagnetDraw draw = magnetDraw(reading).value();
            CAPTURE(total);
            CHECK(draw.call == MagnetCall::WithinMaker);
            CHECK(warns(draw, "not_makers_figure"));
            CHECK(draw.figure.basis == "common_practice");
        }
    }
}

TEST_CASE("magnets of 3.0 and 4.0 Ω draw 4.0 and 3.0 A at 12 V")
{
    const auto expected = [](double ohms) {
        const MagnetReading reading{amps(14), 4, amps(3.75), Voltage::fromSi(12.0), Resistance::fromSi(ohms)};
        return magnetDraw(reading).value().expected->value;
    };
    SOURCED("CP", expected(3.0), 4.0, half(0.1));
    SOURCED("CP", expected(4.0), 3.0, half(0.1));
}

TEST_CASE("Ohm's law: 12 V over 3.2 Ω is 3.75 A, and a reading far from it is told")
{
    MagnetReading reading{amps(15.0), 4, amps(3.75), Voltage::fromSi(12.0), Resistance::fromSi(3.2)};
    const MagnetDraw draw = magnetDraw(reading).value();
    CHECK(draw.expected->value == doctest::Approx(3.75));
    CHECK_FALSE(warns(draw, "differs_from_ohms"));
    reading.total = amps(11.25); // one of four is dead
    CHECK(warns(magnetDraw(reading).value(), "differs_from_ohms"));
    reading.volts = Voltage::fromSi(11.4);
    CHECK(warns(magnetDraw(reading).value(), "volts_outside"));
}

TEST_CASE("refusals name the input")
{
    CHECK(magnetDraw({amps(-1), 4}).error().where == "total");
    CHECK(magnetDraw({amps(12), 0}).error().where == "magnets");
    CHECK(magnetDraw({amps(12), 4, amps(37.5)}).error().where == "maker");
}

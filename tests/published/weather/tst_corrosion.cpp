// SPDX-License-Identifier: Apache-2.0
// [ISO-9223-2012] and [ISO-9224-2012], constants from memory. The rows were computed apart with the printed
// functions; 1e-4.
#include <cmath>
#include <string_view>

#include <doctest/doctest.h>

#include "base/units.hpp"
#include "weather/laws/corrosion.hpp"

using namespace snugwalk;

namespace {

CorrosionRate rate(Metal metal, double t, double rh, double sulfur, double chloride)
{
    return corrosionRate(metal, {celsius(t), rh, sulfur, chloride}).value();
}

bool warns(const CorrosionRate &r, std::string_view slug)
{
    for (const auto &w : r.firstYear.warnings) {
        if (w == slug)
            return true;
    }
    return false;
}

} // namespace

TEST_CASE("first year of four metals in three airs, and their classes")
{
    const struct {
        double t, rh, sulfur, chloride;
        double loss[4];
        const char *category[4]; // of copper not in the list
    } rows[] = {
        {10, 75, 5, 3, {21.89088336, .96454538, 1.00753044, .12859772}, {"C2", "C3", "", "C2"}},
        {25, 85, 5, 300, {167.3173, 7.9183, 3.8368, 3.2252}, {"C5", "C5", "", "C4"}},
        {0, 70, 2, 1, {3.3242, .33016602, .2393, .04393721}, {"C2", "C2", "", "C2"}},
    };
    for (const auto &row : rows) {
        CAPTURE(row.t);
        for (std::size_t i = 0; i < metals.size(); ++i) {
            CAPTURE(metalName(metals[i]));
            const CorrosionRate r = rate(metals[i], row.t, row.rh, row.sulfur, row.chloride);
            CHECK(std::abs(r.firstYear.value - row.loss[i]) <= 1e-4);
            if (*row.category[i] != '\0')
                CHECK(corrosivityName(r.category) == row.category[i]);
            CHECK(r.firstYear.warnings.empty() == (row.t != 25)); // a hot coast says so
        }
    }
}

// [ISO-9223-2012] table 2, from memory; the bounds belong to the lower class.
TEST_CASE("bounds of the classes")
{
    CHECK(corrosivityOf(Metal::Steel, 1.3) == Corrosivity::C1);
    CHECK(corrosivityOf(Metal::Steel, 1.31) == Corrosivity::C2);
    CHECK(corrosivityOf(Metal::Steel, 25) == Corrosivity::C2);
    CHECK(corrosivityOf(Metal::Steel, 50) == Corrosivity::C3);
    CHECK(corrosivityOf(Metal::Steel, 80) == Corrosivity::C4);
    CHECK(corrosivityOf(Metal::Steel, 200) == Corrosivity::C5);
    CHECK(corrosivityOf(Metal::Steel, 201) == Corrosivity::CX);
    CHECK(corrosivityOf(Metal::Steel, 1e6) == Corrosivity::CX);
    constexpr Corrosivity classes[] = {Corrosivity::C1, Corrosivity::C2, Corrosivity::C3, Corrosivity::C4,
                                       Corrosivity::C5};
    const struct {
        Metal metal;
        double ends[5];
    } rows[] = {{Metal::Zinc, {0.1, 0.7, 2.1, 4.2, 8.4}}, {Metal::Copper, {0.1, 0.6, 1.3, 2.8, 5.6}}};
    for (const auto &row : rows) {
        for (std::size_t i = 0; i < 5; ++i) {
            CHECK(corrosivityOf(row.metal, row.ends[i]) == classes[i]);
            CHECK(corrosivityOf(row.metal, row.ends[i] + 1e-9) > classes[i]);
        }
    }
    CHECK(corrosivityOf(Metal::Zinc, 25) == Corrosivity::CX);
    CHECK(corrosivityOf(Metal::Aluminium, 0.0) == Corrosivity::C1);
    CHECK(corrosivityOf(Metal::Aluminium, 0.6) == Corrosivity::C2);
    CHECK(corrosivityOf(Metal::Aluminium, 2.0) == Corrosivity::C3);
    CHECK(corrosivityOf(Metal::Aluminium, 2.01) == Corrosivity::C4);
    CHECK(corrosivityOf(Metal::Aluminium, 5.0) == Corrosivity::C4);
    CHECK(corrosivityOf(Metal::Aluminium, 10.0) == Corrosivity::C5);
    CHECK(corrosivityOf(Metal::Aluminium, 10.1) == Corrosivity::CX);
}

TEST_CASE("ISO 9224: steel of 40 and zinc of 1.2 µm/a after 5, 10 and 20 years; computed apart")
{
    const auto after = [](Metal m, double r, double t) { return corrosionAfter(m, r, t).value(); };
    CHECK(after(Metal::Steel, 40, 5) == doctest::Approx(92.81567).epsilon(1e-6));
    CHECK(after(Metal::Steel, 40, 10) == doctest::Approx(133.37057).epsilon(1e-6));
    CHECK(after(Metal::Steel, 40, 20) == doctest::Approx(191.64552).epsilon(1e-6));
    CHECK(after(Metal::Zinc, 1.2, 5) == doctest::Approx(4.44062).epsilon(2e-6));
    CHECK(after(Metal::Zinc, 1.2, 10) == doctest::Approx(7.80156).epsilon(1e-6));
    CHECK(after(Metal::Zinc, 1.2, 20) == doctest::Approx(13.70625).epsilon(1e-6));
    CHECK(std::abs(after(Metal::Copper, 1.0, 10) - 4.645153) < 5e-7);    // 10^0.667
    CHECK(std::abs(after(Metal::Aluminium, 1.0, 10) - 5.345644) < 5e-7); // 10^0.728
    CHECK(after(Metal::Copper, 1.0, 1) == 1.0);
    CHECK(corrosionAfter(Metal::Steel, 40, 21).error().where == "years");
    CHECK(corrosionAfter(Metal::Steel, -1, 2).error().where == "rate");
}

TEST_CASE("no sulfur and no salt: the term is nothing, and the table is left")
{
    const CorrosionRate clean = rate(Metal::Steel, 10, 75, 0, 0);
    CHECK(clean.firstYear.value == 0.0);
    CHECK(clean.category == Corrosivity::C1);
    CHECK(warns(clean, "outside_table"));
}

TEST_CASE("outside the table: held at its ends and told")
{
    CHECK(rate(Metal::Zinc, 10, 99, 5, 3).firstYear.value == rate(Metal::Zinc, 10, 93, 5, 3).firstYear.value);
    CHECK(warns(rate(Metal::Zinc, 10, 99, 5, 3), "outside_table"));
    CHECK(rate(Metal::Zinc, 10, 20, 5, 3).firstYear.value == rate(Metal::Zinc, 10, 34, 5, 3).firstYear.value);
    CHECK(rate(Metal::Zinc, 35, 75, 5, 3).firstYear.value == rate(Metal::Zinc, 29, 75, 5, 3).firstYear.value);
    CHECK(rate(Metal::Zinc, 10, 75, 5, 900).firstYear.value ==
          rate(Metal::Zinc, 10, 75, 5, 760).firstYear.value);
    CHECK_FALSE(warns(rate(Metal::Zinc, 10, 75, 5, 3), "outside_table"));
    CHECK(warns(rate(Metal::Steel, 27, 85, 5, 300), "hot_coast"));
}

TEST_CASE("near a bound the class is told with its neighbor; the range is that of the standard")
{
    const CorrosionRate r = rate(Metal::Steel, 10, 75, 5, 3); // 21.9, under the 25 of C2
    CHECK(r.category == Corrosivity::C2);
    CHECK(r.lowest == Corrosivity::C2);
    CHECK(r.highest == Corrosivity::C3);
    CHECK(r.firstYear.low == doctest::Approx(0.67 * r.firstYear.value));
    CHECK(r.firstYear.high == doctest::Approx(1.5 * r.firstYear.value));
    const CorrosionRate al = rate(Metal::Aluminium, 10, 75, 5, 3);
    CHECK(al.firstYear.low == doctest::Approx(0.5 * al.firstYear.value));
    CHECK(al.firstYear.high == doctest::Approx(2.0 * al.firstYear.value));
    // annex A, an excerpt read: 0.7 on the logarithm is -50 to +100 %
    CHECK(std::abs(std::log(al.firstYear.high / al.firstYear.value) - 0.7) < 0.05);
    CHECK(std::abs(std::log(al.firstYear.low / al.firstYear.value) + 0.7) < 0.05);
}

TEST_CASE("what is no air is refused")
{
    const double nan = std::nan("");
    CHECK_FALSE(corrosionRate(Metal::Steel, {celsius(nan), 75, 5, 3}));
    CHECK_FALSE(corrosionRate(Metal::Steel, {celsius(10), 0, 5, 3}));
    CHECK_FALSE(corrosionRate(Metal::Steel, {celsius(10), 101, 5, 3}));
    CHECK_FALSE(corrosionRate(Metal::Steel, {celsius(10), 75, -1, 3}));
    CHECK_FALSE(corrosionRate(Metal::Steel, {celsius(10), 75, 5, nan}));
    CHECK_FALSE(corrosionRate(Metal::Steel, {Temperature::fromSi(10), 75, 5, 3}));
}

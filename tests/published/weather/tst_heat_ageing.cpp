// SPDX-License-Identifier: Apache-2.0
// Ageing by [ARRHENIUS-1889]. Figures computed apart in double precision with k = 8.617333262e-5 eV/K; held
// to 1e-6.
#include <cmath>
#include <vector>

#include <doctest/doctest.h>

#include "weather/laws/heat_ageing.hpp"

using namespace snugwalk;

namespace {

double factor(double activation, double from, double to)
{
    return ageingFactor(celsius(to), activation, celsius(from)).value();
}

} // namespace

TEST_CASE("factors between two temperatures")
{
    CHECK(factor(0.7, 25, 55) == doctest::Approx(12.070952).epsilon(5e-8));
    CHECK(factor(0.5, 20, 60) == doctest::Approx(10.766537).epsilon(5e-8));
    CHECK(factor(0.8, 23, 70) == doctest::Approx(73.227908).epsilon(1e-8));
    CHECK(factor(0.55, 20, 30) == doctest::Approx(2.050728).epsilon(3e-7));
    CHECK(factor(0.7, 20, 20) == 1.0);
    CHECK(factor(0.7, 20, 55) * factor(0.7, 55, 20) == doctest::Approx(1.0).epsilon(1e-12));
}

TEST_CASE("doubling in ten degrees is 0.5488 eV between 25 and 35 °C, 52.949 kJ/mol")
{
    const double ea = activationOfQ10(2.0, celsius(25), celsius(35));
    CHECK(std::abs(ea - 0.5487763) < 5e-8);
    CHECK(std::abs(ea * 96.48533212 - 52.94886216) < 5e-8);
    CHECK(factor(ea, 25, 35) == doctest::Approx(2.0).epsilon(1e-9));
    CHECK(ageingFactorQ10(celsius(35), 2.0, celsius(25)).value() == doctest::Approx(2.0).epsilon(1e-12));
    CHECK(ageingFactorQ10(celsius(15), 2.0, celsius(25)).value() == doctest::Approx(0.5).epsilon(1e-12));
}

TEST_CASE("a year of months: the mean of factors is 1.479, that of the mean temperature 1.239")
{
    std::vector<Temperature> months;
    double sum = 0.0;
    for (const double t : {12, 14, 17, 22, 27, 32, 34, 33, 30, 23, 16, 12}) {
        months.push_back(celsius(t));
        sum += t;
    }
    const double mean = meanAgeing(months, 0.6).value();
    CHECK(std::abs(mean - 1.479384) <= 1e-6);
    CHECK(std::abs((equivalentTemperature(mean, 0.6).value() - celsius(0)).si() - 24.914659) <= 1e-6);
    CHECK(sum / 12 == doctest::Approx(22.6666667).epsilon(1e-8));
    CHECK(factor(0.6, 20, sum / 12) == doctest::Approx(1.238757).epsilon(4e-7));
}

// Common practice, no source: 25 to 30 K over the air at 900 W/m².
TEST_CASE("a dark roof")
{
    const Estimate roof = darkSurface(celsius(30), 900.0).value();
    CHECK(roof.low == doctest::Approx(303.15 + 25));
    CHECK(roof.high == doctest::Approx(303.15 + 30));
    CHECK(roof.value == doctest::Approx(303.15 + 27));
    CHECK(roof.unit == "K");
    CHECK(darkSurface(celsius(30), 0.0)->value == doctest::Approx(303.15));
    CHECK(darkSurface(celsius(30), -1.0).error().where == "irradiance");
}

TEST_CASE("a day that swings ages more than its mean, and a steady one exactly as it")
{
    CHECK(dayAgeing(celsius(20), celsius(20), 0.7) == 1.0);
    CHECK(dayAgeing(celsius(10), celsius(30), 0.7) > 1.0);
    // the mean of a cosine's exponentials: 1000 points against our 16
    double fine = 0.0;
    for (int i = 0; i < 1000; ++i)
        fine += factor(0.9, 20, 25 + 15 * std::cos(2 * 3.14159265358979323846 * i / 1000)) / 1000;
    CHECK(dayAgeing(celsius(10), celsius(40), 0.9) == doctest::Approx(fine).epsilon(1e-9));
}

TEST_CASE("degrees taken for kelvin, and energies that are none, are refused")
{
    CHECK(ageingFactor(Temperature::fromSi(25), 0.7).error().code == Errc::OutOfRange);
    CHECK(ageingFactor(Temperature::fromSi(149), 0.7).error().where == "temperature");
    CHECK(ageingFactor(celsius(std::nan("")), 0.7).error().where == "temperature");
    CHECK(ageingFactor(celsius(20), 0.0).error().where == "activation");
    CHECK(ageingFactor(celsius(20), 52.9).error().where == "activation"); // kJ/mol
    CHECK(ageingFactorQ10(celsius(20), 0.5).error().where == "q10");
    CHECK(meanAgeing({}, 0.7).error().code == Errc::InvalidInput);
    CHECK(equivalentTemperature(0.0, 0.7).error().where == "factor");
    CHECK(equivalentTemperature(1e30, 0.7).error().where == "temperature");
}

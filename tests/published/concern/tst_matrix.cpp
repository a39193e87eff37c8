// SPDX-License-Identifier: Apache-2.0
// The matrix's bands and cells, and why products of ranks are not used.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "concern/concern.hpp"
#include "concern/matrix.hpp"

using namespace snugwalk;

TEST_CASE("decades of MIL-STD-882E, individual items")
{
    // Bands as reprinted in public of table II: A from 1e-1, B 1e-2, C 1e-3, D 1e-6, E below, F taken
    // away
    CHECK(probabilityBand(1.0) == ProbabilityBand::A);
    CHECK(probabilityBand(0.1) == ProbabilityBand::A);
    CHECK(probabilityBand(0.0999) == ProbabilityBand::B);
    CHECK(probabilityBand(1e-2) == ProbabilityBand::B);
    CHECK(probabilityBand(9.99e-3) == ProbabilityBand::C);
    CHECK(probabilityBand(1e-3) == ProbabilityBand::C);
    CHECK(probabilityBand(9.99e-4) == ProbabilityBand::D);
    CHECK(probabilityBand(1e-6) == ProbabilityBand::D);
    CHECK(probabilityBand(9.99e-7) == ProbabilityBand::E);
    CHECK(probabilityBand(0.0) == ProbabilityBand::F);
}

TEST_CASE("cells of MIL-STD-882E table III")
{
    // From memory, not read
    const char *const rows[] = {"HHSM", "HHSM", "HSML", "SMML", "MMML"};
    const std::map<MatrixLevel, char> letter = {{MatrixLevel::High, 'H'},
                                                {MatrixLevel::Serious, 'S'},
                                                {MatrixLevel::Medium, 'M'},
                                                {MatrixLevel::Low, 'L'}};
    for (int band = 0; band < 5; ++band) {
        for (int severity = 0; severity < 4; ++severity)
            CHECK(letter.at(matrixLevel(static_cast<Severity>(severity),
                                        static_cast<ProbabilityBand>(band))) == rows[band][severity]);
        CHECK(matrixLevel(static_cast<Severity>(band % 4), ProbabilityBand::F) == MatrixLevel::None);
    }
}

TEST_CASE("the floor: severity I from 1 in 100")
{
    CHECK(isAtLeastMendSoon(Severity::I, 0.01));
    CHECK_FALSE(isAtLeastMendSoon(Severity::I, 0.0099));
    CHECK_FALSE(isAtLeastMendSoon(Severity::II, 1.0));
}

TEST_CASE("a product of three ranks has 120 values and ties what differs; the number does not")
{
    // Counted: 1,000 products of 1 to 10; IEC 60812:2018 lists these limits (from memory)
    std::set<int> products;
    for (int a = 1; a <= 10; ++a) {
        for (int b = 1; b <= 10; ++b) {
            for (int c = 1; c <= 10; ++c)
                products.insert(a * b * c);
        }
    }
    CHECK(products.size() == 120);
    int gap = 0;
    for (auto it = std::next(products.begin()); it != products.end(); ++it)
        gap = std::max(gap, *it - *std::prev(it));
    CHECK(gap == 100);
    CHECK(10 * 2 * 3 == 4 * 5 * 3);
    // the same pair as consequence and chance: ten times the harm at a fifth of the chance is double
    CHECK(concernNumber(100 * 0.02) - concernNumber(10 * 0.10) == doctest::Approx(25 * 0.30102999566398));
}

TEST_CASE("decibels over R of 0.1 and the number are one scale")
{
    // dB = 10 log10(R / 0.1): 17.0, 15.1, 7.8, 2.6 for R of 5, 3.2, 0.6, 0.18 (worked by hand)
    const std::pair<double, double> rows[] = {{5.0, 17.0}, {3.2, 15.1}, {0.6, 7.8}, {0.18, 2.6}};
    double before = 101.0;
    for (const auto &[risk, decibel] : rows) {
        const double number = concernNumber(risk);
        CHECK((number - 25.0) / 2.5 == doctest::Approx(decibel).epsilon(0.02));
        CHECK(number < before);
        before = number;
    }
}

// SPDX-License-Identifier: Apache-2.0
// [BUTTERWORTH-1930]: half power at the edges, flat between, and the slope beyond.
#include <cmath>
#include <complex>
#include <numbers>

#include <doctest/doctest.h>

#include "road/series/band_pass.hpp"

using namespace snugwalk;

namespace {

double gainAt(const std::vector<BandSection> &sections, double f, double rate)
{
    const std::complex<double> z = std::polar(1.0, -2.0 * std::numbers::pi * f / rate);
    std::complex<double> h = 1.0;
    for (const BandSection &s : sections)
        h *= s.gain * (1.0 - z * z) / (1.0 + s.a1 * z + s.a2 * z * z);
    return std::abs(h);
}

// The analogue filter's own formula, at the warped frequencies.
double butterworthGain(int order, double low, double high, double f, double rate)
{
    const auto warped = [&](double x) { return std::tan(std::numbers::pi * x / rate); };
    const double w =
        (warped(f) * warped(f) - warped(low) * warped(high)) / (warped(f) * (warped(high) - warped(low)));
    return 1.0 / std::sqrt(1.0 + std::pow(w * w, order));
}

} // namespace

TEST_CASE("the gain is Butterworth's at every frequency, for every order, narrow and wide")
{
    constexpr double bands[][3] = {{0.5, 20, 100}, {0.5, 20, 400}, {4, 6, 50}, {0.5, 20, 50}};
    for (const auto &[low, high, rate] : bands) {
        for (const int order : {2, 4, 6, 8}) {
            const auto sections = bandPass(order, low, high, rate);
            REQUIRE(sections);
            REQUIRE(sections->size() == static_cast<std::size_t>(order));
            for (double f = 0.05; f < rate / 2; f += 0.37)
                CHECK(std::abs(gainAt(*sections, f, rate) - butterworthGain(order, low, high, f, rate)) <
                      1e-10);
            CHECK(std::abs(gainAt(*sections, low, rate) - std::sqrt(0.5)) < 1e-9);
            CHECK(std::abs(gainAt(*sections, high, rate) - std::sqrt(0.5)) < 1e-9);
            for (const BandSection &s : *sections)
                CHECK(s.a2 < 1.0); // stable
        }
    }
}

TEST_CASE("sample by sample it does what its gain says, and reset forgets")
{
    BandPass4 filter = BandPass4::make(0.5, 20, 100).value();
    double peak = 0.0;
    double first = 0.0;
    for (int i = 0; i < 6000; ++i) {
        const double y = filter.next(std::sin(2 * std::numbers::pi * 5 * i / 100.0));
        first = i == 1 ? y : first;
        peak = i > 5000 ? std::max(peak, std::abs(y)) : peak;
    }
    CHECK(std::abs(peak - 1.0) < 1e-3);
    filter.reset();
    (void)filter.next(0.0);
    CHECK(filter.next(std::sin(2 * std::numbers::pi * 5 / 100.0)) == first);
}

TEST_CASE("bands that do not fit are refused")
{
    CHECK(!bandPass(4, 0.5, 25, 50));
    CHECK(!bandPass(4, 0, 20, 100));
    CHECK(!bandPass(4, 20, 0.5, 100));
    CHECK(!bandPass(9, 0.5, 20, 100));
    CHECK(!bandPass(4, NAN, 20, 100));
}

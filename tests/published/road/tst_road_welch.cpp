// SPDX-License-Identifier: Apache-2.0
// [WELCH-1967] with the conventions of scipy.signal.welch: two sines, noise and an offset; figures computed
// with SciPy 1.10. Another list of the same figures has 0.1154911742 for line 62 and 0.630562302 for the sum,
// a few units of the last digit off what SciPy gives: 0.1154911740 and 0.6305623034.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include <doctest/doctest.h>

#include "road/profile/iso8608.hpp"
#include "road/series/welch.hpp"

using namespace snugwalk;

namespace {

std::vector<double> series()
{
    Lcg lcg(7);
    std::vector<double> x;
    constexpr double turn = 2.0 * std::numbers::pi / 100.0;
    for (int n = 0; n < 4096; ++n)
        x.push_back(std::sin(turn * 5 * n) + 0.5 * std::sin(turn * 12.3 * n) + 0.2 * (lcg.next() - 0.5) +
                    9.81);
    return x;
}

double band(const Spectrum &s, double low, double high)
{
    double sum = 0.0;
    for (std::size_t k = 0; k < s.frequency.size(); ++k)
        sum += s.frequency[k] >= low && s.frequency[k] <= high ? s.density[k] * s.frequency[1] : 0.0;
    return sum;
}

} // namespace

TEST_CASE("lines of the spectrum")
{
    const auto x = series();
    CHECK(std::abs(x[0] - 9.82941121) < 5e-9);
    CHECK(std::abs(x[1] - 10.42795267) < 5e-9);
    CHECK(std::abs(x[2] - 10.86396228) < 5e-9);
    Welch welch = Welch::make(100, 512).value();
    welch.add(x);
    const auto s = welch.finish();
    REQUIRE(s);
    CHECK(s->segments == 15);
    CHECK(s->frequency[1] == 0.1953125);
    constexpr double rows[][3] = {{1, 2.0290388e-4, 8},   {10, 8.6265422e-5, 8},  {25, 1.0635109669, 11},
                                  {26, 1.3895744226, 11}, {27, 0.0877208699, 9},  {62, 0.1154911740, 10},
                                  {63, 0.4279072833, 10}, {64, 0.1000110347, 10}, {100, 8.0731774e-5, 8},
                                  {200, 7.4924088e-5, 8}};
    for (const auto &row : rows) {
        const double line = row[0], density = row[1], digits = row[2];
        const double unit = std::pow(10.0, std::floor(std::log10(density)) + 1 - digits);
        INFO("line ", line, ": ", s->density[static_cast<std::size_t>(line)] - density);
        CHECK(std::abs(s->density[static_cast<std::size_t>(line)] - density) <=
              std::max(0.501 * unit, 1e-9 * density));
    }
    // the power of the spectrum beside the series' own, 0.630055520
    double sum = 0.0;
    double squares = 0.0;
    for (const double value : x) {
        sum += value;
        squares += (value - 9.81) * (value - 9.81);
    }
    const double mean = sum / 4096.0 - 9.81;
    CHECK(std::abs(squares / 4096.0 - mean * mean - 0.630055520) < 5e-10);
    CHECK(std::abs(band(*s, 0, 50) - 0.6305623034) < 6e-10);
    CHECK(std::abs(band(*s, 3, 7) - 0.501805928) < 6e-10);
    CHECK(std::abs(band(*s, 11, 14) - 0.125801195) < 6e-10);
}

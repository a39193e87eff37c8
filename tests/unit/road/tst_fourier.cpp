// SPDX-License-Identifier: Apache-2.0
// Transforms against the sum they stand for, for lengths of both kinds.
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include <doctest/doctest.h>

#include "road/series/fourier.hpp"

using namespace snugwalk;

TEST_CASE("lines are those of the plain sum")
{
    std::mt19937 rng(1);
    std::normal_distribution<double> normal;
    for (const std::size_t n :
         {1U, 2U, 3U, 4U, 5U, 8U, 12U, 16U, 31U, 32U, 64U, 100U, 128U, 210U, 256U, 512U}) {
        std::vector<double> re(n);
        std::vector<double> im(n);
        for (std::size_t i = 0; i < n; ++i) {
            re[i] = normal(rng);
            im[i] = normal(rng);
        }
        const auto inRe = re;
        const auto inIm = im;
        Fourier fourier(n);
        fourier.forward(re, im);
        for (std::size_t k = 0; k < n; ++k) {
            long double sumRe = 0.0L;
            long double sumIm = 0.0L;
            for (std::size_t i = 0; i < n; ++i) {
                const long double angle = -2.0L * std::numbers::pi_v<long double> *
                                          static_cast<long double>((k * i) % n) / static_cast<long double>(n);
                sumRe += inRe[i] * std::cos(angle) - inIm[i] * std::sin(angle);
                sumIm += inRe[i] * std::sin(angle) + inIm[i] * std::cos(angle);
            }
            CAPTURE(n);
            CAPTURE(k);
            CHECK(std::abs(re[k] - static_cast<double>(sumRe)) <
                  1e-12 * std::sqrt(static_cast<double>(n)) * 4);
            CHECK(std::abs(im[k] - static_cast<double>(sumIm)) <
                  1e-12 * std::sqrt(static_cast<double>(n)) * 4);
        }
        // Parseval: no energy is lost
        double before = 0.0;
        double after = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            before += inRe[i] * inRe[i] + inIm[i] * inIm[i];
            after += re[i] * re[i] + im[i] * im[i];
        }
        CHECK(std::abs(after / static_cast<double>(n) / before - 1.0) < 1e-12);
    }
}

TEST_CASE("a transform used again gives the same")
{
    for (const std::size_t n : {64U, 60U}) {
        Fourier fourier(n);
        std::vector<double> first(n);
        for (std::size_t i = 0; i < n; ++i)
            first[i] = std::sin(static_cast<double>(i * i));
        std::vector<double> im1(n);
        std::vector<double> im2(n);
        auto second = first;
        fourier.forward(first, im1);
        fourier.forward(second, im2);
        CHECK(first == second);
        CHECK(im1 == im2);
    }
}

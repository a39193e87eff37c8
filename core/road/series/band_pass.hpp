// SPDX-License-Identifier: Apache-2.0
// Butterworth band-pass filters as a chain of second-order sections.
#pragma once

#include <array>
#include <span>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// One section: gain (1 - z^-2) / (1 + a1 z^-1 + a2 z^-2), its zeros at standstill and at half the rate.
struct BandSection {
    double gain = 1.0, a1 = 0.0, a2 = 0.0;
};

/// The sections of an order-n Butterworth band-pass, n of them, by the bilinear transform with the edges
/// put right. The gain is spread evenly.
///
/// Source:   [BUTTERWORTH-1930]; the same filter as scipy.signal.butter(n, [low, high], "band", output="sos")
/// Accuracy: 1e-9 of SciPy's answer
/// Limits:   0 < low < high < rate / 2, order 1 to 8
/// Tests:    tests/unit/road/tst_band_pass.cpp, tests/reference/road/road_scipy.py
[[nodiscard]] Result<std::vector<BandSection>> bandPass(int order, double low, double high, double rate);

/// Four sections on one stream, one sample after another.
class BandPass4 {
public:
    /// Order 4, as `bandPass`.
    [[nodiscard]] static Result<BandPass4> make(double low, double high, double rate);

    [[nodiscard]] double next(double x)
    {
        for (Stage &s : m_stages) {
            const double in = s.gain * x;
            const double y = in + s.first;
            s.first = s.second - s.a1 * y;
            s.second = -in - s.a2 * y;
            x = y;
        }
        return x;
    }
    void filter(std::span<double> values);
    void reset();

private:
    struct Stage {
        double gain, a1, a2;
        double first = 0.0, second = 0.0;
    };
    std::array<Stage, 4> m_stages{};
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The power spectral density of a series of any length, by averaging over overlapping segments.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "road/series/fourier.hpp"

namespace snugwalk {

struct Spectrum {
    std::vector<double> frequency; ///< Hz
    std::vector<double> density;   ///< one-sided, unit^2 / Hz
    long long segments = 0;
    bool tooShort = false; ///< the series did not fill a segment: it was taken as one
};

/// Welch's method, one pass, memory of a few segments. Hann window, periodic; each segment less its mean;
/// half overlap; what does not fill a segment at the end is dropped.
///
/// Two segments go through one transform as real and imaginary part: their sum of powers is then
/// (|Z[k]|^2 + |Z[N-k]|^2) / 2, without taking them apart.
///
/// Source:   [WELCH-1967]; conventions of scipy.signal.welch with its defaults
/// Accuracy: 1e-9 of SciPy's
/// Tests:    tests/published/road/tst_road_welch.cpp, tests/reference/road/road_scipy.py
class Welch {
public:
    /// \param rate samples a second. \param segment samples a segment, 8 to 2^22.
    /// \returns `OutOfRange` beyond that.
    [[nodiscard]] static Result<Welch> make(double rate, std::size_t segment);

    void add(double value)
    {
        m_buffer[m_filled++] = value;
        if (m_filled == m_buffer.size())
            takePair();
    }
    void add(std::span<const double> values);
    /// `InvalidInput` when fewer than two values came.
    [[nodiscard]] Result<Spectrum> finish();

private:
    Welch(double rate, std::size_t segment);
    void takePair();
    void takeLast(std::size_t length);
    [[nodiscard]] Spectrum spectrum(std::size_t length) const;

    double m_rate;
    std::size_t m_segment;
    std::size_t m_hop;
    std::vector<double> m_window;
    std::vector<double> m_buffer; ///< two overlapping segments
    std::size_t m_filled = 0;
    Fourier m_fourier;
    std::vector<double> m_re, m_im;
    std::vector<double> m_power; ///< sum of |Z|^2, by line
    long long m_segments = 0;
};

} // namespace snugwalk

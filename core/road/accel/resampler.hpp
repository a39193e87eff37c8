// SPDX-License-Identifier: Apache-2.0
// Samples as a phone's clock gives them, laid on even steps of time.
#pragma once

#include <cmath>
#include <limits>

#include "road/accel/accel_log.hpp"

namespace snugwalk {

/// Straight lines between samples, evaluated every 1 / rate from the first one on. Where more than 0.5 s
/// are missing a new run begins.
///
/// Accuracy: exact on samples that lie on the steps; a sine of a tenth of the rate loses 2 % of amplitude
///           at worst
/// Tests:    tests/unit/road/tst_resampler.cpp
class Resampler {
public:
    static constexpr double longestStep = 0.5; ///< seconds

    explicit Resampler(double rate) : m_rate(rate) {}

    /// `out(sample)` for every step up to this sample; `gap()` before a new run.
    template <typename Out, typename Gap>
    void add(const AccelSample &sample, Out &&out, Gap &&gap)
    {
        if (!m_begun || sample.time - m_before.time > longestStep) {
            if (m_begun)
                gap();
            m_begun = true;
            m_origin = sample.time;
            m_next = 0;
            m_before = sample;
        }
        const double to = sample.time - m_origin;
        const double from = m_before.time - m_origin;
        const double step = to - from;
        for (double at = static_cast<double>(m_next) / m_rate; at <= to + tolerance;
             at = static_cast<double>(++m_next) / m_rate) {
            const double share = step > 0.0 ? std::fmin(1.0, (at - from) / step) : 1.0;
            AccelSample even;
            even.time = m_origin + at;
            for (std::size_t i = 0; i < 3; ++i)
                even.a[i] = m_before.a[i] + share * (sample.a[i] - m_before.a[i]);
            even.speed = speedBetween(m_before.speed, sample.speed, share);
            out(even);
        }
        m_before = sample;
    }

private:
    static constexpr double tolerance = 1e-6; // of a double that counts seconds since 1970

    // one of the two may be unknown: logs give a speed every second only
    static double speedBetween(double a, double b, double share)
    {
        if (std::isnan(a) || std::isnan(b))
            return std::isnan(b) ? a : b;
        return a + share * (b - a);
    }

    double m_rate;
    AccelSample m_before;
    double m_origin = 0.0;
    long long m_next = 0;
    bool m_begun = false;
};

} // namespace snugwalk

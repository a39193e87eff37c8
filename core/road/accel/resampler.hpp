// SPDX-License-Identifier: Apache-2.0
// Samples as a phone's clock gives them, laid on even steps of time.
#pragma once

#include <cstddef>

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
            m_at = 0.0;
            m_before = sample;
        }
        const double to = sample.time - m_origin;
        while (m_at < to - tolerance) {
            const double from = m_before.time - m_origin;
            const double share = (m_at - from) / (to - from);
            AccelSample even;
            even.time = m_origin + m_at;
            for (std::size_t i = 0; i < 3; ++i)
                even.a[i] = m_before.a[i] + share * (sample.a[i] - m_before.a[i]);
            even.speed = m_before.speed + share * (sample.speed - m_before.speed);
            goOn();
            out(even);
        }
        if (m_at <= to + tolerance) { // it lies on a step as it is
            goOn();
            out(sample);
        }
        m_before = sample;
    }

private:
    static constexpr double tolerance = 1e-6; // of a double that counts seconds since 1970

    void goOn() { m_at = static_cast<double>(++m_next) / m_rate; }

    double m_rate;
    AccelSample m_before;
    double m_origin = 0.0;
    long long m_next = 0;
    double m_at = 0.0; ///< seconds of the next step after the origin
    bool m_begun = false;
};

} // namespace snugwalk

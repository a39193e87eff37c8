// SPDX-License-Identifier: Apache-2.0
// Gives every sample within `start`, unless it is stopped on the way.
#include "sensor/recorded_vibration.hpp"

namespace snugwalk {

void RecordedVibration::start()
{
    m_running = true;
    for (const AccelSample &sample : m_samples) {
        if (!m_running)
            return;
        Q_EMIT sampled(sample.time, sample.a[0], sample.a[1], sample.a[2]);
    }
    m_running = false;
    Q_EMIT ended();
}

} // namespace snugwalk

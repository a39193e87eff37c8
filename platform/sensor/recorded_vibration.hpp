// SPDX-License-Identifier: Apache-2.0
// Accelerations known beforehand.
#pragma once

#include <vector>

#include "road/accel/accel_log.hpp"
#include "vibration_source.hpp"

namespace snugwalk {

class RecordedVibration final : public VibrationSource {
    Q_OBJECT
public:
    explicit RecordedVibration(std::vector<AccelSample> samples) : m_samples(std::move(samples)) {}
    [[nodiscard]] QString kind() const override { return QStringLiteral("log"); }
    void start() override;
    void stop() override { m_running = false; }

private:
    std::vector<AccelSample> m_samples;
    bool m_running = false;
};

} // namespace snugwalk

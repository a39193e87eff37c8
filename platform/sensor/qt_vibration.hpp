// SPDX-License-Identifier: Apache-2.0
// The accelerometer of the machine, through Qt Sensors.
#pragma once

#include <QAccelerometer>

#include "vibration_source.hpp"

namespace snugwalk {

class QtVibration final : public VibrationSource {
    Q_OBJECT
public:
    QtVibration();
    /// Whether the machine has one that can be asked.
    [[nodiscard]] bool isThere();
    [[nodiscard]] QString kind() const override { return QStringLiteral("sensor"); }
    void start() override;
    void stop() override { m_sensor.stop(); }

private:
    void take();

    QAccelerometer m_sensor;
    double m_offset = 0.0; ///< seconds from the sensor's clock to that of the machine
    bool m_offsetKnown = false;
};

} // namespace snugwalk

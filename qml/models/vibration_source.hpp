// SPDX-License-Identifier: Apache-2.0
// Where accelerations come from; the makers live in platform/sensor.
#pragma once

#include <QObject>

namespace snugwalk {

/// Gives samples while it runs, gravity included. A source that has nothing to give stays silent.
class VibrationSource : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// "sensor" or "log".
    [[nodiscard]] virtual QString kind() const = 0;
    virtual void start() = 0;
    virtual void stop() = 0;

Q_SIGNALS:
    /// Seconds since 1970 by the machine's clock, or as the log counts; m/s^2 along the device's own axes.
    void sampled(double seconds, double x, double y, double z);
    /// The sensor is refused or gone, or the log is over.
    void ended();
};

} // namespace snugwalk

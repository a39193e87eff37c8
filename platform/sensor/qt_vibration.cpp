// SPDX-License-Identifier: Apache-2.0
// From Qt's reading to a sample: 100 Hz, gravity included, times since 1970.
#include "sensor/qt_vibration.hpp"

#include <QDateTime>

namespace snugwalk {
namespace {

constexpr int wantedRate = 100; // Hz

} // namespace

QtVibration::QtVibration()
{
    m_sensor.setAccelerationMode(QAccelerometer::Combined);
    m_sensor.setDataRate(wantedRate);
    m_sensor.setSkipDuplicates(false);
    m_sensor.setAlwaysOn(true); // a phone in a pocket or a locker switches its screen off
    connect(&m_sensor, &QSensor::readingChanged, this, &QtVibration::take);
    connect(&m_sensor, &QSensor::sensorError, this, &VibrationSource::ended);
}

bool QtVibration::isThere() { return m_sensor.connectToBackend(); }

void QtVibration::start()
{
    m_offsetKnown = false;
    if (!m_sensor.start())
        Q_EMIT ended();
}

void QtVibration::take()
{
    const QAccelerometerReading *reading = m_sensor.reading();
    if (reading == nullptr)
        return;
    // the sensor's clock begins anywhere, but it is even: the machine's clock is asked once
    const double sensorSeconds = static_cast<double>(reading->timestamp()) * 1e-6;
    if (!m_offsetKnown)
        m_offset = static_cast<double>(QDateTime::currentMSecsSinceEpoch()) * 1e-3 - sensorSeconds;
    m_offsetKnown = true;
    Q_EMIT sampled(sensorSeconds + m_offset, reading->x(), reading->y(), reading->z());
}

} // namespace snugwalk

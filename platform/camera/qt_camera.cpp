// SPDX-License-Identifier: Apache-2.0
// A capture session with a sink for the viewfinder and a still of full size.
#include "camera/qt_camera.hpp"

#include <QCamera>
#include <QImageCapture>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>
#include <QVideoSink>

namespace snugwalk {
namespace {

// A viewfinder is for aiming; more frames only warm the phone.
constexpr qint64 millisecondsAFrame = 50;

} // namespace

struct QtCamera::Parts {
    QCamera camera;
    QImageCapture still;
    QVideoSink sink;
    QMediaCaptureSession session;
};

QtCamera::QtCamera() = default;
QtCamera::~QtCamera() = default;

void QtCamera::watchDevices() const
{
    if (m_devices)
        return;
    auto devices = std::make_unique<QMediaDevices>();
    connect(devices.get(), &QMediaDevices::videoInputsChanged, this, &CameraSource::thereChanged);
    m_devices = std::move(devices);
}

bool QtCamera::isThere() const
{
    watchDevices();
    return !QMediaDevices::videoInputs().isEmpty();
}

void QtCamera::start()
{
    if (m_parts)
        return;
    m_parts = std::make_unique<Parts>();
    m_parts->session.setCamera(&m_parts->camera);
    m_parts->session.setImageCapture(&m_parts->still);
    m_parts->session.setVideoSink(&m_parts->sink);
    m_parts->still.setQuality(QImageCapture::HighQuality);
    connect(&m_parts->sink, &QVideoSink::videoFrameChanged, this, [this] { show(); });
    connect(&m_parts->still, &QImageCapture::imageSaved, this,
            [this](int, const QString &file) { Q_EMIT taken(file); });
    connect(&m_parts->still, &QImageCapture::errorOccurred, this, [this] { Q_EMIT failed(); });
    // what the camera can do is known once it runs
    connect(&m_parts->camera, &QCamera::supportedFeaturesChanged, this, &CameraSource::torchChanged);
    connect(&m_parts->camera, &QCamera::activeChanged, this, &CameraSource::torchChanged);
    m_parts->camera.start();
    Q_EMIT torchChanged();
}

void QtCamera::stop()
{
    m_parts.reset();
    Q_EMIT torchChanged();
}

bool QtCamera::hasTorch() const { return m_parts && m_parts->camera.isTorchModeSupported(QCamera::TorchOn); }

void QtCamera::setTorch(bool on)
{
    if (m_parts)
        m_parts->camera.setTorchMode(on ? QCamera::TorchOn : QCamera::TorchOff);
}

void QtCamera::show()
{
    if (m_sinceFrame.isValid() && m_sinceFrame.elapsed() < millisecondsAFrame)
        return;
    m_sinceFrame.start();
    const QImage image = m_parts->sink.videoFrame().toImage();
    if (!image.isNull())
        Q_EMIT frame(image);
}

void QtCamera::take(const QString &file)
{
    if (!m_parts || !m_parts->still.isReadyForCapture()) {
        Q_EMIT failed();
        return;
    }
    m_parts->still.captureToFile(file);
}

} // namespace snugwalk

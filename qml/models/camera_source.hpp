// SPDX-License-Identifier: Apache-2.0
// Where photos are taken from; the makers live in platform/camera.
#pragma once

#include <QImage>
#include <QObject>

namespace snugwalk {

/// Shows what it sees while it runs, and takes one photo at a time.
class CameraSource : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// Whether there is a camera to press on. May ask the machine, which takes a moment the first time.
    [[nodiscard]] virtual bool isThere() const = 0;
    virtual void start() = 0;
    virtual void stop() = 0;
    /// Whether the camera that runs has a light; false while none runs. `torchChanged` follows when that
    /// changes.
    [[nodiscard]] virtual bool hasTorch() const { return false; }
    virtual void setTorch(bool) {}
    /// Writes a photo to `file`; `taken` or `failed` follows.
    virtual void take(const QString &file) = 0;

Q_SIGNALS:
    /// A camera was plugged in or taken away.
    void thereChanged();
    void torchChanged();
    void frame(const QImage &image);
    void taken(const QString &file);
    void failed();
};

} // namespace snugwalk

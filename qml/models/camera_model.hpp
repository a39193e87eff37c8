// SPDX-License-Identifier: Apache-2.0
// Taking photos, and those that were taken before their marks: they wait in a folder of their own.
#pragma once

#include <QImage>
#include <QObject>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"

namespace snugwalk {

class CameraSource;

/// A photo that waits survives a killed program. It leaves the folder once a finding has it.
class CameraModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool there READ isThere NOTIFY thereChanged)
    Q_PROPERTY(bool live READ isLive NOTIFY frameChanged)
    Q_PROPERTY(bool busy READ isBusy NOTIFY busyChanged)
    Q_PROPERTY(bool hasTorch READ hasTorch NOTIFY torchChanged)
    Q_PROPERTY(bool torch READ torch WRITE setTorch NOTIFY torchChanged)
    Q_PROPERTY(QStringList waiting READ waiting NOTIFY waitingChanged)
    Q_PROPERTY(int away READ away NOTIFY waitingChanged)
public:
    CameraModel(const ActDesk *desk, QObject *parent);

    /// Asks the machine the first time it is read, not before.
    [[nodiscard]] bool isThere() const;
    [[nodiscard]] bool isLive() const { return !m_frame.isNull(); }
    [[nodiscard]] bool isBusy() const { return m_taking; }
    /// Whether the camera at hand has a light.
    [[nodiscard]] bool hasTorch() const;
    /// Whether it shines; it goes out with the camera.
    [[nodiscard]] bool torch() const { return m_torch && hasTorch(); }
    void setTorch(bool on);
    /// Addresses of files without a finding, oldest first.
    [[nodiscard]] QStringList waiting() const { return m_waiting; }
    /// How many were put away and can be brought back.
    [[nodiscard]] int away() const { return m_away; }
    /// What the camera sees; null before the first frame.
    [[nodiscard]] const QImage &frame() const { return m_frame; }

    /// Reads the folder again, on the worker.
    void refresh();

    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();
    /// `taken` follows, or the session's error.
    Q_INVOKABLE void take();
    /// Copies files chosen elsewhere, such as those of a camera on a pole, to where photos wait.
    Q_INVOKABLE void keep(const QVariantList &files);
    Q_INVOKABLE void putAway(const QString &file);
    Q_INVOKABLE void bringBack();

Q_SIGNALS:
    void thereChanged();
    void frameChanged();
    void busyChanged();
    void torchChanged();
    void waitingChanged();
    void taken(const QString &file);

private:
    void noteFrame(const QImage &image);
    void finish();

    const ActDesk *m_desk;
    CameraSource *m_source;
    QImage m_frame;
    QStringList m_waiting;
    int m_away = 0;
    int m_count = 0;
    bool m_taking = false;
    bool m_torch = false;
};

} // namespace snugwalk

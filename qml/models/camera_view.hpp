// SPDX-License-Identifier: Apache-2.0
// What the camera sees, drawn whole in the middle of its item.
#pragma once

#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include "camera_model.hpp"

namespace snugwalk {

class CameraView : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(snugwalk::CameraModel *camera READ camera WRITE setCamera NOTIFY cameraChanged)
public:
    explicit CameraView(QQuickItem *parent = nullptr) : QQuickPaintedItem(parent) {}
    [[nodiscard]] CameraModel *camera() const { return m_camera; }
    void setCamera(CameraModel *camera);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void cameraChanged();

private:
    QPointer<CameraModel> m_camera;
};

} // namespace snugwalk

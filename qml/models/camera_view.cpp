// SPDX-License-Identifier: Apache-2.0
// Painting the last frame.
#include "camera_view.hpp"

#include <QPainter>

namespace snugwalk {

void CameraView::setCamera(CameraModel *camera)
{
    if (m_camera == camera)
        return;
    if (m_camera)
        m_camera->disconnect(this);
    m_camera = camera;
    if (m_camera)
        connect(m_camera, &CameraModel::frameChanged, this, [this] { update(); });
    Q_EMIT cameraChanged();
    update();
}

void CameraView::paint(QPainter *painter)
{
    if (!m_camera || !m_camera->isLive())
        return;
    const QImage &frame = m_camera->frame();
    QSizeF size = frame.size();
    size.scale(QSizeF(width(), height()), Qt::KeepAspectRatio);
    const QPointF corner((width() - size.width()) / 2, (height() - size.height()) / 2);
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(QRectF(corner, size), frame);
}

} // namespace snugwalk

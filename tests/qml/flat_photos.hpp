// SPDX-License-Identifier: Apache-2.0
// Stand-in photos: a row of rivets whose gap grows with the hash's first letter.
#pragma once

#include <QPainter>
#include <QQuickImageProvider>

namespace snugwalk {

class FlatPhotos : public QQuickImageProvider {
public:
    FlatPhotos() : QQuickImageProvider(QQuickImageProvider::Image) {}
    QImage requestImage(const QString &id, QSize *size, const QSize &) override
    {
        QImage image(400, 300, QImage::Format_RGB32);
        image.fill(QColor(0xD9, 0xDC, 0xDF));
        QPainter painter(&image);
        const int step = id.isEmpty() ? 0 : id.back().unicode() - u'a';
        painter.fillRect(0, 150, 400, 10 + 14 * step, QColor(0xB0, 0xB6, 0xBC));
        for (int i = 0; i < 6; ++i)
            painter.drawEllipse(QPoint(40 + 64 * i, 130 + (i == 3 ? 8 * step : 0)), 14, 14);
        if (size)
            *size = image.size();
        return image;
    }
};

} // namespace snugwalk

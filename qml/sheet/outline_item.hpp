// SPDX-License-Identifier: Apache-2.0
// Strokes the paths of a sheet: painted when sheet, scale, place or pens change, and at no other time.
#pragma once

#include <vector>

#include <QColor>
#include <QPainterPath>
#include <QPointer>
#include <QQuickPaintedItem>

#include "rig_sheet.hpp"

namespace snugwalk {

class OutlineItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(snugwalk::RigSheet *sheet READ sheet WRITE setSheet NOTIFY sheetChanged)
    Q_PROPERTY(double metre MEMBER m_metre NOTIFY lookChanged)
    Q_PROPERTY(QPointF origin MEMBER m_origin NOTIFY lookChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY lookChanged)
    Q_PROPERTY(QColor quiet MEMBER m_quiet NOTIFY lookChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY lookChanged)
    Q_PROPERTY(double heavy MEMBER m_heavy NOTIFY lookChanged)
    Q_PROPERTY(double thin MEMBER m_thin NOTIFY lookChanged)
public:
    explicit OutlineItem(QQuickItem *parent = nullptr);

    [[nodiscard]] RigSheet *sheet() const { return m_sheet; }
    void setSheet(RigSheet *sheet);
    void paint(QPainter *painter) override;

Q_SIGNALS:
    void sheetChanged();
    void lookChanged();

private:
    struct Line {
        QPainterPath path;
        outline::Pen pen;
        outline::Dash dash;
        bool filled;
    };
    void forget();
    void build();

    QPointer<RigSheet> m_sheet;
    double m_metre = 0.0; ///< pixels a metre
    QPointF m_origin;     ///< of the sheet's corner, in pixels of this item
    QColor m_ink = Qt::black;
    QColor m_quiet = Qt::gray;
    QColor m_paper = Qt::white;
    double m_heavy = 2.0;
    double m_thin = 1.0;
    bool m_built = false;
    std::vector<Line> m_lines; ///< in metres
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Paths stay in metres and are made once; the painter scales them, its pens keep their width.
#include "outline_item.hpp"

#include <QPainter>

#include "outline_path.hpp"

namespace snugwalk {

OutlineItem::OutlineItem(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &OutlineItem::lookChanged, this, [this] { update(); });
}

void OutlineItem::setSheet(RigSheet *sheet)
{
    if (sheet == m_sheet)
        return;
    if (m_sheet)
        m_sheet->disconnect(this);
    m_sheet = sheet;
    if (sheet != nullptr)
        connect(sheet, &RigSheet::changed, this, &OutlineItem::forget);
    forget();
    Q_EMIT sheetChanged();
}

void OutlineItem::forget()
{
    m_built = false;
    update();
}

void OutlineItem::build()
{
    m_lines.clear();
    m_built = true;
    if (!m_sheet)
        return;
    for (const outline::Stroke &stroke : m_sheet->outline().strokes)
        m_lines.push_back({painterPath(stroke), stroke.pen, stroke.dash, stroke.filled});
}

void OutlineItem::paint(QPainter *painter)
{
    if (!m_built)
        build();
    if (!(m_metre > 0.0))
        return;
    painter->translate(m_origin);
    painter->scale(m_metre, m_metre);
    for (const Line &line : m_lines) {
        const bool bold = line.pen == outline::Pen::Bold;
        const bool heavy = line.pen == outline::Pen::Heavy;
        QPen pen(line.pen == outline::Pen::Quiet ? m_quiet : m_ink,
                 bold    ? m_heavy * 3
                 : heavy ? m_heavy
                         : m_thin,
                 Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        pen.setCosmetic(true); // as wide at every scale
        if (line.dash != outline::Dash::None) {
            pen.setCapStyle(Qt::FlatCap);
            pen.setDashPattern(line.dash == outline::Dash::Dashed ? QList<qreal>{4, 3}
                                                                  : QList<qreal>{12, 3, 2, 3});
        }
        painter->setPen(pen);
        painter->setBrush(line.filled ? QBrush(m_paper) : QBrush(Qt::NoBrush));
        painter->drawPath(line.path);
    }
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// One step, one call.
#include "outline_path.hpp"

namespace snugwalk {

QPainterPath painterPath(const outline::Stroke &stroke)
{
    using Kind = outline::Step::Kind;
    const auto point = [](outline::PaperSpot spot) { return QPointF(spot.x, spot.y); };
    QPainterPath path;
    for (const outline::Step &step : stroke.steps) {
        switch (step.kind) {
        case Kind::Move:
            path.moveTo(point(step.to));
            break;
        case Kind::Line:
            path.lineTo(point(step.to));
            break;
        case Kind::Cubic:
            path.cubicTo(point(step.first), point(step.second), point(step.to));
            break;
        case Kind::Close:
            path.closeSubpath();
            break;
        }
    }
    return path;
}

} // namespace snugwalk

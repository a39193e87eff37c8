// SPDX-License-Identifier: Apache-2.0
// Shares to maps and back.
#include "drawing_words.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Drawing)
};

QString rulerText(const Voice &voice, const DrawnShape &shape)
{
    if (shape.kind != ShapeKind::Ruler || !shape.length)
        return Voice::text(shape.text);
    const QString words = voice.quantity(*shape.length);
    if (shape.text == byRatio)
        return Words::tr("about %1", "a length told by ratio").arg(words);
    return shape.text.empty() ? words : words + QStringLiteral(", ") + Voice::text(shape.text);
}

} // namespace

QVariantList shapeMaps(const Voice &voice, const std::vector<DrawnShape> &shapes)
{
    QVariantList list;
    for (const DrawnShape &shape : shapes) {
        QVariantMap map{{QStringLiteral("kind"), Voice::text(slug(shape.kind))},
                        {QStringLiteral("x1"), shape.x1},
                        {QStringLiteral("y1"), shape.y1},
                        {QStringLiteral("x2"), shape.x2},
                        {QStringLiteral("y2"), shape.y2},
                        {QStringLiteral("text"), rulerText(voice, shape)},
                        {QStringLiteral("told"), Voice::text(shape.text)}};
        if (shape.length)
            map[QStringLiteral("metres")] = shape.length->si();
        list << map;
    }
    return list;
}

std::optional<ShapeKind> readShapeKind(const QString &slug) { return parseShapeKind(slug.toStdString()); }

std::vector<DrawnShape> readShapes(const QVariantList &maps)
{
    std::vector<DrawnShape> shapes;
    for (const QVariant &entry : maps) {
        const QVariantMap map = entry.toMap();
        const auto share = [&](const char *key) {
            return std::clamp(map.value(QLatin1String(key)).toDouble(), 0.0, 1.0);
        };
        const auto kind = readShapeKind(map.value(QStringLiteral("kind")).toString());
        if (!kind)
            continue;
        DrawnShape shape{*kind, share("x1"), share("y1"), share("x2"), share("y2"), std::nullopt, {}};
        shape.text = map.value(QStringLiteral("told")).toString().toStdString();
        if (map.contains(QStringLiteral("metres")))
            shape.length = metres(map.value(QStringLiteral("metres")).toDouble());
        shapes.push_back(std::move(shape));
    }
    return shapes;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Each member written and read side by side.
#include "drawn_rig.hpp"

#include <QString>

#include "rig/names.hpp"

namespace snugwalk {
namespace {

QString word(std::string_view slug)
{
    return QString::fromUtf8(slug.data(), static_cast<qsizetype>(slug.size()));
}

std::string text(const QVariantMap &map, const char *key)
{
    return map.value(QLatin1String(key)).toString().toStdString();
}

Length metre(const QVariantMap &map, const char *key)
{
    return Length::fromSi(map.value(QLatin1String(key)).toDouble());
}

template <typename Choice>
void take(const QVariantMap &map, const char *key, Choice &to)
{
    if (const auto known = parseChoice<Choice>(text(map, key)))
        to = *known;
}

Opening openingOf(const QVariantMap &map)
{
    Opening opening;
    opening.name = text(map, "name");
    take(map, "kind", opening.kind);
    take(map, "face", opening.face);
    opening.at = {metre(map, "x"), metre(map, "y"), metre(map, "z")};
    opening.width = metre(map, "w");
    opening.height = metre(map, "h");
    return opening;
}

} // namespace

QVariantList openingList(const Rig &rig)
{
    QVariantList list;
    for (const Opening &o : rig.openings) {
        list << QVariantMap{
            {QStringLiteral("name"), word(o.name)},       {QStringLiteral("kind"), word(slug(o.kind))},
            {QStringLiteral("face"), word(slug(o.face))}, {QStringLiteral("x"), o.at.aft.si()},
            {QStringLiteral("y"), o.at.right.si()},       {QStringLiteral("z"), o.at.up.si()},
            {QStringLiteral("w"), o.width.si()},          {QStringLiteral("h"), o.height.si()}};
    }
    return list;
}

QVariantMap drawnRig(const Rig &rig)
{
    QVariantList axles;
    for (const Length &axle : rig.measures.axles)
        axles << axle.si();
    QVariantList fitted;
    for (const std::string &fitting : rig.fittings)
        fitted << word(fitting);
    return {{QStringLiteral("kindSlug"), word(slug(rig.kind))},
            {QStringLiteral("practice"), word(slug(rig.practice))},
            {QStringLiteral("hitch"), word(slug(rig.hitch))},
            {QStringLiteral("bodyLength"), rig.measures.length.si()},
            {QStringLiteral("bodyWidth"), rig.measures.width.si()},
            {QStringLiteral("bodyHeight"), rig.measures.height.si()},
            {QStringLiteral("floorHeight"), rig.measures.floorHeight.si()},
            {QStringLiteral("hitchLength"), rig.measures.hitchLength.si()},
            {QStringLiteral("axles"), axles},
            {QStringLiteral("openings"), openingList(rig)},
            {QStringLiteral("fitted"), fitted},
            {QStringLiteral("kerbLeft"), kerbIsLeft(rig)}};
}

Rig rigOfDrawn(const QVariantMap &map)
{
    Rig rig;
    take(map, "kindSlug", rig.kind);
    take(map, "practice", rig.practice);
    take(map, "hitch", rig.hitch);
    rig.measures.length = metre(map, "bodyLength");
    rig.measures.width = metre(map, "bodyWidth");
    rig.measures.height = metre(map, "bodyHeight");
    rig.measures.floorHeight = metre(map, "floorHeight");
    rig.measures.hitchLength = metre(map, "hitchLength");
    for (const QVariant &axle : map.value(QStringLiteral("axles")).toList())
        rig.measures.axles.push_back(Length::fromSi(axle.toDouble()));
    for (const QVariant &opening : map.value(QStringLiteral("openings")).toList())
        rig.openings.push_back(openingOf(opening.toMap()));
    for (const QVariant &fitting : map.value(QStringLiteral("fitted")).toList())
        rig.fittings.insert(fitting.toString().toStdString());
    return rig;
}

} // namespace snugwalk

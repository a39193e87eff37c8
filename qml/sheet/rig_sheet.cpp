// SPDX-License-Identifier: Apache-2.0
// Questions of pages handed to the core.
#include "rig_sheet.hpp"

#include <algorithm>

#include "drawn_rig.hpp"
#include "rig/names.hpp"
#include "rig/outline/balloons.hpp"

namespace snugwalk {
namespace {

QString word(std::string_view slug)
{
    return QString::fromUtf8(slug.data(), static_cast<qsizetype>(slug.size()));
}

} // namespace

void RigSheet::touch()
{
    m_outline.reset();
    Q_EMIT changed();
}

void RigSheet::setRig(const QVariantMap &rig)
{
    if (rig == m_map)
        return;
    m_map = rig;
    m_rig = rigOfDrawn(rig);
    touch();
}

void RigSheet::setFace(const QString &face)
{
    if (face == m_faceSlug)
        return;
    m_faceSlug = face;
    m_view.face = parseChoice<Face>(face.toStdString()).value_or(Face::Left);
    touch();
}

void RigSheet::setNoseLeft(bool noseLeft)
{
    if (noseLeft == m_view.noseLeft)
        return;
    m_view.noseLeft = noseLeft;
    touch();
}

void RigSheet::setStand(const QString &stand)
{
    if (stand == m_stand)
        return;
    m_stand = stand;
    touch();
}

std::optional<outline::StandPlace> RigSheet::standing() const
{
    if (m_stand.isEmpty())
        return std::nullopt;
    return outline::standPlace(m_rig, m_stand.toStdString());
}

bool RigSheet::stands() const
{
    const auto place = standing();
    return place && place->face == m_view.face && place->level != outline::StandLevel::None;
}

QString RigSheet::standFace() const
{
    const auto place = standing();
    return place ? word(slug(place->face)) : QString();
}

QString RigSheet::standLevel() const
{
    const auto place = standing();
    return word(outline::slug(place ? place->level : outline::StandLevel::None));
}

const outline::Outline &RigSheet::outline() const
{
    if (!m_outline)
        m_outline = outlineOf(m_rig, m_view, standing());
    return *m_outline;
}

QVariantList RigSheet::tanks() const
{
    QVariantList list;
    for (const outline::TankLetter &tank : outline().tanks)
        list << QVariantMap{{QStringLiteral("letter"), QString(QLatin1Char(tank.letter))},
                            {QStringLiteral("kind"), word(slug(tank.kind))},
                            {QStringLiteral("x"), tank.at.x},
                            {QStringLiteral("y"), tank.at.y}};
    return list;
}

QPointF RigSheet::paper(double x, double y, double z) const
{
    const outline::PaperSpot spot = sheet().at(x, y, z);
    return {spot.x, spot.y};
}

QVariantMap RigSheet::place(double x, double y) const
{
    const RigPosition at = sheet().position({x, y});
    return {{QStringLiteral("x"), at.aft.si()},
            {QStringLiteral("y"), at.right.si()},
            {QStringLiteral("z"), at.up.si()}};
}

int RigSheet::balloonRows(int count, double width, double side) const
{
    return count <= 0 || !(width > 0.0) ? 0
                                        : outline::balloonRows(static_cast<std::size_t>(count), width, side);
}

QVariantList RigSheet::balloons(const QVariantList &spots, double width, double side, double edge,
                                bool below) const
{
    std::vector<outline::PaperSpot> from;
    from.reserve(static_cast<std::size_t>(spots.size()));
    for (const QVariant &spot : spots) {
        const QPointF point = spot.toPointF();
        from.push_back({point.x(), point.y()});
    }
    QVariantList list;
    for (const outline::PaperSpot &centre :
         outline::balloonSpots(from, {std::max(width, side), side, edge, below}))
        list << QPointF(centre.x, centre.y);
    return list;
}

} // namespace snugwalk

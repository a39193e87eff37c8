// SPDX-License-Identifier: Apache-2.0
// From Qt's position to a fix.
#include "position/qt_position.hpp"

namespace snugwalk {

QtPosition::QtPosition(std::unique_ptr<QGeoPositionInfoSource> source, QString kind)
    : m_source(std::move(source)), m_kind(std::move(kind))
{
    connect(m_source.get(), &QGeoPositionInfoSource::positionUpdated, this, &QtPosition::take);
    connect(m_source.get(), &QGeoPositionInfoSource::errorOccurred, this, &PositionSource::lost);
}

void QtPosition::take(const QGeoPositionInfo &info)
{
    const QGeoCoordinate at = info.coordinate();
    if (!at.isValid())
        return;
    Fix fix;
    fix.time = fromMillis(info.timestamp().toMSecsSinceEpoch());
    fix.point = {at.latitude(), at.longitude(), std::nullopt, std::nullopt};
    if (at.type() == QGeoCoordinate::Coordinate3D)
        fix.point.altitude = at.altitude();
    if (info.hasAttribute(QGeoPositionInfo::HorizontalAccuracy))
        fix.point.accuracy = metres(info.attribute(QGeoPositionInfo::HorizontalAccuracy));
    if (info.hasAttribute(QGeoPositionInfo::GroundSpeed))
        fix.speed = Speed::fromSi(info.attribute(QGeoPositionInfo::GroundSpeed));
    Q_EMIT fixed(fix);
}

} // namespace snugwalk

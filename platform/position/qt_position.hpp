// SPDX-License-Identifier: Apache-2.0
// Any source that Qt Positioning knows: a receiver of the machine, or a log replayed.
#pragma once

#include <memory>

#include <QGeoPositionInfoSource>

#include "base/units.hpp"
#include "position_source.hpp"

namespace snugwalk {

class QtPosition final : public PositionSource {
    Q_OBJECT
public:
    QtPosition(std::unique_ptr<QGeoPositionInfoSource> source, QString kind);
    [[nodiscard]] QString kind() const override { return m_kind; }
    void start() override { m_source->startUpdates(); }
    void stop() override { m_source->stopUpdates(); }

private:
    void take(const QGeoPositionInfo &info);

    std::unique_ptr<QGeoPositionInfoSource> m_source;
    QString m_kind;
};

} // namespace snugwalk

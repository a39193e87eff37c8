// SPDX-License-Identifier: Apache-2.0
// Where the person is: as a receiver says, as a log says, or as typed by hand.
#pragma once

#include <optional>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "base/geo.hpp"
#include "position_source.hpp"
#include "voice.hpp"

namespace snugwalk {

class PositionModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool has READ has NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
public:
    /// \param source may be null; otherwise it is started here and outlives this object.
    PositionModel(PositionSource *source, const Clock &clock, QObject *parent);

    [[nodiscard]] bool has() const { return where().has_value(); }
    [[nodiscard]] QString words() const;
    /// "receiver", "log", "typed" or "".
    [[nodiscard]] QString source() const { return m_point ? m_source : QString(); }
    /// The position to write with an act; nothing once a receiver has been silent for ten minutes.
    [[nodiscard]] std::optional<GeoPoint> where() const;

    /// "44.27 S", "-44.27", "44,27": false when it is not a place on earth.
    Q_INVOKABLE bool type(const QString &latitude, const QString &longitude);
    void speak(std::shared_ptr<const Voice> voice);

Q_SIGNALS:
    void changed();

private:
    void take(const Fix &fix, const QString &source);

    const Clock &m_clock;
    std::shared_ptr<const Voice> m_voice = std::make_shared<const Voice>();
    std::optional<GeoPoint> m_point;
    Instant m_at{};
    QString m_source;
};

} // namespace snugwalk

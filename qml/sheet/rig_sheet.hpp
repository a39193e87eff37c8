// SPDX-License-Identifier: Apache-2.0
// One face of a rig as pages ask about it: its size, its spots, where one stands, where balloons go.
#pragma once

#include <optional>

#include <QObject>
#include <QPointF>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "rig/outline/outline.hpp"

namespace snugwalk {

/// Lengths on paper are metres of the rig from the sheet's upper left corner, as in `outline::FaceSheet`.
/// The lines are made when they are asked for, once for each rig, face and stand.
class RigSheet : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantMap rig READ rig WRITE setRig NOTIFY changed)
    Q_PROPERTY(QString face READ face WRITE setFace NOTIFY changed)
    Q_PROPERTY(bool noseLeft READ noseLeft WRITE setNoseLeft NOTIFY changed)
    Q_PROPERTY(QString stand READ stand WRITE setStand NOTIFY changed)
    Q_PROPERTY(double across READ across NOTIFY changed)
    Q_PROPERTY(double up READ up NOTIFY changed)
    Q_PROPERTY(bool stands READ stands NOTIFY changed)
    Q_PROPERTY(QString standFace READ standFace NOTIFY changed)
    Q_PROPERTY(QString standLevel READ standLevel NOTIFY changed)
    Q_PROPERTY(QVariantList tanks READ tanks NOTIFY changed)
public:
    using QObject::QObject;

    /// As `drawnRig` gives it.
    [[nodiscard]] QVariantMap rig() const { return m_map; }
    [[nodiscard]] QString face() const { return m_faceSlug; }
    /// For top and underside; the other faces are as seen from outside.
    [[nodiscard]] bool noseLeft() const { return m_view.noseLeft; }
    /// A stand of the catalogue to draw; "" for none.
    [[nodiscard]] QString stand() const { return m_stand; }
    [[nodiscard]] double across() const { return sheet().across(); }
    [[nodiscard]] double up() const { return sheet().up(); }
    /// Whether the stand is on this face.
    [[nodiscard]] bool stands() const;
    /// The face that one looks at from the stand; "" without one.
    [[nodiscard]] QString standFace() const;
    /// none, ground, roof, inside or under.
    [[nodiscard]] QString standLevel() const;
    /// [{letter, kind, x, y}] of the tanks drawn, x and y on paper.
    [[nodiscard]] QVariantList tanks() const;

    void setRig(const QVariantMap &rig);
    void setFace(const QString &face);
    void setNoseLeft(bool noseLeft);
    void setStand(const QString &stand);

    [[nodiscard]] const outline::Outline &outline() const;

    /// Metres aft, right and up to paper.
    Q_INVOKABLE QPointF paper(double x, double y, double z) const;
    /// {x, y, z} of a spot on paper, the third metre from the face.
    Q_INVOKABLE QVariantMap place(double x, double y) const;
    Q_INVOKABLE int balloonRows(int count, double width, double side) const;
    /// Centres of balloons for spots in any unit, see `outline::BalloonBand`.
    Q_INVOKABLE QVariantList balloons(const QVariantList &spots, double width, double side, double edge,
                                      bool below) const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] outline::FaceSheet sheet() const { return {m_rig.measures, m_view}; }
    [[nodiscard]] std::optional<outline::StandPlace> standing() const;
    void touch();

    QVariantMap m_map;
    Rig m_rig;
    QString m_faceSlug = QStringLiteral("left");
    QString m_stand;
    outline::FaceView m_view;
    mutable std::optional<outline::Outline> m_outline;
};

} // namespace snugwalk

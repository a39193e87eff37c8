// SPDX-License-Identifier: Apache-2.0
// One trip: its line on the land, its figures, and what it did to the rig.
#pragma once

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "round/trip_story.hpp"
#include "snapshot.hpp"
#include "trip_map.hpp"

namespace snugwalk {

class TripModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString tripId READ tripId NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString date READ date NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString doubt READ doubt NOTIFY changed)
    Q_PROPERTY(QVariantMap map READ map NOTIFY changed)
    Q_PROPERTY(QVariantList facts READ facts NOTIFY changed)
    Q_PROPERTY(QVariantList stops READ stops NOTIFY changed)
    Q_PROPERTY(QVariantMap roughness READ roughness NOTIFY changed)
    Q_PROPERTY(bool measured READ isMeasured NOTIFY changed)
public:
    TripModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

    [[nodiscard]] bool isBusy() const { return m_waiting > 0; }
    /// "" when there is no such trip.
    [[nodiscard]] QString tripId() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString date() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QString doubt() const;
    /// See trip_map.hpp; empty for a trip without a track.
    [[nodiscard]] QVariantMap map() const { return m_mapWords; }
    [[nodiscard]] QVariantList facts() const;
    [[nodiscard]] QVariantList stops() const;
    /// See road_line.hpp; empty where no log was read.
    [[nodiscard]] QVariantMap roughness() const;
    /// Whether an accelerometer's log belongs to it.
    [[nodiscard]] bool isMeasured() const;

    void show(const Shown &shown);
    /// Works the trip out on the worker. An empty id is the newest trip.
    Q_INVOKABLE void open(const QString &trip);

Q_SIGNALS:
    void changed();

private:
    struct Sheet {
        TripStory story;
        TripMap map;
    };
    [[nodiscard]] const Trip *trip() const;
    void tellMap();

    const ActDesk *m_desk;
    Shown m_shown;
    Id m_trip;
    std::optional<Sheet> m_sheet;
    QVariantMap m_mapWords;
    int m_waiting = 0;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Lists of the logbook place: walks, trips, mends and photos, newest first.
#pragma once

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

struct WalkRow {
    QString key;
    QString date;
    QString kindName;
    QString by;
    QString counts; ///< "24 pass, 2 attention, 3 could not look"
    bool finished = false;
};
class WalkList : public RowModel<WalkRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit WalkList(QObject *parent);
};

struct TripRow {
    QString key;
    QString title;
    QString date;
    QString length;
    QString roadText;
    QString note;
    QVariantList points; ///< [{lat, lon}], degrees: for a sketch only
};
class TripList : public RowModel<TripRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit TripList(QObject *parent);
};

struct MendRow {
    QString key;
    QString date;
    QString action;
    QString what;
    QString cost;
    QString by;
};
class MendList : public RowModel<MendRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit MendList(QObject *parent);
};

struct PhotoRow {
    QString key; ///< the hash
    QString date;
    QString title;
    QString caption;
    QString place;
    QString findingId;
};
class PhotoList : public RowModel<PhotoRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit PhotoList(QObject *parent);
};

[[nodiscard]] std::vector<WalkRow> walkRows(const Shown &shown);
[[nodiscard]] std::vector<TripRow> tripRows(const Shown &shown);
[[nodiscard]] std::vector<MendRow> mendRows(const Shown &shown);
[[nodiscard]] std::vector<PhotoRow> photoRows(const Shown &shown);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Lists of the logbook place: walks, trips, mends and photos, newest first.
#pragma once

#include <memory>

#include <QMetaMethod>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "row_model.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// A page that shows a list listens to it.
[[nodiscard]] inline QMetaMethod rowsCome()
{
    return QMetaMethod::fromSignal(&QAbstractItemModel::rowsInserted);
}

struct WalkRow {
    QString key;
    QString date;
    QString kindName;
    QString by;
    std::shared_ptr<const WalkRecord> walk; ///< counted when shown: "24 pass, 2 attention, 3 could not look"
    std::shared_ptr<const Voice> voice;     ///< in which words
    bool finished = false;                  ///< otherwise it is open
};
class WalkListModel : public RowModel<WalkRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit WalkListModel(QObject *parent);
    /// Whether a page shows it.
    [[nodiscard]] bool isWatched() const { return isSignalConnected(rowsCome()); }
};

struct TripRow {
    QString key;
    QString title;
    QString date;
    QString length;
    QString roadText;
    QString note;
    std::shared_ptr<const Trip> trip; ///< its outline and the nearest named places are looked up when shown
    Shown shown;                      ///< in which words, from which map
};
class TripListModel : public RowModel<TripRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit TripListModel(QObject *parent);
    /// Whether a page shows it.
    [[nodiscard]] bool isWatched() const { return isSignalConnected(rowsCome()); }
};

struct MendRow {
    QString key;
    QString date;
    QString action;
    QString what;
    QString cost;
    QString by;
};
class MendListModel : public RowModel<MendRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the logbook")
public:
    explicit MendListModel(QObject *parent);
    /// Whether a page shows it.
    [[nodiscard]] bool isWatched() const { return isSignalConnected(rowsCome()); }
};

[[nodiscard]] QString walkCounts(const WalkRecord &walk);
/// For a sketch only: [{lat, lon}], degrees.
[[nodiscard]] QVariantList tripOutline(const Trip &trip);
/// From where to where, by the nearest named places.
[[nodiscard]] QString tripWay(const TripRow &row);
[[nodiscard]] std::vector<WalkRow> walkRows(const Shown &shown);
[[nodiscard]] std::vector<TripRow> tripRows(const Shown &shown);
[[nodiscard]] std::vector<MendRow> mendRows(const Shown &shown);
/// Photos of all findings, newest first: [{hash, date, title, caption, place, findingId}].
[[nodiscard]] QVariantList photoList(const Shown &shown);

} // namespace snugwalk

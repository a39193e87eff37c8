// SPDX-License-Identifier: Apache-2.0
// Roles of the logbook's lists.
#include "book_lists.hpp"

namespace snugwalk {

WalkListModel::WalkListModel(QObject *parent)
    : RowModel({{"walkId", [](const WalkRow &r) { return QVariant(r.key); }},
                {"date", [](const WalkRow &r) { return QVariant(r.date); }},
                {"kindName", [](const WalkRow &r) { return QVariant(r.kindName); }},
                {"by", [](const WalkRow &r) { return QVariant(r.by); }},
                {"counts", [](const WalkRow &r) { return QVariant(walkCounts(*r.walk)); }},
                {"finished", [](const WalkRow &r) { return QVariant(r.finished); }},
                {"isOpen", [](const WalkRow &r) { return QVariant(!r.finished); }}},
               parent)
{}

TripListModel::TripListModel(QObject *parent)
    : RowModel({{"tripId", [](const TripRow &r) { return QVariant(r.key); }},
                {"title", [](const TripRow &r) { return QVariant(r.title); }},
                {"date", [](const TripRow &r) { return QVariant(r.date); }},
                {"length", [](const TripRow &r) { return QVariant(r.length); }},
                {"roadText", [](const TripRow &r) { return QVariant(r.roadText); }},
                {"note", [](const TripRow &r) { return QVariant(r.note); }},
                {"points", [](const TripRow &r) { return QVariant(tripOutline(*r.trip)); }}},
               parent)
{}

MendListModel::MendListModel(QObject *parent)
    : RowModel({{"mendId", [](const MendRow &r) { return QVariant(r.key); }},
                {"date", [](const MendRow &r) { return QVariant(r.date); }},
                {"action", [](const MendRow &r) { return QVariant(r.action); }},
                {"what", [](const MendRow &r) { return QVariant(r.what); }},
                {"cost", [](const MendRow &r) { return QVariant(r.cost); }},
                {"by", [](const MendRow &r) { return QVariant(r.by); }}},
               parent)
{}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Roles of the logbook's lists.
#include "book_lists.hpp"

namespace snugwalk {

WalkList::WalkList(QObject *parent)
    : RowModel({{"walkId", [](const WalkRow &r) { return QVariant(r.key); }},
                {"date", [](const WalkRow &r) { return QVariant(r.date); }},
                {"kindName", [](const WalkRow &r) { return QVariant(r.kindName); }},
                {"by", [](const WalkRow &r) { return QVariant(r.by); }},
                {"counts", [](const WalkRow &r) { return QVariant(r.counts); }},
                {"finished", [](const WalkRow &r) { return QVariant(r.finished); }}},
               parent)
{}

TripList::TripList(QObject *parent)
    : RowModel({{"tripId", [](const TripRow &r) { return QVariant(r.key); }},
                {"title", [](const TripRow &r) { return QVariant(r.title); }},
                {"date", [](const TripRow &r) { return QVariant(r.date); }},
                {"length", [](const TripRow &r) { return QVariant(r.length); }},
                {"roadText", [](const TripRow &r) { return QVariant(r.roadText); }},
                {"note", [](const TripRow &r) { return QVariant(r.note); }},
                {"points", [](const TripRow &r) { return QVariant(r.points); }}},
               parent)
{}

MendList::MendList(QObject *parent)
    : RowModel({{"mendId", [](const MendRow &r) { return QVariant(r.key); }},
                {"date", [](const MendRow &r) { return QVariant(r.date); }},
                {"action", [](const MendRow &r) { return QVariant(r.action); }},
                {"what", [](const MendRow &r) { return QVariant(r.what); }},
                {"cost", [](const MendRow &r) { return QVariant(r.cost); }},
                {"by", [](const MendRow &r) { return QVariant(r.by); }}},
               parent)
{}

PhotoList::PhotoList(QObject *parent)
    : RowModel({{"hash", [](const PhotoRow &r) { return QVariant(r.key); }},
                {"date", [](const PhotoRow &r) { return QVariant(r.date); }},
                {"title", [](const PhotoRow &r) { return QVariant(r.title); }},
                {"caption", [](const PhotoRow &r) { return QVariant(r.caption); }},
                {"place", [](const PhotoRow &r) { return QVariant(r.place); }},
                {"findingId", [](const PhotoRow &r) { return QVariant(r.findingId); }}},
               parent)
{}

} // namespace snugwalk

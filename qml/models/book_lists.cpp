// SPDX-License-Identifier: Apache-2.0
// Roles of the logbook's lists.
#include "book_lists.hpp"

#include <algorithm>

namespace snugwalk {
namespace {

bool haveSameMarks(const WalkRow &a, const WalkRow &b)
{
    const auto same = [](const Mark &x, const Mark &y) { return x.state == y.state && x.point == y.point; };
    return a.voice == b.voice && std::equal(a.walk->marks.begin(), a.walk->marks.end(), b.walk->marks.begin(),
                                            b.walk->marks.end(), same);
}

bool haveSameOutline(const TripRow &a, const TripRow &b) { return a.trip->outline == b.trip->outline; }

bool haveSameWay(const TripRow &a, const TripRow &b)
{
    return a.shown.voice == b.shown.voice && haveSameOutline(a, b);
}

} // namespace

WalkListModel::WalkListModel(QObject *parent)
    : RowModel({{"walkId", [](const WalkRow &r) { return QVariant(r.key); }},
                {"date", [](const WalkRow &r) { return QVariant(r.date); }},
                {"kindName", [](const WalkRow &r) { return QVariant(r.kindName); }},
                {"by", [](const WalkRow &r) { return QVariant(r.by); }},
                {"counts", [](const WalkRow &r) { return QVariant(walkCounts(*r.walk)); }, haveSameMarks},
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
                {"wayText", [](const TripRow &r) { return QVariant(tripWay(r)); }, haveSameWay},
                {"note", [](const TripRow &r) { return QVariant(r.note); }},
                {"points", [](const TripRow &r) { return QVariant(tripOutline(*r.trip)); }, haveSameOutline}},
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

// SPDX-License-Identifier: Apache-2.0
// Rows of open findings.
#include "finding_model.hpp"

#include <algorithm>
#include <cmath>

#include "rig/names.hpp"

namespace snugwalk {
namespace {

// A named place is where its wheel or opening is; a wheel that was taken off the rig is nowhere.
RigPlace resolved(const Rig &rig, const RigPlace &place)
{
    if (place.named.empty() || place.at)
        return place;
    return findNamedPlace(rig, place.named).value_or(place);
}

void setSpot(const RigPlace &place, FindingRow &row)
{
    if (place.face)
        row.face = Voice::text(slug(*place.face));
    if (!place.at)
        return;
    row.x = place.at->aft.si();
    row.y = place.at->right.si();
    row.z = place.at->up.si();
}

// The first of each call is what others tie with.
bool isFirstOfCall(const RigState &state, const OpenFinding &open)
{
    const auto first = std::find_if(state.open.begin(), state.open.end(), [&](const OpenFinding &other) {
        return other.concern.call == open.concern.call;
    });
    return first != state.open.end() && first->id == open.id;
}

FindingRow rowOf(const Shown &shown, const OpenFinding &open, int number)
{
    const Voice &voice = *shown.voice;
    const FindingHistory &history = *shown.snapshot->finding(open.id);
    const Rig &rig = shown.history()->rig;
    FindingRow row;
    row.key = Voice::text(open.id.text());
    row.number = number;
    row.kind = callKind(open.concern.call);
    row.title = FindingModel::tr("%1: %2", "point: defect")
                    .arg(voice.point(open.point), voice.word("defects", open.defect));
    QStringList detail{Voice::text(voice.texts.grade(open.point, open.grade))};
    const QString extent = history.looks.empty() ? QString() : voice.extent(history.looks.back().extent);
    if (!extent.isEmpty())
        detail << extent;
    if (open.status == FindingStatus::Mended)
        detail << voice.findingStatus("mended");
    if (open.tiedWithFirst && !isFirstOfCall(shown.snapshot->state, open))
        detail << FindingModel::tr("may be as bad as the first of its kind", "a tie");
    row.detail = detail.join(QStringLiteral(", "));
    row.place = voice.place(rig, history.finding.place);
    setSpot(resolved(rig, history.finding.place), row);
    row.callText = callText(voice, open.concern);
    row.concern = static_cast<int>(std::lround(open.concern.number));
    row.photoCount = static_cast<int>(history.photos.size());
    row.photo = history.photos.empty() ? QString() : Voice::text(history.photos.back().hash);
    return row;
}

} // namespace

QString callKind(Call call)
{
    switch (call) {
    case Call::Hold:
        return QStringLiteral("hold");
    case Call::MendSoon:
        return QStringLiteral("mend");
    case Call::Watch:
        return QStringLiteral("watch");
    case Call::None:
        break;
    }
    return QStringLiteral("none");
}

QString callText(const Voice &voice, const Concern &concern)
{
    const QString number = voice.number(concern.number, 0);
    switch (concern.call) {
    case Call::Hold:
        return voice.word("forbids", concern.forbids.empty() ? "move" : concern.forbids);
    case Call::MendSoon:
        return FindingModel::tr("mend soon, %1", "concern 0 to 100").arg(number);
    case Call::Watch:
        return FindingModel::tr("watch, %1", "concern 0 to 100").arg(number);
    case Call::None:
        break;
    }
    return {};
}

FindingModel::FindingModel(QObject *parent)
    : RowModel({{"findingId", [](const FindingRow &r) { return QVariant(r.key); }},
                {"number", [](const FindingRow &r) { return QVariant(r.number); }},
                {"kind", [](const FindingRow &r) { return QVariant(r.kind); }},
                {"title", [](const FindingRow &r) { return QVariant(r.title); }},
                {"detail", [](const FindingRow &r) { return QVariant(r.detail); }},
                {"place", [](const FindingRow &r) { return QVariant(r.place); }},
                {"face", [](const FindingRow &r) { return QVariant(r.face); }},
                {"x", [](const FindingRow &r) { return QVariant(r.x); }},
                {"y", [](const FindingRow &r) { return QVariant(r.y); }},
                {"z", [](const FindingRow &r) { return QVariant(r.z); }},
                {"callText", [](const FindingRow &r) { return QVariant(r.callText); }},
                {"concern", [](const FindingRow &r) { return QVariant(r.concern); }},
                {"photoCount", [](const FindingRow &r) { return QVariant(r.photoCount); }},
                {"photo", [](const FindingRow &r) { return QVariant(r.photo); }}},
               parent)
{}

void FindingModel::show(const Shown &shown)
{
    std::vector<FindingRow> rows;
    for (const OpenFinding &open : shown.snapshot->state.open)
        rows.push_back(rowOf(shown, open, static_cast<int>(rows.size()) + 1));
    assign(std::move(rows));
    Q_EMIT countChanged();
}

} // namespace snugwalk

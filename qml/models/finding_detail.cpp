// SPDX-License-Identifier: Apache-2.0
// One finding with its looks, mends and photos.
#include "finding_detail.hpp"

#include <algorithm>
#include <cmath>

#include "finding_model.hpp"
#include "near_text.hpp"
#include "reason_text.hpp"
#include "rig/names.hpp"
#include "round/where_seen.hpp"
#include "walk/mend_part.hpp"

namespace snugwalk {
namespace {

QStringList photosOf(const FindingHistory &history, const Id &look)
{
    QStringList hashes;
    for (const Photo &photo : history.photos) {
        if (photo.look == look)
            hashes << Voice::text(photo.hash);
    }
    return hashes;
}

QVariantMap lookMap(const Voice &voice, const FindingHistory &history, const Look &look)
{
    const QString grade = look.grade == 0 ? FindingModel::tr("gone")
                                          : Voice::text(voice.texts.grade(history.finding.point, look.grade));
    return {{QStringLiteral("date"), voice.date(look.at)},
            {QStringLiteral("by"), Voice::text(look.by)},
            {QStringLiteral("grade"), look.grade},
            {QStringLiteral("gradeText"), grade},
            {QStringLiteral("extentText"), voice.extent(look.extent)},
            {QStringLiteral("note"), Voice::text(look.note)},
            {QStringLiteral("where"), look.where ? voice.position(*look.where) : QString()},
            {QStringLiteral("photos"), photosOf(history, look.id)}};
}

QVariantMap mendMap(const Voice &voice, const Mend &mend)
{
    QStringList parts;
    for (const MendPart &part : mend.parts)
        parts << Voice::text(partText(part));
    return {{QStringLiteral("date"), voice.date(mend.at)},
            {QStringLiteral("by"), Voice::text(mend.by)},
            {QStringLiteral("action"), voice.mendAction(mend.action)},
            {QStringLiteral("what"), Voice::text(mend.what)},
            {QStringLiteral("parts"), parts.join(QStringLiteral(", "))},
            {QStringLiteral("cost"), Voice::text(mend.cost)}};
}

QVariantMap photoMap(const Voice &voice, const Photo &photo)
{
    return {{QStringLiteral("hash"), Voice::text(photo.hash)},
            {QStringLiteral("caption"), Voice::text(photo.caption)},
            {QStringLiteral("date"), voice.date(photo.taken.value_or(photo.added))},
            {QStringLiteral("place"), photo.where ? voice.position(*photo.where) : QString()}};
}

// Number, concern and call of an open finding; a closed one has none.
void addConcern(const Shown &shown, const Id &id, QVariantMap &map)
{
    const std::vector<OpenFinding> &open = shown.snapshot->state.open;
    const auto found =
        std::find_if(open.begin(), open.end(), [&](const OpenFinding &o) { return o.id == id; });
    if (found == open.end()) {
        map[QStringLiteral("number")] = 0;
        map[QStringLiteral("kind")] = callKind(Call::None);
        return;
    }
    const auto number = [&](double value) { return shown.voice->number(value, 0); };
    QStringList why{
        FindingModel::tr("Concern %1, between %2 and %3, of 100.")
            .arg(number(found->concern.number), number(found->concern.low), number(found->concern.high))};
    for (const Reason &reason : found->concern.why) {
        const QString sentence = reasonText(*shown.voice, reason);
        if (!sentence.isEmpty())
            why << sentence;
    }
    map[QStringLiteral("number")] = static_cast<int>(found - open.begin()) + 1;
    map[QStringLiteral("kind")] = callKind(found->concern.call);
    map[QStringLiteral("callText")] = callText(*shown.voice, found->concern);
    map[QStringLiteral("concern")] = static_cast<int>(std::lround(found->concern.number));
    map[QStringLiteral("why")] = why;
}

template <typename T, typename ToMap>
QVariantList newestFirst(const std::vector<T> &items, ToMap toMap)
{
    QVariantList list;
    for (auto it = items.rbegin(); it != items.rend(); ++it)
        list << toMap(*it);
    return list;
}

} // namespace

QVariantMap findingDetail(const Shown &shown, const FindingHistory &history)
{
    const Voice &voice = *shown.voice;
    const Finding &finding = history.finding;
    const std::string_view status = slug(statusOf(history));
    QVariantMap map{{QStringLiteral("id"), Voice::text(finding.id.text())},
                    {QStringLiteral("title"), voice.point(finding.point)},
                    {QStringLiteral("point"), Voice::text(finding.point)},
                    {QStringLiteral("defect"), voice.word("defects", finding.defect)},
                    {QStringLiteral("place"), voice.place(shown.history()->rig, finding.place)},
                    {QStringLiteral("near"), nearText(shown, whereSeen(*shown.history(), history))},
                    {QStringLiteral("status"), Voice::text(status)},
                    {QStringLiteral("statusText"), voice.findingStatus(status)},
                    {QStringLiteral("since"), voice.date(finding.opened)},
                    {QStringLiteral("callText"), QString()},
                    {QStringLiteral("concern"), 0},
                    {QStringLiteral("why"), QStringList()}};
    map[QStringLiteral("looks")] =
        newestFirst(history.looks, [&](const Look &look) { return lookMap(voice, history, look); });
    map[QStringLiteral("mends")] =
        newestFirst(history.mends, [&](const Mend &mend) { return mendMap(voice, mend); });
    map[QStringLiteral("photos")] =
        newestFirst(history.photos, [&](const Photo &photo) { return photoMap(voice, photo); });
    addConcern(shown, finding.id, map);
    return map;
}

} // namespace snugwalk

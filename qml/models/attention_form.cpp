// SPDX-License-Identifier: Apache-2.0
// From the page's map to a draft; nothing is checked here.
#include "attention_form.hpp"

#include <QUrl>

#include "rig/names.hpp"

namespace snugwalk {
namespace {

std::string textOf(const QVariantMap &map, const char *key)
{
    return map.value(QLatin1String(key)).toString().trimmed().toStdString();
}

RigPlace readPlace(const QVariantMap &map)
{
    RigPlace place;
    place.named = textOf(map, "named");
    place.face = parseChoice<Face>(textOf(map, "face"));
    const auto metresOf = [&](const char *key) { return metres(map.value(QLatin1String(key)).toDouble()); };
    if (place.face && map.contains(QStringLiteral("x")))
        place.at = RigPosition{metresOf("x"), metresOf("y"), metresOf("z")};
    return place;
}

} // namespace

AttentionForm readAttention(const QVariantMap &map, const std::string &point)
{
    FindingDraft finding;
    finding.same = Id::parse(textOf(map, "same")).value_or(Id{});
    finding.defect = textOf(map, "defect");
    const bool isGone = map.value(QStringLiteral("gone")).toBool();
    finding.grade = isGone ? 0 : map.value(QStringLiteral("grade")).toInt();
    finding.extentText = textOf(map, "extent");
    finding.note = textOf(map, "note");
    finding.place = readPlace(map.value(QStringLiteral("place")).toMap());

    AttentionForm form;
    form.draft.point = point;
    form.draft.state = MarkState::Attention;
    form.draft.findings.push_back(std::move(finding));
    for (const QVariant &photo : map.value(QStringLiteral("photos")).toList()) {
        const QUrl url = photo.toUrl();
        form.photos.push_back((url.isLocalFile() ? url.toLocalFile() : photo.toString()).toStdString());
    }
    return form;
}

} // namespace snugwalk

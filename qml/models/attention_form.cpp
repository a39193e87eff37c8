// SPDX-License-Identifier: Apache-2.0
// From the page's map to a draft; nothing is checked here.
#include "attention_form.hpp"

#include <algorithm>

#include <QUrl>

#include "drawing_words.hpp"
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

FindingDraft readFinding(const QVariantMap &map)
{
    FindingDraft finding;
    finding.same = Id::parse(textOf(map, "same")).value_or(Id{});
    finding.defect = textOf(map, "defect");
    const bool isGone = map.value(QStringLiteral("gone")).toBool();
    finding.grade = isGone ? 0 : map.value(QStringLiteral("grade")).toInt();
    finding.extentText = textOf(map, "extent");
    finding.note = textOf(map, "note");
    finding.place = readPlace(map.value(QStringLiteral("place")).toMap());
    return finding;
}

// A photo is {file, lines}, or an address alone.
std::vector<PhotoFile> readPhotos(const QVariantList &photos)
{
    std::vector<PhotoFile> files;
    for (const QVariant &photo : photos) {
        const QVariantMap map = photo.toMap();
        const QString address =
            map.isEmpty() ? photo.toString() : map.value(QStringLiteral("file")).toString();
        const QUrl url(address);
        const QString path = url.isLocalFile() ? url.toLocalFile() : address;
        files.push_back({path.toStdString(), readShapes(map.value(QStringLiteral("lines")).toList())});
    }
    return files;
}

AttentionForm &formOf(std::vector<AttentionForm> &forms, const std::string &point)
{
    const auto known = std::find_if(forms.begin(), forms.end(),
                                    [&](const AttentionForm &form) { return form.draft.point == point; });
    if (known != forms.end())
        return *known;
    forms.emplace_back();
    forms.back().draft.point = point;
    forms.back().draft.state = MarkState::Pass; // until a finding is there
    return forms.back();
}

} // namespace

std::vector<AttentionForm> readAttention(const QVariantMap &map, const std::string &point)
{
    const QVariantList several = map.value(QStringLiteral("findings")).toList();
    std::vector<AttentionForm> forms;
    for (const QVariant &entry : several.isEmpty() ? QVariantList{map} : several) {
        const QVariantMap one = entry.toMap();
        const std::string asked = textOf(one, "point");
        AttentionForm &form = formOf(forms, asked.empty() ? point : asked);
        form.draft.findings.push_back(readFinding(one));
        form.photos.push_back(readPhotos(one.value(QStringLiteral("photos")).toList()));
        if (!one.value(QStringLiteral("gone")).toBool())
            form.draft.state = MarkState::Attention;
    }
    return forms;
}

} // namespace snugwalk

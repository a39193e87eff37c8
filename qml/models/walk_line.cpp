// SPDX-License-Identifier: Apache-2.0
// From values to the maps that a line's page shows.
#include "walk_line.hpp"

#include <algorithm>
#include <limits>

#include "finding_model.hpp"
#include "walk/draft.hpp"

namespace snugwalk {
namespace {

QString kindOf(const Snapshot &snapshot, const Id &id)
{
    const std::vector<OpenFinding> &open = snapshot.state.open;
    const auto found =
        std::find_if(open.begin(), open.end(), [&](const OpenFinding &o) { return o.id == id; });
    return callKind(found == open.end() ? Call::None : found->concern.call);
}

QVariantMap findingMap(const Shown &shown, const FindingHistory &history, const std::vector<Id> &numbered)
{
    const Voice &voice = *shown.voice;
    const Finding &finding = history.finding;
    const Look &look = history.looks.back();
    const auto at = std::find(numbered.begin(), numbered.end(), finding.id);
    const int number = at == numbered.end() ? 0 : static_cast<int>(at - numbered.begin()) + 1;
    return {
        {QStringLiteral("id"), Voice::text(finding.id.text())},
        {QStringLiteral("point"), Voice::text(finding.point)},
        {QStringLiteral("number"), number},
        {QStringLiteral("words"), voice.word("defects", finding.defect)},
        {QStringLiteral("grade"), look.grade},
        {QStringLiteral("gradeText"), Voice::text(voice.texts.grade(finding.point, look.grade))},
        {QStringLiteral("grades"), gradeChoices(voice, finding.point)},
        {QStringLiteral("place"), voice.place(shown.history()->rig, finding.place)},
        {QStringLiteral("photo"),
         history.photos.empty() ? QString() : Voice::text(history.photos.back().hash)},
        {QStringLiteral("kind"), kindOf(*shown.snapshot, finding.id)},
        {QStringLiteral("since"), voice.date(finding.opened)},
        {QStringLiteral("status"), Voice::text(slug(statusOf(history)))},
        {QStringLiteral("mended"), history.mends.empty() ? QString() : voice.date(history.mends.back().at)}};
}

bool contains(const std::vector<std::string> &list, const std::string &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

} // namespace

QVariantList linePoints(const Voice &voice, const TapeLine &line, const std::vector<Mark> &marks)
{
    QVariantList list;
    for (const std::string &point : line.points) {
        const PointText text = voice.texts.point(point);
        const Mark *mark = findMark(marks, point);
        list << QVariantMap{
            {QStringLiteral("slug"), Voice::text(point)},
            {QStringLiteral("title"), Voice::text(text.title)},
            {QStringLiteral("look"), Voice::text(text.look)},
            {QStringLiteral("pass"), Voice::text(text.pass)},
            {QStringLiteral("state"), Voice::text(slug(mark ? mark->state : MarkState::NotLooked))}};
    }
    return list;
}

std::vector<std::string> lineCautions(const Catalogue &catalogue, const TapeLine &line)
{
    std::vector<std::string> codes;
    for (const std::string &slug : line.points) {
        const Point *point = catalogue.find(slug);
        if (point == nullptr)
            continue;
        for (const std::string &code : point->cautions) {
            if (!contains(codes, code))
                codes.push_back(code);
        }
    }
    return codes;
}

QVariantList defectChoices(const Catalogue &catalogue, const Voice &voice, std::string_view slug)
{
    QVariantList list;
    const Point *point = catalogue.find(slug);
    if (point == nullptr)
        return list;
    for (const std::string &defect : point->defects)
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(defect)},
                            {QStringLiteral("word"), voice.word("defects", defect)}};
    return list;
}

QVariantList gradeChoices(const Voice &voice, std::string_view point)
{
    QVariantList list;
    for (int grade = 1; grade <= 5; ++grade)
        list << QVariantMap{{QStringLiteral("grade"), grade},
                            {QStringLiteral("word"), Voice::text(voice.texts.grade(point, grade))}};
    return list;
}

QVariantList reasonChoices(const Voice &voice)
{
    QVariantList list;
    for (const std::string &reason : reasons())
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(reason)},
                            {QStringLiteral("text"), voice.word("reasons", reason)}};
    return list;
}

QVariantList openFindingsOf(const Shown &shown, const std::vector<std::string> &points,
                            const std::vector<Id> &numbered)
{
    QVariantList list;
    const RigHistory *history = shown.history();
    if (history == nullptr)
        return list;
    for (auto it = history->findings.rbegin(); it != history->findings.rend(); ++it) {
        const FindingStatus status = statusOf(*it);
        const bool waits = status == FindingStatus::Open || status == FindingStatus::Mended;
        if (waits && !it->looks.empty() && contains(points, it->finding.point))
            list << findingMap(shown, *it, numbered);
    }
    std::stable_sort(list.begin(), list.end(), [](const QVariant &a, const QVariant &b) {
        const auto place = [](const QVariant &entry) {
            const int number = entry.toMap().value(QStringLiteral("number")).toInt();
            return number == 0 ? std::numeric_limits<int>::max() : number;
        };
        return place(a) < place(b);
    });
    return list;
}

int untoldFindings(const Shown &shown, const std::vector<std::string> &points, const Id &walk)
{
    int untold = 0;
    if (shown.history() == nullptr)
        return untold;
    for (const FindingHistory &history : shown.history()->findings) {
        const bool isOpen = statusOf(history) == FindingStatus::Open;
        const bool isSeen = std::any_of(history.looks.begin(), history.looks.end(),
                                        [&](const Look &look) { return look.walk == walk; });
        untold += isOpen && !isSeen && contains(points, history.finding.point) ? 1 : 0;
    }
    return untold;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Rows of the tape from a walk and its marks.
#include "tape_model.hpp"

#include <algorithm>

#include "catalogue/pick.hpp"
#include "finding_model.hpp"

namespace snugwalk {
namespace {

QString lineSummary(const Voice &voice, const TapeLine &line, const std::vector<Mark> &marks)
{
    QStringList parts;
    for (const std::string &point : line.points) {
        const Mark *mark = findMark(marks, point);
        const QString said = mark == nullptr ? QString() : markSummary(voice, *mark, true);
        if (!said.isEmpty() && !parts.contains(said))
            parts << said;
    }
    return parts.join(QStringLiteral("; "));
}

void describePoints(const Catalogue &catalogue, const Voice &voice, const Rig &rig, const TapeLine &line,
                    TapeRow &row)
{
    for (const std::string &slug : line.points) {
        const Point *point = catalogue.find(slug);
        if (point == nullptr)
            continue;
        row.hasCaution = row.hasCaution || !point->cautions.empty();
        for (const std::string &place : placesOf(*point, rig)) {
            const QString name = voice.placeName(place);
            if (!row.places.contains(name))
                row.places << name;
        }
    }
}

// Until what was found has been read back, it is to be watched at least.
QString worstCall(const Snapshot &snapshot, const TapeLine &line)
{
    Call worst = Call::Watch;
    for (const OpenFinding &open : snapshot.state.open) {
        const bool isHere =
            std::find(line.points.begin(), line.points.end(), open.point) != line.points.end();
        if (isHere)
            worst = std::max(worst, open.concern.call);
    }
    return callKind(worst);
}

} // namespace

TapeModel::TapeModel(QObject *parent)
    : RowModel({{"line", [](const TapeRow &r) { return QVariant(r.line); }},
                {"title", [](const TapeRow &r) { return QVariant(r.title); }},
                {"standSlug", [](const TapeRow &r) { return QVariant(r.standSlug); }},
                {"standName", [](const TapeRow &r) { return QVariant(r.standName); }},
                {"firstOfStand", [](const TapeRow &r) { return QVariant(r.firstOfStand); }},
                {"state", [](const TapeRow &r) { return QVariant(r.state); }},
                {"mark", [](const TapeRow &r) { return QVariant(r.mark); }},
                {"summary", [](const TapeRow &r) { return QVariant(r.summary); }},
                {"places", [](const TapeRow &r) { return QVariant(r.places); }},
                {"pointCount", [](const TapeRow &r) { return QVariant(r.pointCount); }},
                {"hasCaution", [](const TapeRow &r) { return QVariant(r.hasCaution); }},
                {"pending", [](const TapeRow &r) { return QVariant(r.pending); }}},
               parent)
{}

QString markSummary(const Voice &voice, const Mark &mark, bool withHow)
{
    QStringList parts;
    if (mark.state == MarkState::CouldNotLook)
        parts << voice.word("reasons", mark.reason);
    for (const Reading &reading : mark.readings) {
        const QString value = voice.inUnit(reading.dimension, reading.si, reading.unit);
        parts << (reading.place.empty() ? value : voice.placeName(reading.place) + u' ' + value);
    }
    if (!mark.note.empty())
        parts << Voice::text(mark.note);
    if (withHow && parts.isEmpty() && mark.state == MarkState::Pass && mark.how == LookedHow::Glance)
        parts << TapeModel::tr("at a glance");
    return parts.join(QStringLiteral("; "));
}

std::vector<TapeRow> tapeRows(const Catalogue &catalogue, const Shown &shown, const Walk &walk,
                              const std::vector<Mark> &marks, const std::multiset<int> &pending)
{
    const Voice &voice = *shown.voice;
    const Rig &rig = shown.history()->rig;
    std::vector<TapeRow> rows;
    std::string standBefore;
    for (const TapeLine &line : walk.tape) {
        TapeRow row;
        row.line = static_cast<int>(rows.size());
        row.key = QString::number(row.line) + u' ' + Voice::text(line.slug);
        row.title = voice.line(line);
        const std::string stand = standOf(catalogue, line);
        row.standSlug = Voice::text(stand);
        row.standName = Voice::text(voice.texts.standName(stand));
        row.firstOfStand = rows.empty() || stand != standBefore;
        standBefore = stand;
        const MarkState state = lineState(line, marks);
        row.state = Voice::text(slug(state));
        row.mark = state == MarkState::Attention ? worstCall(*shown.snapshot, line) : row.state;
        row.summary = lineSummary(voice, line, marks);
        row.pointCount = static_cast<int>(line.points.size());
        row.pending = pending.count(row.line) > 0;
        describePoints(catalogue, voice, rig, line, row);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A comparison as rows.
#include "comparison_model.hpp"

#include <algorithm>
#include <cmath>

#include "finding_model.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Comparison)
public:
    static QString change(Change change);
    static QString counted(Change change, int count);
};

// A language bends the word by the number: "1 nuevo, 2 nuevos".
QString Words::counted(Change change, int count)
{
    switch (change) {
    case Change::New:
        return tr("%n new", "points", count);
    case Change::Worse:
        return tr("%n worse", "points", count);
    case Change::Same:
        return tr("%n same", "points", count);
    case Change::Better:
        return tr("%n better", "points", count);
    case Change::Mended:
        return tr("%n mended", "points", count);
    case Change::Gone:
        return tr("%n gone, without a mend", "points", count);
    case Change::NotLooked:
        return tr("%n not looked at", "points", count);
    case Change::FirstLook:
        return tr("%n first look", "points", count);
    case Change::NotFitted:
        return tr("%n no longer fitted", "points", count);
    }
    return {};
}

QString Words::change(Change change)
{
    switch (change) {
    case Change::New:
        return tr("new");
    case Change::Worse:
        return tr("worse");
    case Change::Same:
        return tr("same");
    case Change::Better:
        return tr("better");
    case Change::Mended:
        return tr("mended");
    case Change::Gone:
        return tr("gone, without a mend");
    case Change::NotLooked:
        return tr("not looked at");
    case Change::FirstLook:
        return tr("first look");
    case Change::NotFitted:
        return tr("no longer fitted");
    }
    return {};
}

const WalkRecord *walkOf(const Shown &shown, const Id &id)
{
    for (const WalkRecord &record : shown.history()->walks) {
        if (record.walk.id == id)
            return &record;
    }
    return nullptr;
}

void addPhotos(const FindingHistory *history, const std::vector<Id> &ids, QStringList &hashes)
{
    for (const Photo &photo : history == nullptr ? std::vector<Photo>() : history->photos) {
        const bool wanted = std::find(ids.begin(), ids.end(), photo.id) != ids.end();
        const QString hash = Voice::text(photo.hash);
        if (wanted && !hashes.contains(hash))
            hashes << hash;
    }
}

QString gradeWords(const Voice &voice, const std::string &point, const std::optional<int> &grade,
                   const std::optional<Extent> &extent)
{
    if (!grade || *grade == 0)
        return {};
    const QString words = Voice::text(voice.texts.grade(point, *grade));
    const QString size = voice.extent(extent);
    return size.isEmpty() ? words : words + QStringLiteral(", ") + size;
}

bool isTold(const ReadingChange &reading)
{
    return reading.changed || reading.faster || reading.replaced || reading.ask;
}

QString readingName(const Voice &voice, const ReadingChange &reading)
{
    const QString name = voice.word("readings", reading.slug);
    return reading.place.empty() ? name : name + u' ' + voice.placeName(reading.place);
}

QString phrase(const Voice &voice, const std::string &slug) { return Voice::text(voice.texts.phrase(slug)); }

// Empty where nothing was expected, or it wears as expected.
QString fasterWords(const Voice &voice, const ReadingChange &reading)
{
    if (!reading.faster || !reading.expected)
        return {};
    const auto amount = [&](double si) { return formatFor(reading.dimension, std::abs(si), voice.units); };
    const std::string words =
        voice.texts.phrase("faster", {amount(reading.nowSi - reading.thenSi), amount(*reading.expected),
                                      voice.texts.phrase("expected_" + reading.expectedFrom)});
    return Words::tr("%1: %2", "reading: faster than expected")
        .arg(readingName(voice, reading), Voice::text(words));
}

QString readingWords(const Voice &voice, const ReadingChange &reading)
{
    const QString then = voice.inUnit(reading.dimension, reading.thenSi, reading.unit);
    const QString now = voice.inUnit(reading.dimension, reading.nowSi, reading.unit);
    QStringList parts{
        Words::tr("%1: %2, was %3", "reading, now, then").arg(readingName(voice, reading), now, then)};
    if (reading.replaced)
        parts << phrase(voice, "reading_replaced");
    if (reading.ask)
        parts << phrase(voice, "reading_ask");
    for (const std::string &why : reading.doubled)
        parts << phrase(voice, "other_" + why);
    if (reading.changed && !reading.stands)
        parts << phrase(voice, "among_many");
    return parts.join(QStringLiteral(", "));
}

// The worst call among the point's findings where there was an attention, else what the mark says.
QString markOf(const PointChange &point, MarkState state, const std::map<Id, Call> &calls)
{
    if (state != MarkState::Attention)
        return Voice::text(slug(state));
    Call worst = Call::Watch;
    for (const FindingChange &finding : point.findings) {
        const auto call = calls.find(finding.finding);
        if (call != calls.end())
            worst = std::max(worst, call->second);
    }
    return callKind(worst);
}

ComparisonRow rowOf(const Shown &shown, const Compared &compared, const PointChange &point)
{
    const Voice &voice = *shown.voice;
    ComparisonRow row;
    row.key = Voice::text(point.point);
    row.title = voice.point(point.point);
    row.thenMark = markOf(point, point.then, compared.thenCalls);
    row.nowMark = markOf(point, point.now, compared.nowCalls);
    row.change = Voice::text(slug(point.change));
    row.changeText = Words::change(point.change);
    QStringList then;
    QStringList now;
    QStringList detail;
    for (const FindingChange &finding : point.findings) {
        const FindingHistory *history = shown.snapshot->finding(finding.finding);
        then << gradeWords(voice, point.point, finding.thenGrade, finding.thenExtent);
        now << gradeWords(voice, point.point, finding.nowGrade, finding.nowExtent);
        addPhotos(history, finding.thenPhotos, row.thenPhotos);
        addPhotos(history, finding.nowPhotos, row.nowPhotos);
        if (history != nullptr)
            detail << Words::tr("%1: %2", "defect: change")
                          .arg(voice.word("defects", history->finding.defect), Words::change(finding.change));
    }
    for (const ReadingChange &reading : point.readings) {
        if (isTold(reading))
            detail << readingWords(voice, reading);
        const QString faster = fasterWords(voice, reading);
        if (!faster.isEmpty())
            row.faster += (row.faster.isEmpty() ? QString() : QStringLiteral("; ")) + faster;
    }
    then.removeAll(QString());
    now.removeAll(QString());
    row.thenText = then.join(QStringLiteral("; "));
    row.nowText = now.join(QStringLiteral("; "));
    row.detail = detail.join(QStringLiteral("; "));
    return row;
}

int rank(Change change)
{
    static constexpr std::array order = {Change::Worse,     Change::New,       Change::Gone,
                                         Change::NotLooked, Change::Same,      Change::Better,
                                         Change::Mended,    Change::FirstLook, Change::NotFitted};
    return static_cast<int>(std::find(order.begin(), order.end(), change) - order.begin());
}

bool isPlain(const PointChange &point)
{
    const bool moved = std::any_of(point.readings.begin(), point.readings.end(), isTold);
    const bool quiet = point.change == Change::Same || point.change == Change::FirstLook;
    return quiet && point.now != MarkState::Attention && point.findings.empty() && !moved;
}

} // namespace

ComparisonModel::ComparisonModel(QObject *parent)
    : RowModel({{"point", [](const ComparisonRow &r) { return QVariant(r.key); }},
                {"title", [](const ComparisonRow &r) { return QVariant(r.title); }},
                {"thenMark", [](const ComparisonRow &r) { return QVariant(r.thenMark); }},
                {"nowMark", [](const ComparisonRow &r) { return QVariant(r.nowMark); }},
                {"thenText", [](const ComparisonRow &r) { return QVariant(r.thenText); }},
                {"nowText", [](const ComparisonRow &r) { return QVariant(r.nowText); }},
                {"change", [](const ComparisonRow &r) { return QVariant(r.change); }},
                {"changeText", [](const ComparisonRow &r) { return QVariant(r.changeText); }},
                {"detail", [](const ComparisonRow &r) { return QVariant(r.detail); }},
                {"faster", [](const ComparisonRow &r) { return QVariant(r.faster); }},
                {"thenPhotos", [](const ComparisonRow &r) { return QVariant(r.thenPhotos); }},
                {"nowPhotos", [](const ComparisonRow &r) { return QVariant(r.nowPhotos); }}},
               parent)
{}

std::vector<ComparisonRow> comparisonRows(const Shown &shown, const Compared &compared)
{
    std::vector<const PointChange *> points;
    for (const PointChange &point : compared.comparison.points) {
        if (!isPlain(point))
            points.push_back(&point);
    }
    std::stable_sort(points.begin(), points.end(), [](const PointChange *a, const PointChange *b) {
        return rank(a->change) < rank(b->change);
    });
    std::vector<ComparisonRow> rows;
    for (const PointChange *point : points)
        rows.push_back(rowOf(shown, compared, *point));
    return rows;
}

QString comparisonSentence(const Comparison &comparison)
{
    QStringList parts;
    for (const Change change : {Change::Worse, Change::New, Change::Gone, Change::Better, Change::Mended,
                                Change::Same, Change::NotLooked, Change::FirstLook, Change::NotFitted}) {
        const int count = comparison.pointCounts.of(change);
        if (count > 0)
            parts << Words::counted(change, count);
    }
    return parts.join(QStringLiteral(", "));
}

QString comparisonPair(const Voice &voice, PairedBy by)
{
    return Words::tr("Held against: %1.", "how the earlier walk was found")
        .arg(phrase(voice, "pair_" + std::string(slug(by))));
}

QStringList rigChangeLines(const Shown &shown, const Comparison &comparison)
{
    const Voice &voice = *shown.voice;
    QStringList added;
    QStringList removed;
    QStringList changed;
    for (const RigChange &change : comparison.rigChanges) {
        const QString thing = change.what == "fitting"   ? voice.word("fittings", change.name)
                              : change.what == "opening" ? Voice::text(change.name)
                                                         : voice.word("rig_members", change.what);
        const bool isThing = change.what == "fitting" || change.what == "opening";
        if (isThing && change.kind == RigChangeKind::Added)
            added << thing;
        else if (isThing && change.kind == RigChangeKind::Removed)
            removed << thing;
        else
            changed << thing;
    }
    const auto titles = [&](const std::vector<std::string> &points) {
        QStringList names;
        for (const std::string &point : points)
            names << voice.point(point);
        return names;
    };
    QStringList lines;
    const auto tell = [&](const QString &words, const QStringList &things) {
        if (!things.isEmpty())
            lines << words.arg(things.join(QStringLiteral(", ")));
    };
    tell(Words::tr("Added to the rig since: %1."), added);
    tell(Words::tr("Taken from the rig since: %1."), removed);
    tell(Words::tr("Changed on the rig since: %1."), changed);
    tell(Words::tr("No longer fitted: %1."), titles(comparison.noLongerFitted));
    tell(Words::tr("Fitted since: %1."), titles(comparison.fittedSince));
    return lines;
}

QString comparisonTitle(const Shown &shown, const Comparison &comparison)
{
    const WalkRecord *then = walkOf(shown, comparison.thenWalk);
    const WalkRecord *now = walkOf(shown, comparison.nowWalk);
    if (then == nullptr || now == nullptr)
        return {};
    return Words::tr("%1, %2, against %3", "kind of walk, date now, date then")
        .arg(Voice::text(shown.voice->texts.kindName(now->walk.kind)), shown.voice->date(now->walk.started),
             shown.voice->date(then->walk.started));
}

} // namespace snugwalk

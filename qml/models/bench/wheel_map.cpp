// SPDX-License-Identifier: Apache-2.0
// Readings at the wheels, newest first.
#include "wheel_map.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "walk/draft.hpp"

namespace snugwalk {
namespace {

constexpr qsizetype historyLimit = 6;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WheelMap)
};

struct Asked {
    const Point *point = nullptr;
    const ReadingSpec *spec = nullptr;
};

Asked readingAsked(const Catalogue &catalogue, const BenchQuestion &question)
{
    const bool isTire = question.subject == "tires";
    const Point *own = question.point.empty() ? nullptr : catalogue.find(question.point);
    const Point *point = own == nullptr && isTire ? catalogue.find("tire-pressure") : own;
    if (point == nullptr || point->repeat != "wheel" || point->readings.empty())
        return {};
    const auto &specs = point->readings;
    const auto named = std::find_if(specs.begin(), specs.end(),
                                    [&](const ReadingSpec &s) { return s.slug == question.reading; });
    return {point, named == specs.end() ? &specs.front() : &*named};
}

struct Read {
    const Mark *mark;
    const Reading *reading;
};

std::vector<Read> readAt(const RigHistory &history, const Asked &asked, const std::string &place)
{
    std::vector<Read> found;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (mark.point != asked.point->slug)
                continue;
            for (const Reading &reading : mark.readings) {
                if (reading.slug == asked.spec->slug && reading.place == place)
                    found.push_back({&mark, &reading});
            }
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Read &a, const Read &b) { return a.mark->at.instant > b.mark->at.instant; });
    return found;
}

QString limitWords(const Voice &voice, const ReadingSpec &spec, const Limits &limits)
{
    QStringList parts;
    if (limits.lowSi)
        parts << Words::tr("at least %1").arg(voice.quantity(spec.dimension, *limits.lowSi));
    if (limits.highSi)
        parts << Words::tr("at most %1").arg(voice.quantity(spec.dimension, *limits.highSi));
    if (parts.isEmpty())
        return spec.setBy == "maker" ? Words::tr("maker's figure: not typed in") : QString();
    return Words::tr("%1 (%2)", "limits, whose")
        .arg(parts.join(QStringLiteral(", ")), voice.basis(limits.basis));
}

QVariantMap wheelOf(const Shown &shown, const Asked &asked, const Limits &limits, const std::string &place)
{
    const Voice &voice = *shown.voice;
    const std::vector<Read> reads = readAt(*shown.history(), asked, place);
    QVariantList history;
    for (const Read &read : reads) {
        if (history.size() < historyLimit)
            history << QVariantMap{
                {QStringLiteral("label"), voice.date(read.mark->at)},
                {QStringLiteral("value"), voice.quantity(asked.spec->dimension, read.reading->si)}};
    }
    const QVariantMap last = history.isEmpty() ? QVariantMap() : history.first().toMap();
    const bool isOut = !reads.empty() && isOutside(limits, reads.front().reading->si);
    const bool isLow = isOut && limits.lowSi && reads.front().reading->si < *limits.lowSi;
    const QString name = voice.placeName(place);
    const QString value = last.value(QStringLiteral("value")).toString();
    const QString told = isLow   ? Words::tr("low", "a reading")
                         : isOut ? Words::tr("high", "a reading")
                                 : QString();
    const auto digit = std::find_if(place.begin(), place.end(), [](char c) { return c >= '1' && c <= '9'; });
    QStringList spoken{name, value.isEmpty() ? Words::tr("no reading") : value, told,
                       last.value(QStringLiteral("label")).toString()};
    spoken.removeAll(QString());
    return {{QStringLiteral("place"), Voice::text(place)},
            {QStringLiteral("name"), name},
            {QStringLiteral("axle"), digit == place.end() ? 0 : *digit - '1'},
            {QStringLiteral("left"), place.ends_with('L')},
            {QStringLiteral("value"), value},
            {QStringLiteral("date"), last.value(QStringLiteral("label"))},
            {QStringLiteral("out"), isOut},
            {QStringLiteral("told"), told},
            {QStringLiteral("spoken"), spoken.join(QStringLiteral(", "))},
            {QStringLiteral("history"), history}};
}

} // namespace

QVariantMap wheelMap(const Shown &shown, const Catalogue &catalogue, const BenchQuestion &question)
{
    if (shown.history() == nullptr)
        return {};
    const Asked asked = readingAsked(catalogue, question);
    const Rig &rig = shown.history()->rig;
    const std::vector<std::string> places = wheelNames(rig);
    if (asked.point == nullptr || places.empty())
        return {};
    const Limits limits = limitsFor(*asked.spec, *asked.point, rig);
    QVariantList wheels;
    for (const std::string &place : places)
        wheels << wheelOf(shown, asked, limits, place);
    return {{QStringLiteral("kind"), QStringLiteral("wheels")},
            {QStringLiteral("title"), shown.voice->word("readings", asked.spec->slug)},
            {QStringLiteral("point"), Voice::text(asked.point->slug)},
            {QStringLiteral("limits"), limitWords(*shown.voice, *asked.spec, limits)},
            {QStringLiteral("wheels"), wheels},
            {QStringLiteral("axles"), static_cast<int>(rig.measures.axles.size())}};
}

} // namespace snugwalk

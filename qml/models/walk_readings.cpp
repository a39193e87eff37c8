// SPDX-License-Identifier: Apache-2.0
// Readings shown and checked.
#include "walk_readings.hpp"

#include <QCoreApplication>

#include "catalogue/pick.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Readings)
};

// The latest reading of this slug and place on any earlier or present walk.
const Reading *lastReading(const RigHistory &history, const std::string &point, const std::string &slug,
                           const std::string &place, const Mark **on)
{
    for (auto record = history.walks.rbegin(); record != history.walks.rend(); ++record) {
        for (const Mark &mark : record->marks) {
            if (mark.point != point)
                continue;
            for (const Reading &reading : mark.readings) {
                if (reading.slug == slug && reading.place == place) {
                    *on = &mark;
                    return &reading;
                }
            }
        }
    }
    return nullptr;
}

QString lastWords(const Shown &shown, const std::string &point, const ReadingSpec &spec,
                  const std::string &place)
{
    const Mark *on = nullptr;
    const Reading *reading = lastReading(*shown.history(), point, spec.slug, place, &on);
    if (reading == nullptr)
        return {};
    const Voice &voice = *shown.voice;
    return Words::tr("%1 on %2", "last reading, date")
        .arg(voice.inUnit(reading->dimension, reading->si, reading->unit), voice.date(on->at));
}

QString limitWords(const Voice &voice, const ReadingSpec &spec, const Limits &limits)
{
    const auto shown = [&](double si) { return voice.inUnit(spec.dimension, si, spec.unit); };
    if (limits.lowSi && limits.highSi)
        return Words::tr("%1 to %2", "limits").arg(shown(*limits.lowSi), shown(*limits.highSi));
    if (limits.lowSi)
        return Words::tr("at least %1").arg(shown(*limits.lowSi));
    if (limits.highSi)
        return Words::tr("at most %1").arg(shown(*limits.highSi));
    return spec.setBy == "maker" ? Words::tr("maker's figure: not typed in") : QString();
}

// The unit that a bare number is taken in: the trade's where it belongs to the person's system.
Unit bareUnit(const Voice &voice, const ReadingSpec &spec)
{
    const auto known = findUnit(spec.dimension, spec.unit);
    const double one = known ? toSi(*known, 1.0) - toSi(*known, 0.0) : 1.0;
    const Unit own = displayUnit(spec.dimension, voice.units, one);
    const Unit other =
        displayUnit(spec.dimension, voice.units == UnitSystem::Si ? UnitSystem::Us : UnitSystem::Si, one);
    return known && known->symbol != other.symbol ? *known : own;
}

// The bare one first, then what a gauge of the other system shows.
QStringList unitChoices(const Voice &voice, const ReadingSpec &spec)
{
    const auto known = findUnit(spec.dimension, spec.unit);
    const double one = known ? toSi(*known, 1.0) - toSi(*known, 0.0) : 1.0;
    QStringList list{Voice::text(bareUnit(voice, spec).symbol)};
    for (const UnitSystem system : {UnitSystem::Si, UnitSystem::Us}) {
        const QString symbol = Voice::text(displayUnit(spec.dimension, system, one).symbol);
        if (!list.contains(symbol))
            list << symbol;
    }
    if (known && !list.contains(Voice::text(known->symbol)))
        list << Voice::text(known->symbol);
    list.removeAll(QString());
    return list;
}

bool canBeNegative(Dimension dimension)
{
    switch (dimension) {
    case Dimension::Temperature:
    case Dimension::TemperatureDifference:
    case Dimension::Angle:
    case Dimension::Voltage:
    case Dimension::Current:
        return true;
    default:
        return false;
    }
}

QVariantMap readingField(const Shown &shown, const Point &point, const ReadingSpec &spec,
                         const TypedReadings &typed)
{
    const Voice &voice = *shown.voice;
    const Rig &rig = shown.history()->rig;
    const Limits limits = limitsFor(spec, point, rig);
    std::vector<std::string> places = placesOf(point, rig);
    QStringList keys;
    QStringList names;
    QVariantMap last;
    QVariantMap soFar;
    for (const std::string &place : places) {
        keys << Voice::text(place);
        names << voice.placeName(place);
    }
    if (places.empty())
        places.emplace_back();
    for (const std::string &place : places) {
        const auto entry = typed.find({point.slug, spec.slug, place});
        last[Voice::text(place)] = lastWords(shown, point.slug, spec, place);
        soFar[Voice::text(place)] = entry == typed.end() ? QString() : entry->second.shown;
    }
    return {{QStringLiteral("point"), Voice::text(point.slug)},
            {QStringLiteral("slug"), Voice::text(spec.slug)},
            {QStringLiteral("title"), voice.word("readings", spec.slug)},
            {QStringLiteral("unit"), Voice::text(bareUnit(voice, spec).symbol)},
            {QStringLiteral("units"), unitChoices(voice, spec)},
            {QStringLiteral("signed"), canBeNegative(spec.dimension)},
            {QStringLiteral("fractions"), spec.dimension == Dimension::Length},
            {QStringLiteral("places"), keys},
            {QStringLiteral("placeNames"), names},
            {QStringLiteral("last"), last},
            {QStringLiteral("limits"), limitWords(voice, spec, limits)},
            {QStringLiteral("basis"), limits.basis.empty() ? QString() : voice.basis(limits.basis)},
            {QStringLiteral("typed"), soFar}};
}

} // namespace

QVariantList readingFields(const Shown &shown, const Catalogue &catalogue,
                           const std::vector<std::string> &points, const TypedReadings &typed)
{
    QVariantList list;
    if (shown.history() == nullptr)
        return list;
    for (const std::string &slug : points) {
        const Point *point = catalogue.find(slug);
        if (point == nullptr)
            continue;
        for (const ReadingSpec &spec : point->readings)
            list << readingField(shown, *point, spec, typed);
    }
    return list;
}

ReadingCheck checkTyped(const Shown &shown, const Point &point, const ReadingSpec &spec, const QString &text)
{
    const Voice &voice = *shown.voice;
    const Unit bare = bareUnit(voice, spec);
    const PlainNumbers plain = plainNumbers(text.trimmed().toStdString(), voice.numberStyle());
    const Result<double> si = parseSi(spec.dimension, plain.text, bare);
    if (!si) {
        const std::string symbol(bare.symbol);
        const QString example = Voice::text(symbol.empty() ? "3" : "12 " + symbol);
        return {false, Words::tr("Not understood. Write it for example as %1.").arg(example), {}};
    }
    const bool hasUnit = unitWritten(spec.dimension, plain.text).has_value() || bare.symbol.empty();
    const std::string forCore = hasUnit ? plain.text : plain.text + ' ' + std::string(bare.symbol);
    if (plain.doubtful) // a slip of the mark is a slip by a thousand: it is asked
        return {false, voice.twoWays(*plain.doubtful), {}};
    const Limits limits = limitsFor(spec, point, shown.history()->rig);
    const QString value = voice.inUnit(spec.dimension, *si, spec.unit);
    if (isOutside(limits, *si))
        return {true,
                Words::tr("%1 is outside the limit (%2, %3). Consider attention.")
                    .arg(value, limitWords(voice, spec, limits), voice.basis(limits.basis)),
                forCore};
    const QString own = voice.quantity(spec.dimension, *si);
    return {true, own == value ? value : QStringLiteral("%1 = %2").arg(value, own), forCore};
}

std::vector<TypedReading> typedFor(const TypedReadings &typed, const std::string &point)
{
    std::vector<TypedReading> readings;
    for (const auto &[where, text] : typed) {
        if (std::get<0>(where) == point)
            readings.push_back({std::get<1>(where), std::get<2>(where), text.plain});
    }
    return readings;
}

} // namespace snugwalk

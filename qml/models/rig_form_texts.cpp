// SPDX-License-Identifier: Apache-2.0
// From a rig to the texts of its form.
#include "rig/names.hpp"
#include "rig_form.hpp"

namespace snugwalk {
namespace {

template <typename Q>
QString optional(const Voice &voice, const std::optional<Q> &quantity)
{
    return quantity ? formFigure(voice, DimensionOf<Q>::value, quantity->si()) : QString();
}

} // namespace

QString formFigure(const Voice &voice, Dimension dimension, double si)
{
    const bool us = voice.units == UnitSystem::Us;
    const Unit unit = dimension == Dimension::Length ? *findUnit(dimension, us ? "ft" : "m")
                                                     : displayUnit(dimension, voice.units, si);
    QLocale locale = voice.locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator); // what is read back must not be taken for a point
    const int decimals = dimension == Dimension::Length ? 2 : 1;
    QString figure = locale.toString(fromSi(unit, si), 'f', decimals);
    const QString point = locale.decimalPoint();
    while (figure.contains(point) && figure.endsWith(locale.zeroDigit()))
        figure.chop(1);
    if (figure.endsWith(point))
        figure.chop(point.size());
    return figure + u' ' + Voice::text(unit.symbol);
}

QVariantMap rigFormTexts(const Rig &rig, const Voice &voice)
{
    const Measures &m = rig.measures;
    const auto length = [&](Length l) { return formFigure(voice, Dimension::Length, l.si()); };
    QStringList axles;
    for (const Length &axle : m.axles)
        axles << length(axle);
    QStringList fittings;
    for (const std::string &fitting : rig.fittings)
        fittings << Voice::text(fitting);
    return {{QStringLiteral("name"), Voice::text(rig.name)},
            {QStringLiteral("kind"), Voice::text(slug(rig.kind))},
            {QStringLiteral("practice"), Voice::text(slug(rig.practice))},
            {QStringLiteral("length"), length(m.length)},
            {QStringLiteral("width"), length(m.width)},
            {QStringLiteral("height"), length(m.height)},
            {QStringLiteral("floor_height"), length(m.floorHeight)},
            {QStringLiteral("hitch_length"), length(m.hitchLength)},
            {QStringLiteral("axle_count"), QString::number(m.axles.size())},
            {QStringLiteral("axles"), axles},
            {QStringLiteral("roof_walk"), Voice::text(slug(rig.roofWalk))},
            {QStringLiteral("roof"), Voice::text(slug(rig.roof))},
            {QStringLiteral("fittings"), fittings},
            {QStringLiteral("gross"), optional(voice, rig.ratings.gross)},
            {QStringLiteral("placard"), optional(voice, rig.tires.placard)},
            {QStringLiteral("tire_size"), Voice::text(rig.tires.size)},
            {QStringLiteral("load_range"), Voice::text(rig.tires.loadRange)},
            {QStringLiteral("max_load"), optional(voice, rig.tires.maxLoad)},
            {QStringLiteral("max_pressure"), optional(voice, rig.tires.maxPressure)},
            {QStringLiteral("torque"), optional(voice, rig.wheels.torque)}};
}

} // namespace snugwalk

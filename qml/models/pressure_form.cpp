// SPDX-License-Identifier: Apache-2.0
// Reading the fields, asking the bench, telling what came out.
#include "pressure_form.hpp"

#include <QCoreApplication>

#include "bench/standard_air.hpp"
#include "bench/tires/tire_pressure.hpp"

namespace snugwalk {
namespace {

class PressureForm {
    Q_DECLARE_TR_FUNCTIONS(PressureForm)
public:
    PressureForm(const Voice &voice, const std::map<QString, QString> &typed) : m_voice(voice), m_typed(typed)
    {}
    PressureAnswer work();

private:
    template <typename Q>
    std::optional<Q> read(const char *name);
    void addSetting(const TirePlace &now, const TirePlace &then);
    void addElsewhere(const TirePlace &now, const TirePlace &then);
    void add(const QString &label, const Result<Estimate> &estimate);
    void fail(const Error &error);
    [[nodiscard]] QString shown(double pascals) const;
    [[nodiscard]] static QString warning(const std::string &slug);

    const Voice &m_voice;
    const std::map<QString, QString> &m_typed;
    PressureAnswer m_answer;
};

template <typename Q>
std::optional<Q> PressureForm::read(const char *name)
{
    const auto found = m_typed.find(QLatin1String(name));
    const QString text = found == m_typed.end() ? QString() : found->second.trimmed();
    if (text.isEmpty())
        return std::nullopt;
    constexpr Dimension dimension = DimensionOf<Q>::value;
    // Heights are told in metres or feet, whatever their size.
    const double size = dimension == Dimension::Length ? 10.0 : 0.0;
    const Result<double> si =
        parseSi(dimension, text.toStdString(), displayUnit(dimension, m_voice.units, size));
    if (si)
        return Q::fromSi(*si);
    m_answer.problem = tr("Not understood: %1. Write the number with its unit.").arg(text);
    return std::nullopt;
}

QString PressureForm::shown(double pascals) const { return m_voice.quantity(Dimension::Pressure, pascals); }

QString PressureForm::warning(const std::string &slug)
{
    if (slug == "set_outside")
        return tr(
            "The largest pressure stands in the way: set it outside, where it is as cold as at the start.");
    if (slug == "maximum_unknown")
        return tr(
            "The largest pressure of tire and wheel is not typed in: read the sidewall before filling.");
    return tr("The tire was warm: this shows only that it is not low.");
}

void PressureForm::fail(const Error &error)
{
    m_answer.problem =
        error.code == Errc::InvalidInput
            ? tr("The largest pressure is below the placard. Read the sidewall and the placard once more; "
                 "the tire may be the wrong one.")
            : tr("Beyond what can be true: %1. Check the number and its unit.").arg(Voice::text(error.where));
}

void PressureForm::add(const QString &label, const Result<Estimate> &estimate)
{
    if (!estimate)
        return fail(estimate.error());
    QStringList warnings;
    for (const std::string &slug : estimate->warnings)
        warnings << warning(slug);
    const QString range = estimate->low < estimate->high
                              ? tr("%1 to %2", "a range").arg(shown(estimate->low), shown(estimate->high))
                              : QString();
    m_answer.results << QVariantMap{{QStringLiteral("label"), label},
                                    {QStringLiteral("value"), shown(estimate->value)},
                                    {QStringLiteral("range"), range},
                                    {QStringLiteral("basis"), m_voice.basis(estimate->basis)},
                                    {QStringLiteral("source"), Voice::text(estimate->source)},
                                    {QStringLiteral("warnings"), warnings}};
}

void PressureForm::addSetting(const TirePlace &now, const TirePlace &then)
{
    const auto placard = read<Pressure>("placard");
    if (placard)
        return add(tr("Set now"), pressureToSet({*placard, read<Pressure>("maxPressure"), now, then}));
    if (m_answer.problem.isEmpty())
        m_answer.problem = tr("Maker's figure: not typed in. Read the placard and type the cold pressure.");
}

void PressureForm::addElsewhere(const TirePlace &now, const TirePlace &then)
{
    if (const auto shownNow = read<Pressure>("pressureNow"))
        add(tr("Shown at the coldest start, when no air goes in or out"),
            pressureEstimate(*shownNow, now, then, false));
}

PressureAnswer PressureForm::work()
{
    TirePlace now;
    now.tire = read<Temperature>("temperatureNow").value_or(now.tire);
    now.altitude = geopotential(read<Length>("altitudeNow").value_or(Length()));
    TirePlace then = now;
    then.tire = read<Temperature>("temperatureColdest").value_or(now.tire);
    if (const auto altitude = read<Length>("altitudeThen"))
        then.altitude = geopotential(*altitude);
    if (m_answer.problem.isEmpty())
        addSetting(now, then);
    addElsewhere(now, then);
    return m_answer;
}

} // namespace

std::map<QString, QString> pressureDefaults(const Shown &shown)
{
    std::map<QString, QString> defaults;
    if (shown.history() == nullptr)
        return defaults;
    const Tires &tires = shown.history()->rig.tires;
    const auto put = [&](const char *name, const std::optional<Pressure> &pressure) {
        if (pressure)
            defaults[QLatin1String(name)] = shown.voice->quantity(*pressure);
    };
    put("placard", tires.placard);
    put("maxPressure", tires.maxPressure);
    return defaults;
}

PressureAnswer workPressure(const Voice &voice, const std::map<QString, QString> &typed)
{
    return PressureForm(voice, typed).work();
}

} // namespace snugwalk

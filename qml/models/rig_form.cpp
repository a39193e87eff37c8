// SPDX-License-Identifier: Apache-2.0
// From texts to a rig.
#include "rig_form.hpp"

#include <QCoreApplication>

#include "base/text.hpp"
#include "rig/names.hpp"
#include "rig/usual_fittings.hpp"
#include "rig/usual_measures.hpp"

namespace snugwalk {
namespace {

class FormReader {
    Q_DECLARE_TR_FUNCTIONS(RigForm)
public:
    FormReader(const QVariantMap &map, UnitSystem units, const Rig *old, QVariantMap shown)
        : m_map(map), m_units(units), m_old(old), m_shown(std::move(shown))
    {
        if (old != nullptr)
            form.rig = *old;
    }

    void read();
    RigForm form;

private:
    [[nodiscard]] QString text(const char *key) const
    {
        return m_map.value(QLatin1String(key)).toString().trimmed();
    }
    // As the form showed it: what is in the logbook is more exact than its text.
    [[nodiscard]] bool isUntouched(const char *key) const
    {
        return m_old != nullptr && text(key) == m_shown.value(QLatin1String(key)).toString();
    }
    void fault(const QString &field, const QString &what, const QString &act);
    void length(const char *key, Length &out, Length usual);
    template <typename Q>
    void figure(const char *key, std::optional<Q> &out);
    std::optional<double> parse(Dimension dimension, const QString &field, const QString &typed);
    template <typename Choice>
    bool choice(const char *key, Choice &out);
    void readKind();
    void readMeasures();
    void readAxles();
    void readFittings();
    void readPlates();
    void check();

    const QVariantMap &m_map;
    UnitSystem m_units;
    const Rig *m_old;
    QVariantMap m_shown;
};

void FormReader::fault(const QString &field, const QString &what, const QString &act)
{
    form.problems << QVariantMap{
        {QStringLiteral("field"), field}, {QStringLiteral("what"), what}, {QStringLiteral("act"), act}};
}

std::optional<double> FormReader::parse(Dimension dimension, const QString &field, const QString &typed)
{
    const bool us = m_units == UnitSystem::Us;
    const auto bare = dimension == Dimension::Length ? findUnit(dimension, us ? "ft" : "m")
                                                     : displayUnit(dimension, m_units, 1e5);
    const Result<double> si = parseSi(dimension, typed.toStdString(), bare);
    if (si)
        return *si;
    fault(field, tr("Not understood: %1").arg(typed),
          dimension == Dimension::Length     ? tr("Write it for example as 6.4 m or 21 ft.")
          : dimension == Dimension::Pressure ? tr("Write it for example as 4.5 bar or 65 psi.")
                                             : tr("Write the number with its unit."));
    return std::nullopt;
}

void FormReader::length(const char *key, Length &out, Length usual)
{
    const QString typed = text(key);
    if (typed.isEmpty())
        out = usual;
    else if (isUntouched(key))
        return;
    else if (const auto read = parse(Dimension::Length, QLatin1String(key), typed))
        out = Length::fromSi(*read);
}

template <typename Q>
void FormReader::figure(const char *key, std::optional<Q> &out)
{
    const QString typed = text(key);
    if (!m_map.contains(QLatin1String(key)) || (isUntouched(key) && !typed.isEmpty()))
        return;
    out.reset();
    if (typed.isEmpty())
        return;
    if (const auto read = parse(DimensionOf<Q>::value, QLatin1String(key), typed))
        out = Q::fromSi(*read);
}

// False when nothing was chosen, or nothing that is known.
template <typename Choice>
bool FormReader::choice(const char *key, Choice &out)
{
    const std::string typed = text(key).toStdString();
    if (typed.empty())
        return false;
    const auto parsed = parseChoice<Choice>(typed);
    if (parsed)
        out = *parsed;
    else
        fault(QLatin1String(key), tr("Not understood: %1").arg(text(key)), tr("Choose one of the list."));
    return parsed.has_value();
}

void FormReader::readKind()
{
    Rig &rig = form.rig;
    if (text("kind").isEmpty())
        fault(QStringLiteral("kind"), tr("Nothing is chosen."), tr("Choose what comes nearest."));
    if (text("practice").isEmpty())
        fault(QStringLiteral("practice"), tr("Nothing is chosen."), tr("Choose where the rig is at home."));
    choice("kind", rig.kind);
    choice("practice", rig.practice);
    choice("roof_walk", rig.roofWalk);
    if (m_old == nullptr || m_old->kind != rig.kind) {
        rig.hitch = usualHitch(rig.kind);
        rig.bearings = usualBearings(rig.kind, rig.practice);
    }
    choice("hitch", rig.hitch);
    if (!choice("roof", rig.roof) && m_old == nullptr)
        rig.roof = usualRoof(rig.kind, rig.practice);
}

void FormReader::readAxles()
{
    Measures &measures = form.rig.measures;
    const bool same = isUntouched("axle_count") && m_old != nullptr && m_old->kind == form.rig.kind &&
                      m_map.value(QStringLiteral("axles")).toStringList() ==
                          m_shown.value(QStringLiteral("axles")).toStringList();
    if (same)
        return;
    measures.axles.clear();
    bool typed = false;
    for (const QString &axle : m_map.value(QStringLiteral("axles")).toStringList()) {
        if (axle.trimmed().isEmpty())
            continue;
        typed = true;
        if (const auto read = parse(Dimension::Length, QStringLiteral("axles"), axle.trimmed()))
            measures.axles.push_back(Length::fromSi(*read));
    }
    if (typed)
        return;
    const auto count = parseInteger(text("axle_count").toStdString());
    const auto usual = static_cast<int>(usualMeasures(form.rig.kind, form.rig.practice).axles.size());
    measures.axles = usualAxles(form.rig.kind, measures.length, count ? static_cast<int>(*count) : usual);
}

void FormReader::readMeasures()
{
    Measures &measures = form.rig.measures;
    const Measures usual = usualMeasures(form.rig.kind, form.rig.practice);
    length("length", measures.length, usual.length);
    length("width", measures.width, usual.width);
    length("height", measures.height, usual.height);
    length("floor_height", measures.floorHeight, usual.floorHeight);
    length("hitch_length", measures.hitchLength, usual.hitchLength);
    readAxles();
}

void FormReader::readFittings()
{
    if (!m_map.contains(QStringLiteral("fittings"))) { // nobody was asked
        if (m_old == nullptr)
            form.rig.fittings = usualFittings(form.rig.kind, form.rig.practice);
        return;
    }
    form.rig.fittings.clear();
    for (const QString &fitting : m_map.value(QStringLiteral("fittings")).toStringList())
        form.rig.fittings.insert(fitting.toStdString());
}

void FormReader::readPlates()
{
    Rig &rig = form.rig;
    figure("gross", rig.ratings.gross);
    figure("placard", rig.tires.placard);
    figure("max_load", rig.tires.maxLoad);
    figure("max_pressure", rig.tires.maxPressure);
    figure("torque", rig.wheels.torque);
    if (m_map.contains(QStringLiteral("tire_size")))
        rig.tires.size = text("tire_size").toStdString();
    if (m_map.contains(QStringLiteral("load_range")))
        rig.tires.loadRange = text("load_range").toStdString();
}

// The core names fields by their path in data, the form by its own keys.
QString formKey(const std::string &field)
{
    if (field.starts_with("measures.axles"))
        return QStringLiteral("axles");
    if (field.starts_with("openings"))
        return QStringLiteral("openings");
    if (field == "tires.size")
        return QStringLiteral("tire_size");
    if (field == "ratings.gvwr")
        return QStringLiteral("gross");
    const std::size_t dot = field.rfind('.');
    return QString::fromStdString(dot == std::string::npos ? field : field.substr(dot + 1));
}

void FormReader::check()
{
    QStringList told;
    for (const Problem &problem : validate(form.rig)) {
        const QString key = formKey(problem.field);
        if (told.contains(key))
            continue; // one thing to do is enough
        told << key;
        if (key == QStringLiteral("name"))
            fault(key, tr("It has no name, or a very long one."), tr("Give the rig a short name."));
        else if (key == QStringLiteral("axles"))
            fault(key, tr("The axles cannot be like that."),
                  tr("Give each axle's distance from the front face, foremost first, for example 3.3 m."));
        else if (key == QStringLiteral("openings"))
            fault(key, tr("A door, window or vent would lie outside the rig."),
                  tr("Check the length, or move it on the command line with rig set."));
        else if (problem.field == "tires.placard" && form.rig.tires.maxPressure &&
                 *form.rig.tires.placard > *form.rig.tires.maxPressure)
            fault(key, tr("The placard asks for more than the sidewall allows."),
                  tr("Read both again; a tire shop decides which tire is wrong."));
        else if (problem.field.starts_with("tires.") && problem.field != "tires.max_load")
            fault(key, tr("This cannot be right."), tr("Check it, for example 4.5 bar or 65 psi."));
        else
            fault(key, tr("This cannot be right."),
                  tr("Check the number and its unit, for example 6.4 m or 21 ft."));
    }
}

void FormReader::read()
{
    form.rig.name = text("name").toStdString();
    readKind();
    readMeasures();
    readFittings();
    readPlates();
    if (form.problems.isEmpty())
        check();
}

} // namespace

RigForm readRigForm(const QVariantMap &map, UnitSystem units)
{
    FormReader reader(map, units, nullptr, {});
    reader.read();
    return reader.form;
}

RigForm readRigForm(const QVariantMap &map, const Rig &old, const Voice &voice)
{
    FormReader reader(map, voice.units, &old, rigFormTexts(old, voice));
    reader.read();
    return reader.form;
}

} // namespace snugwalk

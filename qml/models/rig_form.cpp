// SPDX-License-Identifier: Apache-2.0
// From texts to a rig.
#include "rig_form.hpp"

#include <QCoreApplication>

#include "base/text.hpp"
#include "rig/names.hpp"
#include "rig/usual_fittings.hpp"

namespace snugwalk {
namespace {

class FormReader {
    Q_DECLARE_TR_FUNCTIONS(RigForm)
public:
    FormReader(const QVariantMap &map, UnitSystem units) : m_map(map), m_units(units) {}

    void read();
    RigForm form;

private:
    [[nodiscard]] QString text(const char *key) const
    {
        return m_map.value(QLatin1String(key)).toString().trimmed();
    }
    void fault(const QString &field, const QString &what, const QString &act);
    void length(const char *key, Length &out);
    std::optional<Length> parse(const QString &field, const QString &typed);
    template <typename Choice>
    void choice(const char *key, Choice &out);
    void readFittings();
    void check();

    const QVariantMap &m_map;
    UnitSystem m_units;
};

void FormReader::fault(const QString &field, const QString &what, const QString &act)
{
    form.problems << QVariantMap{
        {QStringLiteral("field"), field}, {QStringLiteral("what"), what}, {QStringLiteral("act"), act}};
}

std::optional<Length> FormReader::parse(const QString &field, const QString &typed)
{
    const auto bare = findUnit(Dimension::Length, m_units == UnitSystem::Us ? "ft" : "m");
    const Result<double> si = parseSi(Dimension::Length, typed.toStdString(), bare);
    if (si)
        return Length::fromSi(*si);
    fault(field, tr("Not understood: %1").arg(typed), tr("Write it for example as 6.4 m or 21 ft."));
    return std::nullopt;
}

void FormReader::length(const char *key, Length &out)
{
    const QString typed = text(key);
    if (typed.isEmpty())
        return; // `validate` tells which zero cannot be
    if (const auto read = parse(QLatin1String(key), typed))
        out = *read;
}

template <typename Choice>
void FormReader::choice(const char *key, Choice &out)
{
    const std::string typed = text(key).toStdString();
    if (typed.empty())
        return;
    if (const auto parsed = parseChoice<Choice>(typed))
        out = *parsed;
    else
        fault(QLatin1String(key), tr("Not understood: %1").arg(text(key)), tr("Choose one of the list."));
}

void FormReader::readFittings()
{
    if (!m_map.contains(QStringLiteral("fittings"))) { // nobody was asked
        form.rig.fittings = usualFittings(form.rig.kind, form.rig.practice);
        return;
    }
    for (const QString &fitting : m_map.value(QStringLiteral("fittings")).toStringList())
        form.rig.fittings.insert(fitting.toStdString());
}

// The core names fields by their path in data, the form by its own keys.
QString formKey(const std::string &field)
{
    if (field.starts_with("measures.axles"))
        return QStringLiteral("axles");
    const std::size_t dot = field.rfind('.');
    return QString::fromStdString(dot == std::string::npos ? field : field.substr(dot + 1));
}

void FormReader::check()
{
    for (const Problem &problem : validate(form.rig)) {
        const QString key = formKey(problem.field);
        if (key == QStringLiteral("name"))
            fault(key, tr("It has no name, or a very long one."), tr("Give the rig a short name."));
        else if (key == QStringLiteral("axles"))
            fault(key, tr("The axles cannot be like that."),
                  tr("Give each axle's distance from the front face, foremost first, for example 3.3 m."));
        else
            fault(key, tr("This cannot be right."),
                  tr("Check the number and its unit, for example 6.4 m or 21 ft."));
    }
}

void FormReader::read()
{
    Rig &rig = form.rig;
    rig.name = text("name").toStdString();
    choice("kind", rig.kind);
    choice("practice", rig.practice);
    choice("roof_walk", rig.roofWalk);
    rig.hitch = usualHitch(rig.kind);
    choice("hitch", rig.hitch);
    length("length", rig.measures.length);
    length("width", rig.measures.width);
    length("height", rig.measures.height);
    length("floor_height", rig.measures.floorHeight);
    length("hitch_length", rig.measures.hitchLength);
    for (const QString &axle : m_map.value(QStringLiteral("axles")).toStringList()) {
        if (axle.trimmed().isEmpty())
            continue;
        if (const auto read = parse(QStringLiteral("axles"), axle.trimmed()))
            rig.measures.axles.push_back(*read);
    }
    readFittings();
    if (form.problems.isEmpty())
        check();
}

} // namespace

RigForm readRigForm(const QVariantMap &map, UnitSystem units)
{
    FormReader reader(map, units);
    reader.read();
    return reader.form;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Keeps what was typed and works again after each change.
#include "bench_model.hpp"

#include "pressure_form.hpp"

namespace snugwalk {

QVariantMap BenchModel::typed() const
{
    QVariantMap map;
    for (const auto &[name, text] : pressureDefaults(m_shown))
        map[name] = text;
    for (const auto &[name, text] : m_typed)
        map[name] = text;
    return map;
}

QString BenchModel::caution() const
{
    return tr("Maker's figure, checked gauge, cold tires. Never over what tire or wheel allows.");
}

void BenchModel::show(const Shown &shown)
{
    m_shown = shown;
    work();
}

void BenchModel::set(const QString &name, const QString &text)
{
    if (text.trimmed().isEmpty())
        m_typed.erase(name);
    else
        m_typed[name] = text.trimmed();
    work();
}

void BenchModel::work()
{
    std::map<QString, QString> all = pressureDefaults(m_shown);
    for (const auto &[name, text] : m_typed)
        all[name] = text;
    const PressureAnswer answer = workPressure(*m_shown.voice, all);
    m_results = answer.results;
    m_problem = answer.problem;
    Q_EMIT changed();
}

} // namespace snugwalk

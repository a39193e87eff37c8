// SPDX-License-Identifier: Apache-2.0
// What a report is about, as a person chooses it, and who signed it.
#include <algorithm>

#include "report_model.hpp"

namespace snugwalk {
namespace {

QVariantMap answer(const QString &slug, const QString &name)
{
    return {{QStringLiteral("slug"), slug}, {QStringLiteral("name"), name}};
}

QVariantMap answer(const ReportChoices::One &one) { return answer(Voice::text(one.id.text()), one.name); }

QString idText(const std::optional<Id> &id) { return id ? Voice::text(id->text()) : QString(); }

std::optional<Id> idOf(const QString &text) { return Id::parse(text.toStdString()); }

Signature signatureOf(const QVariantList &strokes)
{
    Signature signature;
    for (const QVariant &stroke : strokes) {
        std::vector<Signature::Spot> line;
        for (const QVariant &spot : stroke.toList()) {
            const QVariantMap at = spot.toMap();
            line.push_back({std::clamp(at.value(QStringLiteral("x")).toDouble(), 0.0, 1.0),
                            std::clamp(at.value(QStringLiteral("y")).toDouble(), 0.0, signatureHeight)});
        }
        if (!line.empty())
            signature.lines.push_back(std::move(line));
    }
    return signature;
}

} // namespace

// Once for all properties that read it: twenty years have a thousand walks.
void ReportModel::offer()
{
    const ReportDesk *desk = m_desk->parts->reports;
    m_choices = desk == nullptr || !m_open ? ReportChoices() : desk->choices(m_drawn, m_wish.kind);
}

QVariantList ReportModel::walks() const
{
    const ReportChoices &all = m_choices;
    QVariantList list;
    if (all.walks.size() < 2)
        return list;
    list << answer({}, tr("the last one", "which walk"));
    for (const ReportChoices::One &one : all.walks)
        list << answer(one);
    return list;
}

QVariantList ReportModel::others() const
{
    const ReportChoices &all = m_choices;
    QVariantList list;
    if (all.earlier.size() < 2)
        return list;
    list << answer({}, tr("the one that suits", "which earlier walk"));
    bool isBefore = !m_wish.walk || *m_wish.walk == all.walks.front().id;
    for (const ReportChoices::One &one : all.earlier) { // newest first
        if (isBefore)
            list << answer(one);
        isBefore = isBefore || one.id == *m_wish.walk;
    }
    return list;
}

QVariantList ReportModel::findings() const
{
    QVariantList list;
    for (const ReportChoices::One &one : m_choices.findings)
        list << answer(one);
    return list;
}

QString ReportModel::walk() const { return idText(m_wish.walk); }

void ReportModel::setWalk(const QString &id)
{
    ReportWish next = m_wish;
    next.walk = idOf(id);
    next.other.reset(); // it may be the later one now
    wish(std::move(next));
}

QString ReportModel::other() const { return idText(m_wish.other); }

void ReportModel::setOther(const QString &id)
{
    ReportWish next = m_wish;
    next.other = idOf(id);
    wish(std::move(next));
}

QStringList ReportModel::chosen() const
{
    QStringList ids;
    for (const Id &id : m_wish.findings)
        ids << Voice::text(id.text());
    return ids;
}

void ReportModel::setChosen(const QStringList &ids)
{
    ReportWish next = m_wish;
    next.findings.clear();
    for (const ReportChoices::One &one : m_choices.findings) { // in the order of reports
        if (ids.contains(Voice::text(one.id.text())))
            next.findings.push_back(one.id);
    }
    wish(std::move(next));
}

bool ReportModel::hasSite() const { return m_choices.access; }

QVariantMap ReportModel::site() const
{
    return {{QStringLiteral("access"), Voice::text(m_wish.access)},
            {QStringLiteral("power"), Voice::text(m_wish.power)},
            {QStringLiteral("key"), Voice::text(m_wish.key)}};
}

void ReportModel::setSite(const QString &part, const QString &text)
{
    ReportWish next = m_wish;
    std::string &typed = part == u"access" ? next.access : part == u"power" ? next.power : next.key;
    if (typed == text.toStdString())
        return;
    typed = text.toStdString();
    wish(std::move(next));
}

QVariantList ReportModel::signers() const
{
    QVariantList list;
    for (std::size_t i = 0; i < m_look.signers.size(); ++i)
        list << QVariantMap{{QStringLiteral("name"), m_look.signers[i]},
                            {QStringLiteral("signed"), m_wish.signatures.contains(static_cast<int>(i))}};
    return list;
}

void ReportModel::sign(int line, const QVariantList &strokes)
{
    Signature signature = signatureOf(strokes);
    if (line < 0 || static_cast<std::size_t>(line) >= m_look.signers.size() || signature.lines.empty())
        return;
    signature.placeAndDate = m_shown.voice->dateTime(m_desk->parts->clock->now()).toStdString();
    m_wish.signatures[line] = std::move(signature);
    m_saved.clear();
    lookAgain();
}

void ReportModel::unsign(int line)
{
    if (m_wish.signatures.erase(line) == 0)
        return;
    if (!isSigned())
        m_drawn = m_shown;
    m_saved.clear();
    lookAgain();
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// From the state to figures and grounds.
#include "state_figures.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "reason_text.hpp"

namespace snugwalk {
namespace {

class Figures {
    Q_DECLARE_TR_FUNCTIONS(StateFigures)
public:
    explicit Figures(const Shown &shown) : m_voice(*shown.voice), m_state(shown.snapshot->state) {}
    QVariantMap worst() const;
    QVariantMap serious() const;
    QVariantMap looked() const;

private:
    [[nodiscard]] QString percent(double share) const
    {
        const double value = 100.0 * share;
        if (value > 0.0 && value < 0.1)
            return tr("under %1 %", "chance").arg(m_voice.number(0.1, 1));
        if (value >= 99.5 && value < 100.0)
            return tr("over %1 %", "chance").arg(m_voice.number(99.0, 0));
        return tr("%1 %", "chance or share").arg(m_voice.number(value, value < 10.0 ? 1 : 0));
    }
    [[nodiscard]] QString number(double value) const { return m_voice.number(value, 0); }
    [[nodiscard]] QStringList worstWhy(const WorstItem &worst) const;

    const Voice &m_voice;
    const RigState &m_state;
};

QVariantMap figure(const QString &title, const QString &brief, const QString &text, const QStringList &why)
{
    return {{QStringLiteral("title"), title},
            {QStringLiteral("brief"), brief},
            {QStringLiteral("text"), text},
            {QStringLiteral("why"), why}};
}

QStringList Figures::worstWhy(const WorstItem &worst) const
{
    QStringList why;
    for (const OpenFinding &open : m_state.open) {
        if (open.id != worst.finding)
            continue;
        for (const Reason &reason : open.concern.why) {
            const QString sentence = reasonText(m_voice, reason);
            if (!sentence.isEmpty())
                why << sentence;
        }
    }
    for (const PointConcern &point : m_state.points) {
        if (!worst.finding.isNull() || point.point != worst.point)
            continue;
        why << (point.looked ? tr("Nothing was found there at the last look.")
                             : tr("Nobody has looked at it yet."))
            << tr("The chance of a defect at the next look is taken as %1, between %2 and %3.")
                   .arg(percent(point.chance.value), percent(point.chance.low), percent(point.chance.high));
    }
    why << tr("The scale: 50 is a chance of 1 in 100 of the worst kind of harm before the next look; 25 more "
              "is ten times as much.");
    return why;
}

QVariantMap Figures::worst() const
{
    const WorstItem &worst = *m_state.worst;
    QString text =
        tr("%1: %2, between %3 and %4", "point, concern")
            .arg(m_voice.point(worst.point), number(worst.number), number(worst.low), number(worst.high));
    QString brief = number(worst.number);
    if (worst.tied > 0) {
        text = tr("%1; %n more may be as bad", nullptr, worst.tied).arg(text);
        brief = tr("%1, tied with %2 more", "concern, number").arg(brief, number(worst.tied));
    }
    return figure(tr("Worst item, concern 0 to 100"), brief, text, worstWhy(worst));
}

QVariantMap Figures::serious() const
{
    const Outlook &outlook = m_state.outlook;
    const QString text =
        tr("%1, between %2 and %3", "chance")
            .arg(percent(outlook.serious.value), percent(outlook.serious.low), percent(outlook.serious.high));
    return figure(
        tr("Chance that one serious item fails before its next look"), percent(outlook.serious.value), text,
        {tr("Of %n item(s) on which life, limb or the rig hangs.", nullptr, outlook.seriousItems),
         tr("Each counts with its own chance, as if none knew of another; this is the chance that at least "
            "one of them fails."),
         tr("What nobody has looked at counts with the chance of a rig about which nothing is known.")});
}

QVariantMap Figures::looked() const
{
    const QString share = percent(m_state.outlook.looked);
    return figure(
        tr("Looked at, by weight"), share, tr("%1 of what weighs", "share").arg(share),
        {tr("A point weighs what hangs on it times how likely it would be at fault if nobody ever looked."),
         tr("A look counts until the point is due again.")});
}

} // namespace

QVariantList stateFigures(const Shown &shown)
{
    const RigState &state = shown.snapshot->state;
    if (shown.history() == nullptr || !state.lookedSince || !state.worst)
        return {};
    const Figures figures(shown);
    return {figures.worst(), figures.serious(), figures.looked()};
}

} // namespace snugwalk

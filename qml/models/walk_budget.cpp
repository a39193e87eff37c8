// SPDX-License-Identifier: Apache-2.0
// Fitting, and telling what stays out: the hold list first.
#include "walk_budget.hpp"

#include <algorithm>
#include <cmath>

#include "round/tape.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WalkBudget)
};

constexpr int namesTold = 5;

Standing standingAt(const Snapshot &snapshot, LocalTime now)
{
    return {*snapshot.history, snapshot.bands, snapshot.state, now};
}

int pointsOf(const std::vector<TapeLine> &tape)
{
    int points = 0;
    for (const TapeLine &line : tape)
        points += static_cast<int>(line.points.size());
    return points;
}

QString holdsLeftOut(const Voice &voice, const std::vector<LeftOut> &leftOut)
{
    QStringList names;
    for (const LeftOut &left : leftOut) {
        if (left.ownHoldList)
            names << voice.point(left.point);
    }
    return names.isEmpty() ? QString()
                           : Words::tr("Left out, though on the hold list: %1.", "points")
                                 .arg(names.join(QStringLiteral(", ")));
}

QString othersLeftOut(const Voice &voice, const FittedKind &kind)
{
    QStringList names;
    int others = 0;
    for (const LeftOut &left : kind.fitted.leftOut) {
        if (left.ownHoldList)
            continue;
        if (++others <= namesTold)
            names << voice.point(left.point);
    }
    if (others == 0)
        return {};
    const QString told = names.join(QStringLiteral(", "));
    const QString all =
        others > namesTold ? Words::tr("%1 and %n more", "points", others - namesTold).arg(told) : told;
    return Words::tr("Leaves out %1 of %2 points: %3.")
        .arg(static_cast<int>(kind.fitted.leftOut.size()))
        .arg(kind.points)
        .arg(all);
}

} // namespace

std::vector<FittedKind> fitKinds(const Snapshot &snapshot, double minutes)
{
    std::vector<FittedKind> list;
    const Standing standing = standingAt(snapshot, snapshot.now);
    for (const WalkKind &kind : snapshot.catalogue->kinds()) {
        const auto tape = tapeForWalk(*snapshot.catalogue, standing.history, kind.slug, {}, {}, snapshot.now);
        if (tape)
            list.push_back({kind.slug, pointsOf(*tape),
                            fitBudget(*snapshot.catalogue, standing, kind.slug, *tape, minutes)});
    }
    return list;
}

Result<BudgetedTape> tapeWithin(const Snapshot &snapshot, const std::string &kind, double minutes,
                                LocalTime now)
{
    auto tape = tapeForWalk(*snapshot.catalogue, *snapshot.history, kind, {}, {}, now);
    if (!tape)
        return tape.error();
    if (minutes <= 0.0)
        return BudgetedTape{std::move(tape).value(), 0.0, 0.0, {}};
    BudgetedTape fitted = fitBudget(*snapshot.catalogue, standingAt(snapshot, now), kind, *tape, minutes);
    if (fitted.tape.empty())
        return Error{Errc::OutOfRange, "no line of this walk fits into that", "minutes", "give it more time"};
    return fitted;
}

QVariantList fittedKinds(const Voice &voice, QVariantList kinds, const std::vector<FittedKind> &fitted)
{
    for (QVariant &entry : kinds) {
        QVariantMap map = entry.toMap();
        const std::string slug = map.value(QStringLiteral("slug")).toString().toStdString();
        const auto found = std::find_if(fitted.begin(), fitted.end(),
                                        [&](const FittedKind &kind) { return kind.kind == slug; });
        if (found == fitted.end())
            continue;
        map[QStringLiteral("lines")] = static_cast<int>(found->fitted.tape.size());
        map[QStringLiteral("minutes")] = static_cast<int>(std::lround(found->fitted.minutes));
        map[QStringLiteral("holdsLeftOut")] = holdsLeftOut(voice, found->fitted.leftOut);
        map[QStringLiteral("leftOut")] = othersLeftOut(voice, *found);
        entry = map;
    }
    return kinds;
}

} // namespace snugwalk

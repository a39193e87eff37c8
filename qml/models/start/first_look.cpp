// SPDX-License-Identifier: Apache-2.0
// Nobody begins with a day's work: a quarter of an hour first, the rest in stretches.
#include "first_look.hpp"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FirstLook)
};

} // namespace

bool wantsFirstLook(const Shown &shown)
{
    if (shown.history() == nullptr)
        return false;
    const auto &walks = shown.history()->walks;
    return std::all_of(walks.begin(), walks.end(), [](const WalkRecord &walk) { return walk.marks.empty(); });
}

QVariantMap firstLookKind(const BudgetedTape &fitted)
{
    return {
        {QStringLiteral("slug"), QStringLiteral("first_look")},
        {QStringLiteral("walk"), QStringLiteral("full_round")},
        {QStringLiteral("name"), Words::tr("First look", "kind of walk")},
        {QStringLiteral("about"),
         Words::tr("What would do most harm if it were wrong, out of all this rig has. The rest can follow "
                   "in stretches.")},
        {QStringLiteral("lines"), static_cast<int>(fitted.tape.size())},
        {QStringLiteral("minutes"), static_cast<int>(std::lround(fitted.minutes))},
        {QStringLiteral("budget"), firstLookMinutes},
        {QStringLiteral("suggested"), true}};
}

} // namespace snugwalk

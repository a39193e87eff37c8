// SPDX-License-Identifier: Apache-2.0
// What a person set once and finds again: units, theme, language, name.
#pragma once

#include <QStringList>

#include "base/units.hpp"

namespace snugwalk {

struct Preferences {
    UnitSystem units = UnitSystem::Si;
    QString theme = QStringLiteral("day"); ///< day, night or sun
    bool gloves = false;
    QString language; ///< empty: the system's
    QString person;
    double textScale = 1.0; ///< 1 to 2
    bool sound = false;     ///< a tick when a mark is written
    bool buzz = true;       ///< the same to the hand, where the device can
    QString rig;            ///< id of the rig last chosen
    QStringList putAway;    ///< ids of rigs that this device no longer offers
    QString book;           ///< the person's own logbook; empty: the usual place
    friend bool operator==(const Preferences &, const Preferences &) = default;
};

/// Anything missing or out of range keeps its default.
[[nodiscard]] Preferences readPreferences(const QString &file);
void writePreferences(const QString &file, const Preferences &preferences);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Preferences in an INI file.
#include "preferences.hpp"

#include <algorithm>

#include <QSettings>

namespace snugwalk {

Preferences readPreferences(const QString &file)
{
    const QSettings kept(file, QSettings::IniFormat);
    Preferences preferences;
    if (kept.value(QStringLiteral("units")).toString() == QStringLiteral("us"))
        preferences.units = UnitSystem::Us;
    const QString theme = kept.value(QStringLiteral("theme")).toString();
    if (theme == QStringLiteral("night") || theme == QStringLiteral("sun"))
        preferences.theme = theme;
    preferences.gloves = kept.value(QStringLiteral("gloves")).toBool();
    preferences.language = kept.value(QStringLiteral("language")).toString();
    preferences.person = kept.value(QStringLiteral("person")).toString();
    const double scale = kept.value(QStringLiteral("text_scale"), 1.0).toDouble();
    preferences.textScale = std::clamp(scale, 1.0, 2.0);
    preferences.sound = kept.value(QStringLiteral("sound"), preferences.sound).toBool();
    preferences.buzz = kept.value(QStringLiteral("buzz"), preferences.buzz).toBool();
    preferences.rig = kept.value(QStringLiteral("rig")).toString();
    preferences.putAway = kept.value(QStringLiteral("put_away")).toStringList();
    preferences.book = kept.value(QStringLiteral("book")).toString();
    return preferences;
}

void writePreferences(const QString &file, const Preferences &preferences)
{
    QSettings kept(file, QSettings::IniFormat);
    kept.setValue(QStringLiteral("units"),
                  preferences.units == UnitSystem::Us ? QStringLiteral("us") : QStringLiteral("si"));
    kept.setValue(QStringLiteral("theme"), preferences.theme);
    kept.setValue(QStringLiteral("gloves"), preferences.gloves);
    kept.setValue(QStringLiteral("language"), preferences.language);
    kept.setValue(QStringLiteral("person"), preferences.person);
    kept.setValue(QStringLiteral("text_scale"), preferences.textScale);
    kept.setValue(QStringLiteral("sound"), preferences.sound);
    kept.setValue(QStringLiteral("buzz"), preferences.buzz);
    kept.setValue(QStringLiteral("rig"), preferences.rig);
    kept.setValue(QStringLiteral("put_away"), preferences.putAway);
    kept.setValue(QStringLiteral("book"), preferences.book);
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Language and units change while the app runs: every word of the page at once, and every figure.
#include "app_steps.hpp"
#include "due_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

// Words that the driver took from the translations: "settings", "units", "due" and "rig" of a language.
QString word(Life &life, const QString &language, const char *what)
{
    return life.given(language + QLatin1Char('-') + QLatin1String(what));
}

void seeIn(Life &life, const QString &language)
{
    Finger &finger = life.finger();
    expect(life.session().language() == language, QStringLiteral("not in ") + language);
    for (const char *what : {"title", "units", "size"})
        expect(finger.reads(word(life, language, what)),
               QStringLiteral("the settings do not say: ") + word(life, language, what));
    life.shot(QStringLiteral("settings-1-") + language);
    finger.tap(word(life, language, "back"));
    expect(finger.sees(word(life, language, "rig")) && finger.sees(word(life, language, "due")),
           QStringLiteral("the bar is not in ") + language);
    finger.tap(word(life, language, "due"));
    life.settle();
    expect(finger.reads(word(life, language, "point")),
           QStringLiteral("the catalogue is not in ") + language);
    life.shot(QStringLiteral("settings-2-due-") + language);
    finger.tap(word(life, language, "rig"));
    finger.tap(word(life, language, "settings"));
}

void languages(Life &life)
{
    life.finger().tap(QStringLiteral("settings"));
    for (const QString &language : life.given(QStringLiteral("languages")).split(QLatin1Char(','))) {
        life.finger().tap(life.given(language + QStringLiteral("-chooses")));
        life.settle();
        seeIn(life, language);
    }
}

void units(Life &life)
{
    Finger &finger = life.finger();
    say(QStringLiteral("about ") + life.session().rig()->about());
    finger.tap(QStringLiteral("settings"));
    finger.tap(QStringLiteral("Units shown; typing takes either: feet, miles, psi, °F"));
    life.shot(QStringLiteral("settings-3-units"));
    finger.tap(QStringLiteral("back"));
    life.settle();
    expect(finger.reads(life.session().rig()->about()), QStringLiteral("the home does not say what it is"));
    say(QStringLiteral("about ") + life.session().rig()->about());
    life.shot(QStringLiteral("settings-4-home-in-feet"));
}

} // namespace

Stories settingsStories()
{
    return {{QStringLiteral("languages"), languages}, {QStringLiteral("units"), units}};
}

} // namespace snugwalk::journey

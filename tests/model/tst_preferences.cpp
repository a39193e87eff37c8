// SPDX-License-Identifier: Apache-2.0
// What a person set is there again, and a broken file never stands in the way.
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstPreferences : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void whatWasSetIsThereAgain();
    void nonsenseInTheFileKeepsTheDefaults();
};

void TstPreferences::whatWasSetIsThereAgain()
{
    AppFixture app;
    const QString file = QString::fromStdString(app.folder().file("preferences.ini"));
    app.parts.preferencesFile = file;
    Session &session = app.open();
    session.setUnits(QStringLiteral("us"));
    session.setTheme(QStringLiteral("sun"));
    session.setGloves(true);
    session.setLanguage(QStringLiteral("es"));
    session.setPerson(QStringLiteral("Ñ. with; odd = signs"));
    session.setTextScale(1.75);
    session.setSound(true);
    session.setBuzz(false);
    session.chooseRig(session.rigs().first().toMap().value(QStringLiteral("id")).toString());
    const QString rig = session.rigs().first().toMap().value(QStringLiteral("id")).toString();
    app.close();
    const Preferences kept = readPreferences(file);
    const Preferences wanted{UnitSystem::Us,
                             QStringLiteral("sun"),
                             true,
                             QStringLiteral("es"),
                             QStringLiteral("Ñ. with; odd = signs"),
                             1.75,
                             true,
                             false,
                             rig,
                             {},
                             {}};
    QVERIFY(kept == wanted);
}

void TstPreferences::nonsenseInTheFileKeepsTheDefaults()
{
    const TempFolder folder;
    spill(folder.path() / "p.ini",
          "[General]\nunits=furlongs\ntheme=beige\ntext_scale=900\ngloves=perhaps\n");
    const Preferences read = readPreferences(QString::fromStdString(folder.file("p.ini")));
    QCOMPARE(read.units, UnitSystem::Si);
    QCOMPARE(read.theme, QStringLiteral("day"));
    QCOMPARE(read.textScale, 2.0);
    QVERIFY(readPreferences(QString::fromStdString(folder.file("absent.ini"))) == Preferences());
}

QTEST_MAIN(TstPreferences)
#include "tst_preferences.moc"

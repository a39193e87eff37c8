// SPDX-License-Identifier: Apache-2.0
// What a line tells before it is marked, and how a reading is understood in the language of the person.
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

int goToLine(WalkModel &walk, const std::string &slug)
{
    for (int row = 0; row < walk.count(); ++row) {
        if (walk.walk()->tape[static_cast<std::size_t>(row)].slug == slug) {
            walk.goTo(row);
            return row;
        }
    }
    return -1;
}

QString part(const QVariantMap &map, const char *key) { return map.value(QLatin1String(key)).toString(); }
QString slugAt(const QVariantList &list, int i) { return part(list.at(i).toMap(), "slug"); }

} // namespace

class TstLine : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void lastTimeIsToldAndNeverCopied();
    void theWalkAtHandIsNotLastTime();
    void usualReasonsBeginWithWhatWasSaidHere();
    void aReadingIsUnderstoodInTheLanguage_data();
    void aReadingIsUnderstoodInTheLanguage();
    void aReadingThatCanBeReadTwoWaysIsAsked();
    void aBareFigureIsTakenInTheUnitShown();
};

void TstLine::lastTimeIsToldAndNeverCopied()
{
    AppFixture app;
    Session &session = app.open();
    session.setPerson(QStringLiteral("A."));
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    const int line = goToLine(walk, "tire-pressure");
    QVERIFY(walk.lastTime().isEmpty());
    const QString slug = part(walk.readings().first().toMap(), "slug");
    walk.setReading(slug, QStringLiteral("wheel 1L"), QStringLiteral("60 psi"));
    walk.pass(QStringLiteral("measured"));
    app.settle();
    walk.finish();
    app.settle();

    app.start(QStringLiteral("full_round"));
    QCOMPARE(goToLine(walk, "tire-pressure"), line);
    const QVariantMap last = walk.lastTime();
    QCOMPARE(part(last, "mark"), QStringLiteral("pass"));
    const QString words = part(last, "words");
    for (const char *told : {"last: measured, pass, ", ", A.", "60"})
        QVERIFY2(words.contains(QLatin1String(told)), qPrintable(words));
    // shown, never copied: nothing is typed, and a pass keeps no reading
    for (const QVariant &typed : walk.readings().first().toMap().value(QStringLiteral("typed")).toMap())
        QCOMPARE(typed.toString(), QString());
    walk.pass(QStringLiteral("looked"));
    app.settle();
    QVERIFY(findMark(walk.marks(), "tire-pressure")->readings.empty());
}

void TstLine::theWalkAtHandIsNotLastTime()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    walk.pass(QStringLiteral("looked"));
    app.settle();
    app.session().refresh();
    app.settle();
    walk.goTo(0);
    QVERIFY(walk.lastTime().isEmpty());
}

void TstLine::usualReasonsBeginWithWhatWasSaidHere()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    QCOMPARE(slugAt(walk.usualReasons(), 0), QStringLiteral("risky_to_reach"));
    QCOMPARE(walk.usualReasons().size(), 4);
    walk.couldNotLook(QStringLiteral("no_tool"), {});
    app.settle();
    walk.finish();
    app.settle();
    app.start(QStringLiteral("full_round"));
    QCOMPARE(slugAt(walk.usualReasons(), 0), QStringLiteral("no_tool"));
    QCOMPARE(slugAt(walk.usualReasons(), 1), QStringLiteral("risky_to_reach"));
    walk.goTo(5);
    QCOMPARE(slugAt(walk.usualReasons(), 0), QStringLiteral("risky_to_reach"));
    QCOMPARE(slugAt(walk.usualReasons(), 1), QStringLiteral("no_tool"));
    for (const QVariant &reason : walk.usualReasons())
        QVERIFY(part(reason.toMap(), "slug") != QStringLiteral("other")); // it wants words
}

// Marks of each language as CLDR has them; tests/reference/numbers holds the reading against ICU.
void TstLine::aReadingIsUnderstoodInTheLanguage_data()
{
    QTest::addColumn<QString>("language");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<double>("kilopascals");
    QTest::newRow("en point") << "en"
                              << "3.215 bar" << 321.5;
    QTest::newRow("en thousands") << "en"
                                  << "1,060 kPa" << 1060.0;
    QTest::newRow("es comma") << "es"
                              << "3,215 bar" << 321.5;
    QTest::newRow("es point of another keyboard") << "es"
                                                  << "4.5 bar" << 450.0;
    QTest::newRow("es both") << "es"
                             << "1.060,5 kPa" << 1060.5;
}

void TstLine::aReadingIsUnderstoodInTheLanguage()
{
    QFETCH(QString, language);
    QFETCH(QString, typed);
    QFETCH(double, kilopascals);
    AppFixture app;
    app.parts.preferences.language = language;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    goToLine(walk, "tire-pressure");
    const QString slug = part(walk.readings().first().toMap(), "slug");
    walk.setReading(slug, QStringLiteral("wheel 1L"), typed);
    walk.pass(QStringLiteral("measured"));
    app.settle();
    const Mark *mark = findMark(walk.marks(), "tire-pressure");
    QVERIFY(mark != nullptr);
    QCOMPARE(mark->readings.size(), std::size_t{1});
    QVERIFY(std::abs(mark->readings.front().si - kilopascals * 1000.0) < 0.5);
}

void TstLine::aReadingThatCanBeReadTwoWaysIsAsked()
{
    AppFixture app;
    app.parts.preferences.language = QStringLiteral("es");
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    goToLine(walk, "tire-pressure");
    const QString slug = part(walk.readings().first().toMap(), "slug");
    QSignalSpy checked(&walk, &WalkModel::readingChecked);
    walk.setReading(slug, QStringLiteral("wheel 1L"), QStringLiteral("1.060 kPa"));
    QCOMPARE(checked.first().at(2).toBool(), false);
    const QString message = checked.first().at(3).toString();
    QVERIFY2(message.contains(QStringLiteral("1060")) && message.contains(QStringLiteral("1,060")),
             qPrintable(message));
    walk.pass(QStringLiteral("looked"));
    app.settle();
    QVERIFY(findMark(walk.marks(), "tire-pressure")->readings.empty());
}

void TstLine::aBareFigureIsTakenInTheUnitShown()
{
    for (const UnitSystem units : {UnitSystem::Si, UnitSystem::Us}) {
        AppFixture app;
        app.parts.preferences.units = units;
        app.open();
        app.start(QStringLiteral("full_round"));
        WalkModel &walk = app.walk();
        goToLine(walk, "tire-pressure");
        const QVariantMap field = walk.readings().first().toMap();
        const QString unit = part(field, "unit");
        QCOMPARE(unit, units == UnitSystem::Us ? QStringLiteral("psi") : QStringLiteral("kPa"));
        const QStringList choices = field.value(QStringLiteral("units")).toStringList();
        QCOMPARE(choices.first(), unit);
        QVERIFY(choices.contains(QStringLiteral("psi")) && choices.contains(QStringLiteral("kPa")));
        walk.setReading(part(field, "slug"), QStringLiteral("wheel 1L"), QStringLiteral("60"));
        walk.pass(QStringLiteral("measured"));
        app.settle();
        const double si = findMark(walk.marks(), "tire-pressure")->readings.front().si;
        // NIST SP 811 appendix B.8: 1 lbf/in2 = 6.894757 E+03 Pa
        QVERIFY(std::abs(si - 60.0 * (units == UnitSystem::Us ? 6894.757 : 1000.0)) < 0.5);
    }
}

QTEST_MAIN(TstLine)
#include "tst_line.moc"

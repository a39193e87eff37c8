// SPDX-License-Identifier: Apache-2.0
// Taps on the tape: none is lost, none blocks, each goes where the person stood.
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/query.hpp"

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

QString slugOf(const QVariant &point) { return point.toMap().value(QStringLiteral("slug")).toString(); }
QString stateOf(const QVariant &point) { return point.toMap().value(QStringLiteral("state")).toString(); }

} // namespace

class TstTaps : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void theCursorMovesAtOnceAndTheMarkWaitsForTheDisk();
    void everyTapOfAFastRowIsWritten();
    void laterKeepsALineForTheEnd();
    void aGroupedLineTakesOneMarkAPoint();
    void aReadingGoesWithItsMark();
    void aReadingNotUnderstoodIsNeverKept();
    void couldNotLookNeedsAReason();
    void anAttentionWithoutADefectIsRefusedAndStays();
    void cautionsComeOncePerStandAndAgainAfterARest();
};

void TstTaps::theCursorMovesAtOnceAndTheMarkWaitsForTheDisk()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    QSignalSpy marked(&walk, &WalkModel::marked);
    walk.pass(QStringLiteral("looked"));
    QCOMPARE(walk.current(), 1);
    QVERIFY(walk.isBusy());
    QCOMPARE(cell(*walk.tape(), 0, "state").toString(), QStringLiteral("not_looked"));
    QCOMPARE(cell(*walk.tape(), 0, "pending").toBool(), true);
    QVERIFY(marked.wait());
    QCOMPARE(cell(*walk.tape(), 0, "state").toString(), QStringLiteral("pass"));
    QCOMPARE(cell(*walk.tape(), 0, "pending").toBool(), false);
    QVERIFY(!walk.isBusy());
}

void TstTaps::everyTapOfAFastRowIsWritten()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    const int count = app.walk().count();
    QVERIFY(count > 50);
    for (int i = 0; i < count; ++i)
        app.walk().pass(QStringLiteral("glance"));
    app.settle();
    QCOMPARE(tapeStates(app.walk()), QStringList(count, QStringLiteral("pass")));
    QVERIFY(app.walk().isComplete());
    const Id id = app.walk().walk()->id;
    app.close();
    QCOMPARE(static_cast<int>(marksOf(app.book(), id)->size()), count);
}

void TstTaps::laterKeepsALineForTheEnd()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("before_road"));
    WalkModel &walk = app.walk();
    walk.later();
    QCOMPARE(walk.current(), 1);
    while (walk.linesLeft() > 1) {
        walk.pass(QStringLiteral("looked"));
        app.settle();
    }
    QCOMPARE(walk.current(), 0);
    QCOMPARE(cell(*walk.tape(), 0, "state").toString(), QStringLiteral("not_looked"));
}

void TstTaps::aGroupedLineTakesOneMarkAPoint()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("before_road"));
    WalkModel &walk = app.walk();
    const int line = goToLine(walk, "wheels");
    QVERIFY(walk.points().size() > 2);
    QCOMPARE(walk.selectedPoint(), QString());

    const QString first = slugOf(walk.points().first());
    walk.selectPoint(first);
    QCOMPARE(walk.selectedPoint(), first);
    walk.notFitted();
    QCOMPARE(walk.current(), line); // the rest of the line is still to do
    app.settle();
    QCOMPARE(stateOf(walk.points().first()), QStringLiteral("not_fitted"));
    QCOMPARE(stateOf(walk.points().last()), QStringLiteral("not_looked"));

    walk.pass(QStringLiteral("looked"));
    app.settle();
    QCOMPARE(cell(*walk.tape(), line, "state").toString(), QStringLiteral("pass"));
    walk.goTo(line);
    QCOMPARE(stateOf(walk.points().first()), QStringLiteral("not_fitted"));
    walk.undo();
    app.settle();
    QCOMPARE(stateOf(walk.points().first()), QStringLiteral("not_fitted"));
    QCOMPARE(stateOf(walk.points().last()), QStringLiteral("not_looked"));
}

void TstTaps::aReadingGoesWithItsMark()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    const int line = goToLine(walk, "tire-pressure");
    QVERIFY(line >= 0);
    const QVariantMap field = walk.readings().first().toMap();
    const QString slug = field.value(QStringLiteral("slug")).toString();
    QCOMPARE(field.value(QStringLiteral("places")).toStringList().size(), 4);
    QSignalSpy checked(&walk, &WalkModel::readingChecked);
    walk.setReading(slug, QStringLiteral("wheel 2R"), QStringLiteral("20 psi"));
    QCOMPARE(checked.size(), 1);
    QCOMPARE(checked.first().at(2).toBool(), true);
    QVERIFY(
        checked.first().at(3).toString().contains(QStringLiteral("outside"))); // under the tandem's placard
    walk.pass(QStringLiteral("measured"));
    app.settle();
    const Mark *mark = findMark(walk.marks(), "tire-pressure");
    QVERIFY(mark != nullptr);
    QCOMPARE(mark->readings.size(), std::size_t{1});
    // NIST SP 811 appendix B.8: 1 lbf/in2 = 6.894757 E+03 Pa
    QVERIFY(std::abs(mark->readings.front().si - 20.0 * 6894.757) < 0.1);
    QCOMPARE(mark->readings.front().place, std::string("wheel 2R"));
    QCOMPARE(mark->how, LookedHow::Measured);
}

void TstTaps::aReadingNotUnderstoodIsNeverKept()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    goToLine(walk, "tire-pressure");
    const QString slug = walk.readings().first().toMap().value(QStringLiteral("slug")).toString();
    QSignalSpy checked(&walk, &WalkModel::readingChecked);
    walk.setReading(slug, QStringLiteral("wheel 1L"), QStringLiteral("firm"));
    QCOMPARE(checked.first().at(2).toBool(), false);
    QVERIFY(!checked.first().at(3).toString().isEmpty());
    walk.pass(QStringLiteral("looked"));
    app.settle();
    QVERIFY(findMark(walk.marks(), "tire-pressure")->readings.empty());
}

void TstTaps::couldNotLookNeedsAReason()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    QSignalSpy refused(&app.walk(), &WalkModel::refused);
    app.walk().couldNotLook({}, {});
    QVERIFY(refused.wait());
    QCOMPARE(app.walk().current(), 0);
    QVERIFY(!app.session().errorWhat().isEmpty());
    QVERIFY(!app.session().errorDo().isEmpty());
    app.session().clearError();
    app.walk().couldNotLook(QStringLiteral("wet_or_icy"), QStringLiteral("dew"));
    app.settle();
    QCOMPARE(cell(*app.walk().tape(), 0, "state").toString(), QStringLiteral("could_not_look"));
    QVERIFY(cell(*app.walk().tape(), 0, "summary").toString().contains(QStringLiteral("dew")));
    QVERIFY(app.session().errorWhat().isEmpty());
}

void TstTaps::anAttentionWithoutADefectIsRefusedAndStays()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    QSignalSpy refused(&app.walk(), &WalkModel::refused);
    app.walk().attention({{QStringLiteral("grade"), 3}});
    QVERIFY(refused.wait());
    QCOMPARE(refused.first().first().toInt(), 0);
    QCOMPARE(app.walk().current(), 0);
    QCOMPARE(cell(*app.walk().tape(), 0, "state").toString(), QStringLiteral("not_looked"));
    QCOMPARE(app.session().errorDo(), QStringLiteral("Choose what it looks like."));
}

void TstTaps::cautionsComeOncePerStandAndAgainAfterARest()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    while (walk.cautions().isEmpty())
        walk.goTo(walk.current() + 1);
    QCOMPARE(walk.cautionPanel().size(), walk.cautions().size());
    walk.cautionsRead();
    QVERIFY(walk.cautionPanel().isEmpty());
    QVERIFY(!walk.cautions().isEmpty()); // the short line stays

    walk.stop();
    QVERIFY(!walk.isActive());
    walk.goOn();
    QVERIFY(!walk.cautionPanel().isEmpty());
    walk.cautionsRead();
    app.clock().advance(std::chrono::hours(24));
    QVERIFY(!walk.cautionPanel().isEmpty());
    walk.cautionsRead();
    app.session().setPerson(QStringLiteral("B"));
    QVERIFY(!walk.cautionPanel().isEmpty());
}

QTEST_MAIN(TstTaps)
#include "tst_taps.moc"

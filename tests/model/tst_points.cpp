// SPDX-License-Identifier: Apache-2.0
// The owner's own choices and time budgets, as pages and walks show them.
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

int rowOf(const PointsModel &points, const char *slug)
{
    const PointRowModel &rows = *const_cast<PointsModel &>(points).rows();
    for (int row = 0; row < rows.rowCount(); ++row) {
        if (cell(rows, row, "point").toString() == QLatin1String(slug))
            return row;
    }
    return -1;
}

bool isOnTape(WalkModel &walk, const QString &title)
{
    for (int row = 0; row < walk.tape()->rowCount(); ++row) {
        if (cell(*walk.tape(), row, "title").toString() == title)
            return true;
    }
    return false;
}

QVariantMap kindOf(const RigModel &rig, const char *slug)
{
    for (const QVariant &entry : rig.kinds()) {
        if (entry.toMap().value(QStringLiteral("slug")).toString() == QLatin1String(slug))
            return entry.toMap();
    }
    return {};
}

int number(const QVariantMap &map, const char *key) { return map.value(QLatin1String(key)).toInt(); }

} // namespace

class TstPoints : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aHiddenRoadPointStaysInSight();
    void anIntervalOfOnesOwnGoesAndComesBack();
    void lengtheningARoadPointIsRefused();
    void aPointOfOnesOwnIsWalked();
    void aBudgetTellsWhatItLeavesOut();
};

void TstPoints::aHiddenRoadPointStaysInSight()
{
    AppFixture app;
    app.open();
    PointsModel &points = *app.session().points();
    points.filter({});
    const int all = points.rows()->rowCount();
    QVERIFY(rowOf(points, "tire-pressure") >= 0);
    points.hide(QStringLiteral("tire-pressure"));
    QTRY_COMPARE(app.session().rig()->hiddenPoints().size(), 1);
    QVERIFY(app.session().rig()->hiddenPoints().first().contains(QStringLiteral("A")));
    QCOMPARE(points.rows()->rowCount(), all);
    QVERIFY(cell(*points.rows(), rowOf(points, "tire-pressure"), "isHidden").toBool());
    app.start(QStringLiteral("full_round"));
    const QString title = cell(*points.rows(), rowOf(points, "tire-pressure"), "title").toString();
    QVERIFY(!isOnTape(app.walk(), title));
    points.showAgain(QStringLiteral("tire-pressure"));
    QTRY_COMPARE(app.session().rig()->hiddenPoints().size(), 0);
}

void TstPoints::anIntervalOfOnesOwnGoesAndComesBack()
{
    AppFixture app;
    app.open();
    PointsModel &points = *app.session().points();
    points.filter({});
    const QString before = cell(*points.rows(), rowOf(points, "front-cap-seam"), "every").toString();
    points.setEvery(QStringLiteral("front-cap-seam"), QStringLiteral("1"), {});
    QTRY_VERIFY(cell(*points.rows(), rowOf(points, "front-cap-seam"), "hasOwnInterval").toBool());
    QVERIFY(cell(*points.rows(), rowOf(points, "front-cap-seam"), "every").toString() != before);
    QVERIFY(cell(*points.rows(), rowOf(points, "front-cap-seam"), "note").toString().contains(before));
    points.clearEvery(QStringLiteral("front-cap-seam"));
    QTRY_VERIFY(!cell(*points.rows(), rowOf(points, "front-cap-seam"), "hasOwnInterval").toBool());
    QCOMPARE(cell(*points.rows(), rowOf(points, "front-cap-seam"), "every").toString(), before);
}

void TstPoints::lengtheningARoadPointIsRefused()
{
    AppFixture app;
    app.open();
    PointsModel &points = *app.session().points();
    points.filter({});
    for (const char *months : {"1200", "soon"}) {
        points.setEvery(QStringLiteral("tread-depth"), QLatin1String(months), {});
        QTRY_VERIFY(!app.session().errorWhat().isEmpty());
        app.session().clearError();
        app.settle();
        QVERIFY(!cell(*points.rows(), rowOf(points, "tread-depth"), "hasOwnInterval").toBool());
    }
}

void TstPoints::aPointOfOnesOwnIsWalked()
{
    AppFixture app;
    app.open();
    PointsModel &points = *app.session().points();
    QSignalSpy added(&points, &PointsModel::added);
    points.add({{QStringLiteral("title"), QStringLiteral("Aerial mast")},
                {QStringLiteral("stand"), QStringLiteral("nose")},
                {QStringLiteral("zone"), points.zones().first().toMap().value(QStringLiteral("slug"))},
                {QStringLiteral("consequence"), QStringLiteral("C")},
                {QStringLiteral("months"), QStringLiteral("12")}});
    QVERIFY(added.wait());
    app.settle();
    points.filter(QStringLiteral("aerial MAST"));
    QCOMPARE(points.rows()->rowCount(), 1);
    QVERIFY(cell(*points.rows(), 0, "isOwn").toBool());
    app.start(QStringLiteral("full_round"));
    QVERIFY(isOnTape(app.walk(), QStringLiteral("Aerial mast")));
}

void TstPoints::aBudgetTellsWhatItLeavesOut()
{
    AppFixture app;
    app.open();
    RigModel &rig = *app.session().rig();
    const int whole = number(kindOf(rig, "full_round"), "lines");
    int before = 0;
    for (const int minutes : {10, 25, 60}) {
        rig.setBudget(minutes);
        app.settle();
        const QVariantMap round = kindOf(rig, "full_round");
        QVERIFY(number(round, "lines") > before && number(round, "lines") < whole); // more time, more lines
        QVERIFY(number(round, "minutes") <= minutes);
        QVERIFY(!round.value(QStringLiteral("leftOut")).toString().isEmpty());
        before = number(round, "lines");
    }
    rig.setBudget(0);
    QCOMPARE(number(kindOf(rig, "full_round"), "lines"), whole);
    QVERIFY(kindOf(rig, "full_round").value(QStringLiteral("leftOut")).toString().isEmpty());

    rig.setBudget(25);
    app.settle();
    const int told = number(kindOf(rig, "full_round"), "lines");
    QSignalSpy started(&app.walk(), &WalkModel::started);
    app.walk().start(QStringLiteral("full_round"), 25);
    QVERIFY(started.wait());
    QCOMPARE(app.walk().count(), told);
}

QTEST_MAIN(TstPoints)
#include "tst_points.moc"

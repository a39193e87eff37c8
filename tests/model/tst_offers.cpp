// SPDX-License-Identifier: Apache-2.0
// A later mark on a point: what is open there comes first, each finding with its own answer.
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

using Map = QVariantMap;

void goTo(WalkModel &walk, const std::string &slug)
{
    for (int row = 0; row < walk.count(); ++row) {
        if (walk.walk()->tape[static_cast<std::size_t>(row)].slug == slug)
            walk.goTo(row);
    }
}

Map place(double x, double y)
{
    return {{QStringLiteral("face"), QStringLiteral("underside")},
            {QStringLiteral("x"), x},
            {QStringLiteral("y"), y},
            {QStringLiteral("z"), 0.55}};
}

Map fresh(int grade, const Map &where)
{
    return {{QStringLiteral("defect"), QStringLiteral("loose")},
            {QStringLiteral("grade"), grade},
            {QStringLiteral("place"), where}};
}

Map again(const QString &id, int grade)
{
    return {{QStringLiteral("same"), id}, {QStringLiteral("grade"), grade}};
}

Map gone(const QString &id) { return {{QStringLiteral("same"), id}, {QStringLiteral("gone"), true}}; }

void tell(AppFixture &app, const QVariantList &findings)
{
    goTo(app.walk(), "belly-pan-sheet");
    app.walk().attention({{QStringLiteral("findings"), findings}});
    app.settle();
}

QString idOf(const QVariant &offered) { return offered.toMap().value(QStringLiteral("id")).toString(); }

QString statusOf(AppFixture &app, const QString &id)
{
    return app.session().rig()->finding(id).value(QStringLiteral("status")).toString();
}

void finish(AppFixture &app)
{
    QSignalSpy finished(&app.walk(), &WalkModel::finished);
    app.walk().finish();
    QVERIFY(finished.wait());
    app.settle();
    app.clock().advance(std::chrono::hours(24 * 61));
}

} // namespace

class TstOffers : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void twoFindingsOfOnePointStayTwo();
    void whatIsOpenIsUntoldUntilThisWalkLooked();
    void allGoneIsAPass();
    void aMendedFindingAsksForItsPass();
};

void TstOffers::twoFindingsOfOnePointStayTwo()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    tell(app, {fresh(2, place(4.5, -0.6)), fresh(3, place(4.6, -0.6))});
    QCOMPARE(app.session().rig()->findingCount(), 2);
    finish(app);
    app.start(QStringLiteral("full_round"));
    goTo(app.walk(), "belly-pan-sheet");
    const QVariantList offered = app.walk().openFindings();
    QCOMPARE(offered.size(), 2);
    QVERIFY(offered[0]
                .toMap()
                .value(QStringLiteral("place"))
                .toString()
                .contains(QStringLiteral("from the front")));
    tell(app, {again(idOf(offered[0]), 4), gone(idOf(offered[1]))});
    QCOMPARE(statusOf(app, idOf(offered[0])), QStringLiteral("open"));
    QCOMPARE(statusOf(app, idOf(offered[1])), QStringLiteral("gone"));
    QCOMPARE(app.session().rig()->findingCount(), 1);
}

void TstOffers::whatIsOpenIsUntoldUntilThisWalkLooked()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    goTo(app.walk(), "belly-pan-sheet");
    QCOMPARE(app.walk().untold(), 0);
    tell(app, {fresh(2, place(4.5, -0.6))});
    goTo(app.walk(), "belly-pan-sheet");
    QCOMPARE(app.walk().untold(), 0); // found on this very walk
    finish(app);
    app.start(QStringLiteral("full_round"));
    goTo(app.walk(), "belly-pan-sheet");
    QCOMPARE(app.walk().untold(), 1);
    tell(app, {again(idOf(app.walk().openFindings()[0]), 2)});
    goTo(app.walk(), "belly-pan-sheet");
    QTRY_COMPARE(app.walk().untold(), 0);
}

void TstOffers::allGoneIsAPass()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    tell(app, {fresh(2, place(4.5, -0.6))});
    finish(app);
    app.start(QStringLiteral("full_round"));
    goTo(app.walk(), "belly-pan-sheet");
    const QString id = idOf(app.walk().openFindings()[0]);
    tell(app, {gone(id)});
    QVERIFY(app.session().errorWhat().isEmpty());
    QCOMPARE(findMark(app.walk().marks(), "belly-pan-sheet")->state, MarkState::Pass);
    QTRY_COMPARE(statusOf(app, id), QStringLiteral("gone"));
}

void TstOffers::aMendedFindingAsksForItsPass()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    tell(app, {fresh(3, place(4.5, -0.6))});
    const QString id = cell(*app.session().rig()->findings(), 0, "findingId").toString();
    finish(app);
    QSignalSpy mended(app.session().rig(), &RigModel::mended);
    app.session().rig()->mend({id}, {{QStringLiteral("action"), QStringLiteral("replace")},
                                     {QStringLiteral("what"), QStringLiteral("three rivets, large flange")}});
    QVERIFY(mended.wait());
    app.settle();
    app.clock().advance(std::chrono::hours(2));
    app.start(QStringLiteral("full_round"));
    goTo(app.walk(), "belly-pan-sheet");
    const Map offered = app.walk().openFindings()[0].toMap();
    QCOMPARE(offered.value(QStringLiteral("status")).toString(), QStringLiteral("mended"));
    QVERIFY(!offered.value(QStringLiteral("mended")).toString().isEmpty());
    QCOMPARE(app.walk().untold(), 0); // a pass is what it asks for
    app.walk().pass(QStringLiteral("looked"));
    app.settle();
    QTRY_COMPARE(statusOf(app, id), QStringLiteral("confirmed"));
}

QTEST_MAIN(TstOffers)
#include "tst_offers.moc"

// SPDX-License-Identifier: Apache-2.0
// The whole job at the level of models: walk, find, stop, go on, take back, finish, lay side by side.
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QVariantMap seamForm(int grade)
{
    return {{QStringLiteral("defect"), QStringLiteral("crack")},
            {QStringLiteral("grade"), grade},
            {QStringLiteral("place"), QVariantMap{{QStringLiteral("face"), QStringLiteral("front")},
                                                  {QStringLiteral("x"), 0.0},
                                                  {QStringLiteral("y"), 0.4},
                                                  {QStringLiteral("z"), 2.6}}},
            {QStringLiteral("extent"), QStringLiteral("90 mm")},
            {QStringLiteral("note"), QStringLiteral("near the marker lamp")},
            {QStringLiteral("photos"),
             QStringList{QUrl::fromLocalFile(photoFile("front-seam-2025-03.jpg")).toString()}}};
}

// Goes to the line of a point and gives its index.
int goToPoint(WalkModel &walk, const char *title)
{
    for (int row = 0; row < walk.tape()->rowCount(); ++row) {
        if (cell(*walk.tape(), row, "title").toString() == QLatin1String(title)) {
            walk.goTo(row);
            return row;
        }
    }
    return -1;
}

} // namespace

class TstJourney : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void anOpenWalkIsGoneOnWithAtItsFirstUnmarkedLine();
    void anAttentionKeepsFindingPlaceAndPhoto();
    void undoTakesBackTheLastTapAndGoesThere();
    void aFinishedWalkIsLeftAndComparedWithTheNext();
    void aMendClosesAFindingAndAPassConfirmsIt();
};

void TstJourney::anOpenWalkIsGoneOnWithAtItsFirstUnmarkedLine()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    QCOMPARE(app.walk().current(), 0);
    for (int i = 0; i < 3; ++i)
        app.walk().pass(QStringLiteral("looked"));
    app.close(); // taps that were not answered yet are written first

    WalkModel &walk = *app.open().walk();
    QVERIFY(walk.isActive());
    QCOMPARE(walk.kindName(), QStringLiteral("Full round"));
    QCOMPARE(walk.current(), 3);
    QCOMPARE(tapeStates(walk).count(QStringLiteral("pass")), 3);
    QCOMPARE(walk.linesLeft(), walk.count() - 3);
    QCOMPARE(app.session().rig()->walkOpen(), true);
}

void TstJourney::anAttentionKeepsFindingPlaceAndPhoto()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    const int line = goToPoint(app.walk(), "Front cap seam");
    QVERIFY(line >= 0);
    QSignalSpy marked(&app.walk(), &WalkModel::marked);
    app.walk().attention(seamForm(2));
    QVERIFY(marked.wait());
    QCOMPARE(marked.first(), (QVariantList{line, QStringLiteral("attention")}));
    app.settle();

    const FindingModel &findings = *app.session().rig()->findings();
    QCOMPARE(findings.rowCount(), 1);
    QCOMPARE(cell(findings, 0, "title").toString(), QStringLiteral("Front cap seam: cracked"));
    QCOMPARE(cell(findings, 0, "face").toString(), QStringLiteral("front"));
    QCOMPARE(cell(findings, 0, "y").toDouble(), 0.4);
    QCOMPARE(cell(findings, 0, "photoCount").toInt(), 1);
    app.walk().goTo(line);
    QCOMPARE(app.walk().openFindings().size(), 1);
    const QString hash = app.walk().openFindings().first().toMap().value(QStringLiteral("photo")).toString();

    // what was kept is the file itself: its name is the hash of its bytes (RFC 7693, BLAKE2b)
    app.close();
    const std::string bytes = slurp(photoFile("front-seam-2025-03.jpg").toStdString());
    QCOMPARE(hash.toStdString(), blake2b(bytes).text());
    const PhotoStore store(app.book().photoFolder());
    const auto original = store.original(blake2b(bytes));
    QVERIFY(original.has_value());
    QVERIFY(*original == bytes);
}

void TstJourney::undoTakesBackTheLastTapAndGoesThere()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    app.walk().pass(QStringLiteral("looked"));
    app.walk().pass(QStringLiteral("glance"));
    app.walk().undo(); // queued behind both
    app.settle();
    QCOMPARE(app.walk().current(), 1);
    QCOMPARE(tapeStates(app.walk()).mid(0, 2),
             (QStringList{QStringLiteral("pass"), QStringLiteral("not_looked")}));

    const int line = goToPoint(app.walk(), "Front cap seam");
    app.walk().attention(seamForm(3));
    app.settle();
    QCOMPARE(app.session().rig()->findingCount(), 1);
    app.walk().undo();
    app.settle();
    QTRY_COMPARE(app.session().rig()->findingCount(), 0);
    QCOMPARE(app.walk().current(), line);
}

void TstJourney::aFinishedWalkIsLeftAndComparedWithTheNext()
{
    AppFixture app;
    app.open();
    for (const int grade : {2, 4}) {
        app.start(QStringLiteral("full_round"));
        app.clock().advance(std::chrono::minutes(5));
        goToPoint(app.walk(), "Front cap seam");
        QVariantMap form = seamForm(grade);
        if (app.session().rig()->findingCount() > 0)
            form[QStringLiteral("same")] =
                app.walk().openFindings().first().toMap().value(QStringLiteral("id"));
        app.walk().attention(form);
        app.settle();
        QSignalSpy finished(&app.walk(), &WalkModel::finished);
        app.walk().finish();
        QVERIFY(finished.wait());
        app.settle();
        QVERIFY(!app.walk().isActive());
        QVERIFY(!app.session().rig()->walkOpen());
        app.clock().advance(std::chrono::hours(24 * 30));
    }
    BookModel &book = *app.session().book();
    QSignalSpy compared(&book, &BookModel::compared);
    book.compare({}, {});
    QVERIFY(compared.wait());
    QCOMPARE(book.comparison()->rowCount() > 0, true);
    QCOMPARE(cell(*book.comparison(), 0, "point").toString(), QStringLiteral("front-cap-seam"));
    QCOMPARE(cell(*book.comparison(), 0, "change").toString(), QStringLiteral("worse"));
    QCOMPARE(cell(*book.comparison(), 0, "thenPhotos").toStringList().size(), 1);
    QCOMPARE(book.walks()->rowCount(), 2);
}

void TstJourney::aMendClosesAFindingAndAPassConfirmsIt()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    goToPoint(app.walk(), "Front cap seam");
    app.walk().attention(seamForm(3));
    app.settle();
    RigModel &rig = *app.session().rig();
    const QString id = cell(*rig.findings(), 0, "findingId").toString();
    app.clock().advance(std::chrono::hours(2));
    QSignalSpy mended(&rig, &RigModel::mended);
    rig.mend({id}, {{QStringLiteral("action"), QStringLiteral("reseal")},
                    {QStringLiteral("what"), QStringLiteral("cut out and sealed")},
                    {QStringLiteral("parts"), QStringLiteral("lap sealant, primer")},
                    {QStringLiteral("cost"), QStringLiteral("NZ$ 38")}});
    QVERIFY(mended.wait());
    app.settle();
    QCOMPARE(rig.finding(id).value(QStringLiteral("status")).toString(), QStringLiteral("mended"));
    QCOMPARE(rig.finding(id).value(QStringLiteral("mends")).toList().size(), 1);

    app.clock().advance(std::chrono::hours(2));
    goToPoint(app.walk(), "Front cap seam");
    app.walk().pass(QStringLiteral("looked"));
    app.settle();
    QTRY_COMPARE(rig.finding(id).value(QStringLiteral("status")).toString(), QStringLiteral("confirmed"));
    QCOMPARE(rig.findingCount(), 0);
}

QTEST_MAIN(TstJourney)
#include "tst_journey.moc"

// SPDX-License-Identifier: Apache-2.0
// The pages of search and of taking back, over the demo's logbook.
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/query.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstSearch : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void wordsFindWhatWasFound();
    void wordsAreOfTheLanguageAtHand();
    void aCountIsTakenBack();
    void aCountIsReadByTheMarksOfTheLanguage();
    void aRigThatBeganStays();
};

void TstSearch::wordsFindWhatWasFound()
{
    AppFixture app(AppFixture::Book::Demo);
    SearchModel &search = *app.open().search();
    search.find(QStringLiteral("rivet"));
    QVERIFY(app.session().isBusy());
    app.settle();
    QVERIFY(!search.hits().isEmpty());
    QStringList kinds;
    for (const QVariant &hit : search.hits())
        kinds << hit.toMap().value(QStringLiteral("kind")).toString();
    QVERIFY(kinds.contains(QStringLiteral("finding")));
    search.find(QStringLiteral("zzz"));
    app.settle();
    QVERIFY(search.hits().isEmpty());
    search.find(QString());
    QVERIFY(search.hits().isEmpty() && !search.isBusy());
}

void TstSearch::wordsAreOfTheLanguageAtHand()
{
    AppFixture app;
    SearchModel &search = *app.open().search();
    for (const char *language : {"en", "es", "fr", "de"}) {
        app.session().setLanguage(QLatin1String(language));
        const QString title = Voice::text(app.parts.texts(language)->point("tread-depth").title);
        search.find(title);
        app.settle();
        QVERIFY(!search.hits().isEmpty());
        QCOMPARE(search.hits().first().toMap().value(QStringLiteral("id")).toString(),
                 QStringLiteral("tread-depth"));
        QCOMPARE(search.hits().first().toMap().value(QStringLiteral("title")).toString(), title);
    }
}

void TstSearch::aCountIsTakenBack()
{
    AppFixture app;
    LastActModel &last = *app.open().lastAct();
    app.session().supplies()->setOnHand(QStringLiteral("lap-sealant"), QStringLiteral("2"));
    app.settle();
    last.look();
    app.settle();
    QVERIFY2(last.what().contains(QStringLiteral("Supply on hand")), qPrintable(last.what()));
    last.takeBack();
    app.settle();
    QVERIFY2(!last.what().contains(QStringLiteral("Supply on hand")), qPrintable(last.what()));
    QCOMPARE(app.session().errorWhat(), QString());
    app.close();
    const auto all = allRigs(app.book());
    QVERIFY(stocksOf(app.book(), all->front().id)->empty());
}

void TstSearch::aCountIsReadByTheMarksOfTheLanguage()
{
    AppFixture app;
    app.open().setLanguage(QStringLiteral("de"));
    app.session().supplies()->setOnHand(QStringLiteral("lap-sealant"), QStringLiteral("2,5"));
    app.settle();
    QCOMPARE(app.session().errorWhat(), QString());
    app.session().supplies()->setOnHand(QStringLiteral("lap-sealant"), QStringLiteral("1.250")); // or 1,25
    app.settle();
    QVERIFY(!app.session().errorWhat().isEmpty());
    app.close();
    const auto stocks = stocksOf(app.book(), allRigs(app.book())->front().id);
    QCOMPARE(stocks->size(), std::size_t{1});
    const SupplyItem *item = app.parts.supplies->find("lap-sealant");
    QCOMPARE(stocks->front().si, *amountOf(*item, 2.5, ""));
}

void TstSearch::aRigThatBeganStays()
{
    AppFixture app;
    LastActModel &last = *app.open().lastAct();
    last.look();
    app.settle();
    QCOMPARE(last.what(), QString());
    last.takeBack();
    app.settle();
    QVERIFY(app.session().hasRig());
}

QTEST_GUILESS_MAIN(TstSearch)
#include "tst_search.moc"

// SPDX-License-Identifier: Apache-2.0
// One session: words follow the language at once, units follow the person, rigs can be changed.
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/acts.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstSession : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aFirstStartHasNoRigAndNoError();
    void wordsFollowTheLanguage();
    void unitsFollowThePerson();
    void theOtherRigIsShown();
    void thePersonSignsWhatIsWritten();
    void theLogbookIsNeverOpenedOnThisThread();
};

void TstSession::aFirstStartHasNoRigAndNoError()
{
    AppFixture app(AppFixture::Book::Empty);
    Session &session = app.open();
    QVERIFY(session.isLoaded());
    QVERIFY(!session.hasRig());
    QVERIFY(session.errorWhat().isEmpty());
    QVERIFY(!session.walk()->isActive());
    QCOMPARE(session.rig()->barTitle(), QStringLiteral("Start a walk"));
    for (const char *part : {"title", "gas", "co", "fire", "tingle"})
        QVERIFY(session.emergency().value(QLatin1String(part)).toString() != QLatin1String(part));
}

void TstSession::wordsFollowTheLanguage()
{
    AppFixture app;
    QStringList spoken;
    app.parts.speak = [&](const QString &language) { spoken << language; };
    Session &session = app.open();
    app.start(QStringLiteral("full_round"));
    const QString english = session.walk()->title();
    QSignalSpy changed(&session, &Session::languageChanged);
    session.setLanguage(QStringLiteral("es"));
    QCOMPARE(changed.size(), 1);
    QCOMPARE(spoken, (QStringList{QStringLiteral("en"), QStringLiteral("es")}));
    QVERIFY(session.walk()->title() != english);
    QCOMPARE(cell(*session.walk()->tape(), 0, "title").toString(), session.walk()->title());
    QCOMPARE(session.walk()->current(), 0);
    QVERIFY(session.walk()->isActive());
}

void TstSession::unitsFollowThePerson()
{
    AppFixture app;
    Session &session = app.open();
    QVERIFY(session.rig()->about().contains(QStringLiteral("kg")));
    session.setUnits(QStringLiteral("us"));
    QVERIFY(session.rig()->about().contains(QStringLiteral("lb")));
    QVERIFY(!session.rig()->about().contains(QStringLiteral("kg")));
}

void TstSession::theOtherRigIsShown()
{
    AppFixture app;
    Rig other = southernTwinAxle();
    other.name = "Another";
    QVERIFY(saveRig(app.book(), other, {}).has_value());
    app.closeBook();
    Session &session = app.open();
    QCOMPARE(session.rigs().size(), 2);
    for (const QVariant &entry : session.rigs()) {
        if (entry.toMap().value(QStringLiteral("name")).toString() == QStringLiteral("Another"))
            session.chooseRig(entry.toMap().value(QStringLiteral("id")).toString());
    }
    app.settle();
    QCOMPARE(session.rig()->name(), QStringLiteral("Another"));
    QVERIFY(session.rig()->kerbLeft());
}

void TstSession::thePersonSignsWhatIsWritten()
{
    AppFixture app;
    Session &session = app.open();
    session.setPerson(QStringLiteral("  B.  "));
    app.start(QStringLiteral("full_round"));
    session.walk()->pass(QStringLiteral("looked"));
    app.settle();
    QCOMPARE(session.walk()->marks().front().by, std::string("B."));
    QVERIFY(session.footer().contains(QStringLiteral("B.")));
    QVERIFY(!session.footer().contains(QStringLiteral("{who}")));
}

void TstSession::theLogbookIsNeverOpenedOnThisThread()
{
    AppFixture app;
    std::atomic<QThread *> opener = nullptr;
    app.parts.openBook = [open = app.parts.openBook, &opener] {
        opener = QThread::currentThread();
        return open();
    };
    app.open();
    QVERIFY(opener.load() != nullptr);
    QVERIFY(opener.load() != QThread::currentThread());
}

QTEST_MAIN(TstSession)
#include "tst_session.moc"

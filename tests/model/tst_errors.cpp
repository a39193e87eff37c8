// SPDX-License-Identifier: Apache-2.0
// Whatever the world refuses, the person reads what it was and what to do.
#include <QtTest>

#include "app_fixture.hpp"
#include "error_text.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstErrors : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void everyCodeSaysWhatToDo();
    void aPlaceThatIsNoFolder();
    void aFileThatIsNoLogbook();
    void aPhotoThatIsNonePassesTheMark();
    void aMendOfNothing();
};

void TstErrors::everyCodeSaysWhatToDo()
{
    QSet<QString> told;
    for (const Errc code : {Errc::Usage, Errc::InvalidInput, Errc::OutOfRange, Errc::Unsupported,
                            Errc::NotFound, Errc::Conflict, Errc::Io, Errc::Corrupt, Errc::Network}) {
        const ErrorText text = errorText({code, "what", "the-place", "act"});
        QVERIFY(text.what.contains(QStringLiteral("the-place")));
        QVERIFY(!text.act.isEmpty());
        told.insert(text.what);
    }
    QCOMPARE(told.size(), 8); // usage and invalid input read alike
}

void TstErrors::aPlaceThatIsNoFolder()
{
    AppFixture app(AppFixture::Book::Empty);
    spill(app.folder().path() / "plain", "a file, not a folder");
    const std::string file = app.folder().file("plain") + "/book.snugwalk";
    app.parts.openBook = [file, clock = app.parts.clock] {
        static CountingIds ids("errors");
        return Logbook::open(file,
                             {DeviceKey::fromSeed(blake2b("errors").view()), "test", clock, &ids, true});
    };
    Session &session = app.open();
    QVERIFY(session.isLoaded());
    QVERIFY(!session.hasRig());
    QVERIFY(!session.errorWhat().isEmpty());
    QVERIFY(!session.errorDo().isEmpty());
    // nothing that is tapped now brings the program down
    session.walk()->start(QStringLiteral("full_round"));
    session.walk()->pass(QStringLiteral("looked"));
    session.rig()->mend({QStringLiteral("00")}, {});
    session.book()->compare({}, {});
    app.settle();
    session.clearError();
    QVERIFY(session.errorWhat().isEmpty());
}

void TstErrors::aFileThatIsNoLogbook()
{
    AppFixture app(AppFixture::Book::Empty);
    spill(app.file(), std::string(8192, 'x'));
    Session &session = app.open();
    QVERIFY(session.errorWhat().startsWith(QStringLiteral("Damaged")) ||
            session.errorWhat().startsWith(QStringLiteral("This version")));
    QVERIFY(!session.errorDo().isEmpty());
}

void TstErrors::aPhotoThatIsNonePassesTheMark()
{
    AppFixture app;
    app.open();
    app.start(QStringLiteral("full_round"));
    spill(app.folder().path() / "note.jpg", "no picture at all");
    const QString defect = app.walk().defects().first().toMap().value(QStringLiteral("slug")).toString();
    app.walk().attention(
        {{QStringLiteral("defect"), defect},
         {QStringLiteral("grade"), 2},
         {QStringLiteral("photos"), QStringList{QString::fromStdString(app.folder().file("note.jpg"))}}});
    app.settle();
    QCOMPARE(cell(*app.walk().tape(), 0, "state").toString(), QStringLiteral("attention"));
    QVERIFY(!app.session().errorWhat().isEmpty());
    QCOMPARE(cell(*app.session().rig()->findings(), 0, "photoCount").toInt(), 0);
}

void TstErrors::aMendOfNothing()
{
    AppFixture app;
    Session &session = app.open();
    QSignalSpy told(&session, &Session::errorChanged);
    session.rig()->mend({}, {{QStringLiteral("action"), QStringLiteral("clean")}});
    QVERIFY(told.wait());
    QVERIFY(!session.errorWhat().isEmpty());
}

QTEST_MAIN(TstErrors)
#include "tst_errors.moc"

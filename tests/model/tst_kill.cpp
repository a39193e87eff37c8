// SPDX-License-Identifier: Apache-2.0
// A process that dies on a walk loses nothing that was shown as marked.
#include <csignal>

#include <QProcess>
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// The child opens this file's logbook with a key of its own, as a phone would.
AppParts partsOver(AppFixture &app, const std::string &file, CountingIds &ids)
{
    AppParts parts = app.parts;
    parts.openBook = [file, clock = app.parts.clock, &ids] {
        return Logbook::open(file,
                             {DeviceKey::fromSeed(blake2b("tst_kill").view()), "child", clock, &ids, true});
    };
    return parts;
}

// Marks three lines, taps a fourth, and is killed before anyone answers.
int walkAndDie(const std::string &file)
{
    AppFixture app(AppFixture::Book::Empty);
    CountingIds ids("child");
    app.parts = partsOver(app, file, ids);
    app.open();
    app.start(QStringLiteral("full_round"));
    QSignalSpy marked(app.session().walk(), &WalkModel::marked);
    for (int i = 0; i < 3; ++i)
        app.walk().pass(QStringLiteral("looked"));
    if (!QTest::qWaitFor([&] { return marked.size() == 3; }))
        return 1;
    app.walk().pass(QStringLiteral("looked"));
    return std::raise(SIGKILL);
}

} // namespace

class TstKill : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void everyLineShownAsMarkedIsThereAfterwards();
};

void TstKill::everyLineShownAsMarkedIsThereAfterwards()
{
    AppFixture app;
    QProcess child;
    child.start(QCoreApplication::applicationFilePath(),
                {QStringLiteral("--walk-and-die"), QString::fromStdString(app.file())});
    QVERIFY(child.waitForFinished());
    QCOMPARE(child.exitStatus(), QProcess::CrashExit);

    WalkModel &walk = *app.open().walk();
    QVERIFY(walk.isActive());
    const QStringList states = tapeStates(walk);
    QCOMPARE(states.mid(0, 3), QStringList(3, QStringLiteral("pass")));
    // the fourth may have reached the disk or not, but never half
    QVERIFY(walk.current() == 3 || walk.current() == 4);
    QCOMPARE(states.count(QStringLiteral("pass")), walk.current());
}

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == QStringLiteral("--walk-and-die"))
        return walkAndDie(arguments[2].toStdString());
    TstKill test;
    return QTest::qExec(&test, arguments);
}
#include "tst_kill.moc"

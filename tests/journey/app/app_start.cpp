// SPDX-License-Identifier: Apache-2.0
// From no file at all to the first line of a first walk, by taps in the real app.
#include <cstdio>
#include <exception>

#include <QFile>
#include <QGuiApplication>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>

#include "app_steps.hpp"
#include "settled.hpp"

using namespace snugwalk;
using namespace snugwalk::journey;

namespace {

void settle(Wiring &app)
{
    expect(waitUntilSettled(app.session(), app.window()), QStringLiteral("the app does not settle"));
}

void waitForDemo(Wiring &app, bool wanted)
{
    Finger clock(app.window());
    clock.waitFor([&] { return app.session().books()->isDemo() == wanted; },
                  QStringLiteral("the other logbook"));
    settle(app);
}

// The invented rig and back: the window is made anew each time, and so is the finger.
void lookRound(Wiring &app, const QString &shots)
{
    Finger(app.window()).tapStarting(QStringLiteral("Look round an invented rig first"));
    expect(QTest::qWaitFor([&] { return app.session().books()->isDemo(); }, 120000),
           QStringLiteral("the invented rig never came"));
    settle(app);
    expect(app.session().hasRig(), QStringLiteral("the invented rig is empty"));
    grab(app, shots, QStringLiteral("start-2-invented"));
    Finger(app.window()).tap(QStringLiteral("remove the invented rig"));
    waitForDemo(app, false);
    expect(!app.session().hasRig(), QStringLiteral("the invented rig got into one's own logbook"));
}

int describe(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    int taps = 0;
    const auto tap = [&](const QString &start) {
        finger.tapStarting(start);
        ++taps;
    };
    tap(QStringLiteral("Where is it at home? Lamps, plugs and gas follow that.: North America"));
    tap(QStringLiteral("travel trailer"));
    finger.type(QStringLiteral("Your name, written beside each mark; may stay empty"), QStringLiteral("Mar"));
    ++taps;
    tap(QStringLiteral("Next: how big"));
    finger.type(QStringLiteral("Name"), QStringLiteral("Kea"));
    ++taps;
    finger.type(QStringLiteral("Length of the body, without the drawbar"), QStringLiteral("21"));
    ++taps;
    settle(app);
    grab(app, shots, QStringLiteral("start-3-measures"));
    tap(QStringLiteral("Draw it"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("rig") && app.session().hasRig(); },
                   QStringLiteral("the rig"));
    settle(app);
    grab(app, shots, QStringLiteral("start-4-rig"));
    tap(QStringLiteral("Start a walk"));
    settle(app);
    grab(app, shots, QStringLiteral("start-5-kinds"));
    tap(QStringLiteral("First look."));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("walk"); }, QStringLiteral("the first walk"));
    settle(app);
    grab(app, shots, QStringLiteral("start-6-walk"));
    const WalkModel &walk = *app.session().walk();
    expect(walk.count() > 4 && walk.count() < 40,
           QStringLiteral("a first walk of %1 lines").arg(walk.count()));
    expect(app.session().person() == QStringLiteral("Mar"), QStringLiteral("nobody asked who looks"));
    return taps;
}

void putRight(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    app.window().setProperty("currentPlace", QStringLiteral("rig"));
    settle(app);
    finger.tap(QStringLiteral("its measures and plates"));
    settle(app);
    grab(app, shots, QStringLiteral("start-7-sheet"));
    const QString length = QStringLiteral("Length of the body, without the drawbar");
    finger.type(length, {});
    QTest::keyClick(&app.window(), Qt::Key_A, Qt::ControlModifier);
    finger.type(length, QStringLiteral("20 ft"));
    finger.tap(QStringLiteral("Write it down"));
    finger.waitFor([&] { return std::abs(app.session().rig()->bodyLength() - 20 * 0.3048) < 1e-9; },
                   QStringLiteral("the length put right"));
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QStringList arguments = QGuiApplication::arguments();
    expect(arguments.size() == 3, QStringLiteral("usage: app_start BOOK SHOTS"));
    Options options;
    options.book = arguments[1];
    options.language = QStringLiteral("en");
    options.now = parseLocal("2026-11-24T08:10:00+13:00");
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    expect(wiring.has_value(), QStringLiteral("the app does not open"));
    settle(**wiring);
    expect(!QFile::exists(options.book), QStringLiteral("a file is made before there is a rig"));
    grab(**wiring, arguments[2], QStringLiteral("start-1-empty"));
    lookRound(**wiring, arguments[2]);
    expect(!QFile::exists(options.book), QStringLiteral("looking round made one's own logbook"));
    const int taps = describe(**wiring, arguments[2]);
    say(QStringLiteral("taps %1").arg(taps));
    putRight(**wiring, arguments[2]);
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception &fault) {
        std::printf("failed: %s\n", fault.what());
        return 70;
    }
}

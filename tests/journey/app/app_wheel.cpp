// SPDX-License-Identifier: Apache-2.0
// A wheel fitted beside the road, by taps in the real app: written down at the bench, its nuts due after
// the first miles that are logged, and again, until the look after the last rung is done.
#include <cstdio>
#include <exception>

#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>
#include <QUrl>

#include "app_steps.hpp"
#include "due_model.hpp"
#include "settled.hpp"

using namespace snugwalk;
using namespace snugwalk::journey;

namespace {

const QString nuts = QStringLiteral("Wheel nut torque");

QString whenDue(Wiring &app)
{
    QAbstractItemModel &rows = *app.session().due()->rows();
    for (int row = 0; row < rows.rowCount(); ++row) {
        if (cell(rows, row, "title").toString() == nuts && cell(rows, row, "kind") == QStringLiteral("event"))
            return cell(rows, row, "when").toString();
    }
    return {};
}

bool isDueNow(Wiring &app)
{
    const QString when = whenDue(app);
    return when.startsWith(QStringLiteral("due now")) || when.startsWith(QStringLiteral("past due"));
}

void fit(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    expect(whenDue(app).isEmpty(), QStringLiteral("the nuts wait for a wheel that nobody fitted"));
    finger.tap(QStringLiteral("Bench"));
    finger.tapStarting(QStringLiteral("to the questions on Wheel"));
    finger.tapStarting(QStringLiteral("Star"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("bench_question"); },
                   QStringLiteral("the star"));
    finger.tapStarting(QStringLiteral("Tightened: the next"));
    grab(app, shots, QStringLiteral("wheel-1-star"));
    finger.tap(QStringLiteral("Which wheel: wheel 2R"));
    finger.tapStarting(QStringLiteral("Write down the fitting"));
    finger.waitFor([&] { return !whenDue(app).isEmpty(); }, QStringLiteral("nuts in the due list"));
    expect(!isDueNow(app), QStringLiteral("the nuts are due before a mile was driven"));
    // the page grows by what is said of the nuts: a finger waits until it stands still
    expect(waitUntilSettled(app.session(), app.window()), QStringLiteral("the page never stood still"));
    finger.tapStarting(nuts);
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("why"); }, QStringLiteral("why they are due"));
    grab(app, shots, QStringLiteral("wheel-2-due-later"));
}

void logTrip(Wiring &app, Finger &finger, const QString &track)
{
    finger.tap(QStringLiteral("Logbook"));
    finger.tap(QStringLiteral("trips"));
    finger.tapStarting(QStringLiteral("Take a file in"));
    finger.waitFor([&] { return finger.itemOfType(QStringLiteral("ImportPage")) != nullptr; },
                   QStringLiteral("the page for files"));
    QQuickItem *page = finger.itemOfType(QStringLiteral("ImportPage"));
    const QString file = QUrl::fromLocalFile(track).toString();
    // what the file dialog hands over
    expect(QMetaObject::invokeMethod(page, "begin", Q_ARG(QString, file)), QStringLiteral("the file"));
    finger.waitFor([&] { return !app.session().intake()->outcome().isEmpty(); }, QStringLiteral("the trip"));
    finger.tap(QStringLiteral("back"));
}

void passNuts(Wiring &app, Finger &finger)
{
    WalkModel &walk = *app.session().walk();
    finger.tap(QStringLiteral("Start a walk"));
    finger.tapStarting(QStringLiteral("Before the road."));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("walk"); }, QStringLiteral("the walk"));
    goToLine(finger, walk, nuts);
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { marked = true; });
    finger.tap(QStringLiteral("Pass"));
    finger.waitFor([&] { return marked; }, QStringLiteral("the pass on the disk"));
    QObject::disconnect(heard);
    finger.tap(QStringLiteral("stop here"));
    finger.tap(QStringLiteral("Finish the walk"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("rig"); },
                   QStringLiteral("home after the walk"));
}

void drive(Wiring &app, const QString &track, const QString &shots, const QString &name)
{
    Finger finger(app.window());
    expect(!whenDue(app).isEmpty() && !isDueNow(app), QStringLiteral("due before this drive"));
    logTrip(app, finger, track);
    finger.waitFor([&] { return isDueNow(app); }, QStringLiteral("nuts due by the miles driven"));
    finger.tap(QStringLiteral("Due"));
    grab(app, shots, name);
    finger.tap(QStringLiteral("Rig"));
    passNuts(app, finger);
    finger.waitFor([&] { return !isDueNow(app); }, QStringLiteral("nuts done for this rung"));
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QStringList arguments = QGuiApplication::arguments();
    expect(arguments.size() == 6, QStringLiteral("usage: app_wheel fit|drive-NAME BOOK TRACK SHOTS TIME"));
    Options options;
    options.book = arguments[2];
    options.language = QStringLiteral("en");
    options.now = parseLocal(arguments[5].toStdString());
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    expect(wiring.has_value(), QStringLiteral("the app does not open"));
    expect(waitUntilSettled((*wiring)->session(), (*wiring)->window()),
           QStringLiteral("the app does not settle"));
    if (arguments[1] == QStringLiteral("fit"))
        fit(**wiring, arguments[4]);
    else
        drive(**wiring, arguments[3], arguments[4], QStringLiteral("wheel-3-") + arguments[1]);
    say(QStringLiteral("done"));
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

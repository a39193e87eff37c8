// SPDX-License-Identifier: Apache-2.0
// One rivet from its first look to its confirmed mend, by taps in the real app: found on the underside
// with a photo and a circle on it, offered two months later, worse, mended, passed.
#include <cstdio>
#include <exception>

#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>

#include "app_steps.hpp"
#include "settled.hpp"

using namespace snugwalk;
using namespace snugwalk::journey;

namespace {

const QString rivetLine = QStringLiteral("Belly pan sheet");

// Starts a full round and goes to the belly pan.
WalkModel &walkToTheBellyPan(Wiring &app, Finger &finger)
{
    WalkModel &walk = *app.session().walk();
    finger.tap(QStringLiteral("Start a walk"));
    finger.tapStarting(QStringLiteral("Full round."));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("walk"); }, QStringLiteral("the walk"));
    goToLine(finger, walk, rivetLine);
    return walk;
}

void writeDown(Finger &finger, WalkModel &walk, const QString &word)
{
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { marked = true; });
    finger.tap(word);
    finger.waitFor([&] { return marked; }, QStringLiteral("the mark on the disk"));
    QObject::disconnect(heard);
}

void finishWalk(Wiring &app, Finger &finger)
{
    finger.tap(QStringLiteral("stop here"));
    finger.tap(QStringLiteral("Finish the walk"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("rig"); },
                   QStringLiteral("home after the walk"));
}

void drawCircle(Wiring &app, Finger &finger)
{
    finger.tapStarting(QStringLiteral("photo: number 1"));
    finger.waitFor([&] { return finger.itemOfType(QStringLiteral("PhotoBoard")) != nullptr; },
                   QStringLiteral("the photo to draw on"));
    QQuickItem *board = finger.itemOfType(QStringLiteral("PhotoBoard"));
    (void)waitUntilSettled(app.session(), app.window());
    for (const double across : {0.5, 0.6})
        finger.touch(*board, across, 0.5);
    finger.waitFor([&] { return !app.session().drawing()->shapes().isEmpty(); },
                   QStringLiteral("the circle"));
    finger.tap(QStringLiteral("Back to the finding"));
}

void find(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    WalkModel &walk = walkToTheBellyPan(app, finger);
    finger.tap(QStringLiteral("Attention"));
    finger.tap(QStringLiteral("What: loose"));
    finger.tapStarting(QStringLiteral("grade 3:"));
    finger.tap(QStringLiteral("underneath"));
    QQuickItem *spot = finger.itemWith("placing", true);
    expect(spot != nullptr, QStringLiteral("a drawing to touch"));
    finger.touch(*spot, 0.7, 0.45);
    finger.type(QStringLiteral("How much"), QStringLiteral("6 mm"));
    finger.tap(QStringLiteral("take a photo"));
    finger.tap(QStringLiteral("Take the photo"));
    drawCircle(app, finger);
    grab(app, shots, QStringLiteral("rivet-1-found"));
    writeDown(finger, walk, QStringLiteral("Write down"));
    finishWalk(app, finger);
    grab(app, shots, QStringLiteral("rivet-2-on-the-drawing"));
}

void comeBack(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    WalkModel &walk = walkToTheBellyPan(app, finger);
    expect(walk.untold() == 1, QStringLiteral("the rivet is not known here any more"));
    finger.tap(QStringLiteral("Pass")); // it cannot be passed over
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("attention"); }, QStringLiteral("the offer"));
    expect(finger.itemWith("numbered", false) != nullptr, QStringLiteral("the rivet's shape on the rig"));
    const QVariantMap offered = walk.openFindings().first().toMap();
    expect(offered.value(QStringLiteral("place")).toString().startsWith(QStringLiteral("underside")),
           QStringLiteral("the place in words"));
    expect(!offered.value(QStringLiteral("photo")).toString().isEmpty(), QStringLiteral("its last photo"));
    grab(app, shots, QStringLiteral("rivet-3-offered"));
    finger.tap(QStringLiteral("Finding 1 now: worse"));
    finger.tapStarting(QStringLiteral("grade 4:"));
    finger.type(QStringLiteral("How much"), QStringLiteral("14 mm"));
    writeDown(finger, walk, QStringLiteral("Write down"));
    finishWalk(app, finger);
    (void)waitUntilSettled(app.session(), app.window()); // the list may still be moving up
    finger.tapStarting(QStringLiteral("finding 1:"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("finding"); },
                   QStringLiteral("the finding's page"));
    grab(app, shots, QStringLiteral("rivet-4a-its-page"));
    finger.tapStarting(QStringLiteral("What kind of work: replaced"));
    finger.type(QStringLiteral("What was done"), QStringLiteral("three rivets"));
    finger.type(QStringLiteral("With what and how many"), QStringLiteral("3 x rivet"));
    finger.tap(QStringLiteral("Write down the mend"));
    finger.waitFor([&] { return placeOf(app) != QStringLiteral("finding"); }, QStringLiteral("the mend"));
    grab(app, shots, QStringLiteral("rivet-4-mended"));
}

void confirm(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    WalkModel &walk = walkToTheBellyPan(app, finger);
    const QVariantMap offered = walk.openFindings().first().toMap();
    expect(offered.value(QStringLiteral("status")).toString() == QStringLiteral("mended"),
           QStringLiteral("the rivet does not wait for its pass"));
    grab(app, shots, QStringLiteral("rivet-5-asks-for-its-pass"));
    writeDown(finger, walk, QStringLiteral("Pass"));
    finishWalk(app, finger);
    finger.waitFor([&] { return app.session().rig()->findingCount() == 0; }, QStringLiteral("nothing open"));
    grab(app, shots, QStringLiteral("rivet-6-confirmed"));
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QStringList arguments = QGuiApplication::arguments();
    expect(arguments.size() == 6,
           QStringLiteral("usage: app_rivet find|come_back|confirm BOOK CAMERA SHOTS TIME"));
    Options options;
    options.book = arguments[2];
    options.cameraFolder = arguments[3];
    options.language = QStringLiteral("en");
    options.now = parseLocal(arguments[5].toStdString());
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    expect(wiring.has_value(), QStringLiteral("the app does not open"));
    expect(waitUntilSettled((*wiring)->session(), (*wiring)->window()),
           QStringLiteral("the app does not settle"));
    const QString &role = arguments[1];
    if (role == QStringLiteral("find"))
        find(**wiring, arguments[4]);
    else if (role == QStringLiteral("come_back"))
        comeBack(**wiring, arguments[4]);
    else
        confirm(**wiring, arguments[4]);
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

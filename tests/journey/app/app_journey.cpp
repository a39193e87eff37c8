// SPDX-License-Identifier: Apache-2.0
// The main job by taps in the real app. Two lives of one program: `walk` begins and is killed by the
// test's driver in the middle of a mark, `resume` must stand on the same line with every mark.
#include <cstdio>
#include <exception>

#include <QDir>
#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTest>
#include <QUrl>

#include "app_steps.hpp"
#include "book_model.hpp"
#include "comparison_model.hpp"
#include "finger.hpp"
#include "settled.hpp"
#include "walk_model.hpp"
#include "wiring.hpp"

using namespace snugwalk;
using namespace snugwalk::journey;

namespace {

const QString rivetPoint = QStringLiteral("belly-pan-sheet");

int count(const QAbstractItemModel &changes, const char *change)
{
    int found = 0;
    for (int row = 0; row < changes.rowCount(); ++row)
        found += cell(changes, row, "change").toString() == QLatin1String(change) ? 1 : 0;
    return found;
}

// A pass asks for what is known to be open: each is still there, and the mark becomes an attention.
void tellStillThere(Finger &finger, const WalkModel &walk)
{
    const QVariantList offered = walk.property("openFindings").toList();
    for (const QVariant &one : offered) {
        const QVariantMap finding = one.toMap();
        if (finding.value(QStringLiteral("status")).toString() == QStringLiteral("open"))
            finger.tap(QStringLiteral("Finding %1 now: still there, the same")
                           .arg(finding.value(QStringLiteral("number")).toInt()));
    }
    finger.tap(QStringLiteral("Write down"));
}

// One pass by a tap; told only when the logbook has it.
void passOneLine(Finger &finger, WalkModel &walk)
{
    readCautions(finger, walk);
    const int line = walk.property("current").toInt();
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk,
                                        [&](int at, const QString &) { marked = marked || at == line; });
    const bool asks = walk.property("untold").toInt() > 0;
    finger.tap(QStringLiteral("Pass"));
    if (asks)
        tellStillThere(finger, walk);
    finger.waitFor([&] { return marked; }, QStringLiteral("the mark on the disk"));
    QObject::disconnect(heard);
    say(QStringLiteral("marked %1").arg(line));
}

void logRivet(Finger &finger, WalkModel &walk, const QString &photo, const QString &title)
{
    const int line = lineTitled(walk, title);
    goToLine(finger, walk, title);
    finger.tap(QStringLiteral("Attention"));
    finger.tapStarting(QStringLiteral("Finding 4 now: worse"));
    finger.tapStarting(QStringLiteral("grade 4:"));
    finger.type(QStringLiteral("How much"), QStringLiteral("14 mm"));
    QQuickItem *photos = finger.itemOfType(QStringLiteral("PhotoChoice"));
    expect(photos != nullptr, QStringLiteral("the place for photos"));
    const QVariant files = QVariantList{QUrl::fromLocalFile(photo)};
    QMetaObject::invokeMethod(photos, "add", Q_ARG(QVariant, files)); // what the file dialog hands over
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { marked = true; });
    finger.tap(QStringLiteral("Write down"));
    finger.waitFor([&] { return marked; }, QStringLiteral("the rivet on the disk"));
    QObject::disconnect(heard);
    say(QStringLiteral("marked %1").arg(line));
}

void walkUntilKilled(Wiring &app, const QString &photo, const QString &shots)
{
    Finger finger(app.window());
    WalkModel &walk = *app.session().property("walk").value<WalkModel *>();
    grab(app, shots, QStringLiteral("1-home"));
    finger.tap(QStringLiteral("Start a walk"));
    finger.tapStarting(QStringLiteral("Full round."));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("walk"); }, QStringLiteral("the walk"));
    logRivet(finger, walk, photo, QStringLiteral("Belly pan sheet"));
    walk.goTo(0);
    grab(app, shots, QStringLiteral("2-walk"));
    for (;;)
        passOneLine(finger, walk);
}

void resume(Wiring &app, const QString &shots)
{
    Finger finger(app.window());
    WalkModel &walk = *app.session().property("walk").value<WalkModel *>();
    expect(placeOf(app) == QStringLiteral("walk"),
           QStringLiteral("opened on ") + placeOf(app) + QStringLiteral(", not on the walk"));
    QAbstractItemModel &tape = *walk.property("tape").value<QAbstractItemModel *>();
    QString marks;
    for (int row = 0; row < tape.rowCount(); ++row) {
        if (cell(tape, row, "mark").toString() != QStringLiteral("not_looked"))
            marks += QStringLiteral(" %1").arg(row);
    }
    say(QStringLiteral("resumed at %1 with%2").arg(walk.property("current").toInt()).arg(marks));
    grab(app, shots, QStringLiteral("3-resumed"));
    while (!walk.property("complete").toBool())
        passOneLine(finger, walk);
    if (placeOf(app) != QStringLiteral("finish"))
        finger.tap(QStringLiteral("stop here"));
    grab(app, shots, QStringLiteral("4-finish"));
    finger.tap(QStringLiteral("Finish the walk"));
    finger.waitFor([&] { return placeOf(app) == QStringLiteral("rig"); },
                   QStringLiteral("home after the walk"));
    finger.tap(QStringLiteral("Logbook"));
    finger.tap(QStringLiteral("Compare the last two"));
    QAbstractItemModel &changes = *app.session()
                                       .property("book")
                                       .value<QObject *>()
                                       ->property("comparison")
                                       .value<QAbstractItemModel *>();
    // every line got a mark, so that nothing may be told as not looked at
    finger.waitFor([&] { return changes.rowCount() > 0 && count(changes, "not_looked") == 0; },
                   QStringLiteral("a comparison with all marks of the walk"));
    grab(app, shots, QStringLiteral("5-compare"));
    for (int row = 0; row < changes.rowCount(); ++row) {
        if (cell(changes, row, "point").toString() != rivetPoint)
            continue;
        expect(cell(changes, row, "change").toString() == QStringLiteral("worse"),
               QStringLiteral("the rivet is not worse"));
        expect(cell(changes, row, "thenPhotos").toList().size() == 1, QStringLiteral("not one photo then"));
        expect(cell(changes, row, "nowPhotos").toList().size() == 1, QStringLiteral("not one photo now"));
        expect(finger.itemOfType(QStringLiteral("PhotoPair")) != nullptr,
               QStringLiteral("no photos side by side"));
        return say(QStringLiteral("rivet worse, both photos side by side"));
    }
    giveUp(QStringLiteral("the rivet is not in the comparison"));
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QStringList arguments = QGuiApplication::arguments();
    expect(arguments.size() == 5, QStringLiteral("usage: app_journey walk|resume BOOK PHOTO SHOTS"));
    Options options;
    options.book = arguments[2];
    options.now = parseLocal("2026-11-20T08:10:00+13:00");
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    expect(wiring.has_value(), QStringLiteral("the app does not open"));
    expect(waitUntilSettled((*wiring)->session(), (*wiring)->window()),
           QStringLiteral("the app does not settle"));
    if (arguments[1] == QStringLiteral("walk"))
        walkUntilKilled(**wiring, arguments[3], arguments[4]);
    else
        resume(**wiring, arguments[4]);
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

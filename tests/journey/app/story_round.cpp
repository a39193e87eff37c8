// SPDX-License-Identifier: Apache-2.0
// The main job: `walk` begins and is killed by the test's driver in the middle of a mark, `resume` must
// stand on the same line with every mark, go on to the end, and compare.
#include <QQuickItem>
#include <QUrl>

#include "app_steps.hpp"
#include "book_model.hpp"
#include "comparison_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

const QString rivetPoint = QStringLiteral("belly-pan-sheet");

int count(const QAbstractItemModel &changes, const char *change)
{
    int found = 0;
    for (int row = 0; row < changes.rowCount(); ++row)
        found += cell(changes, row, "change").toString() == QLatin1String(change) ? 1 : 0;
    return found;
}

// One pass, told only when the logbook has it: one tap where nothing is known to be open.
void passAndTell(Life &life)
{
    WalkModel &walk = walkOf(life);
    readCautions(life);
    const int line = walk.current();
    const bool isPlain = walk.untold() == 0;
    const int before = life.finger().taps();
    passLine(life);
    const int taps = life.finger().taps() - before;
    expect(!isPlain || taps == 1, QStringLiteral("a pass took %1 taps").arg(taps));
    say(QStringLiteral("marked %1").arg(line));
}

void logRivet(Life &life)
{
    const QString title = QStringLiteral("Belly pan sheet");
    Finger &finger = life.finger();
    goToLine(life, title);
    finger.tap(QStringLiteral("Attention"));
    finger.tapStarting(QStringLiteral("Finding 4 now: worse"));
    finger.tapStarting(QStringLiteral("grade 4:"));
    finger.type(QStringLiteral("How much"), QStringLiteral("14 mm"));
    finger.tap(QStringLiteral("photo from a file"));
    chooseFiles(life, {life.given(QStringLiteral("photo"))});
    writeDown(life, QStringLiteral("Write down"));
    say(QStringLiteral("marked %1").arg(lineTitled(walkOf(life), title)));
}

void walkUntilKilled(Life &life)
{
    life.shot(QStringLiteral("1-home"));
    WalkModel &walk = startWalk(life, QStringLiteral("Full round."));
    logRivet(life);
    walk.goTo(0);
    life.shot(QStringLiteral("2-walk"));
    for (;;)
        passAndTell(life);
}

void tellWhereItStands(Life &life)
{
    QAbstractItemModel &tape = *walkOf(life).property("tape").value<QAbstractItemModel *>();
    QString marks;
    for (int row = 0; row < tape.rowCount(); ++row) {
        if (cell(tape, row, "mark").toString() != QStringLiteral("not_looked"))
            marks += QStringLiteral(" %1").arg(row);
    }
    say(QStringLiteral("resumed at %1 with%2").arg(walkOf(life).current()).arg(marks));
}

void compareTheRivet(Life &life)
{
    life.finger().tap(QStringLiteral("Logbook"));
    life.finger().tap(QStringLiteral("Compare the last two"));
    QAbstractItemModel &changes =
        *life.session().book()->property("comparison").value<QAbstractItemModel *>();
    // every line got a mark, so that nothing may be told as not looked at
    life.finger().waitFor([&] { return changes.rowCount() > 0 && count(changes, "not_looked") == 0; },
                          QStringLiteral("a comparison with all marks of the walk"));
    life.shot(QStringLiteral("5-compare"));
    for (int row = 0; row < changes.rowCount(); ++row) {
        if (cell(changes, row, "point").toString() != rivetPoint)
            continue;
        expect(cell(changes, row, "change").toString() == QStringLiteral("worse"),
               QStringLiteral("the rivet is not worse"));
        expect(cell(changes, row, "thenPhotos").toList().size() == 1, QStringLiteral("not one photo then"));
        expect(cell(changes, row, "nowPhotos").toList().size() == 1, QStringLiteral("not one photo now"));
        expect(life.finger().itemOfType(QStringLiteral("PhotoPair")) != nullptr,
               QStringLiteral("no photos side by side"));
        return say(QStringLiteral("rivet worse, both photos side by side"));
    }
    giveUp(QStringLiteral("the rivet is not in the comparison"));
}

void resume(Life &life)
{
    WalkModel &walk = walkOf(life);
    expect(life.place() == QStringLiteral("walk"),
           QStringLiteral("opened on ") + life.place() + QStringLiteral(", not on the walk"));
    tellWhereItStands(life);
    life.shot(QStringLiteral("3-resumed"));
    while (!walk.isComplete())
        passAndTell(life);
    if (life.place() != QStringLiteral("finish"))
        life.finger().tap(QStringLiteral("stop here"));
    life.shot(QStringLiteral("4-finish"));
    life.finger().tap(QStringLiteral("Finish the walk"));
    life.arrive(QStringLiteral("rig"));
    compareTheRivet(life);
}

} // namespace

Stories roundStories()
{
    return {{QStringLiteral("walk"), walkUntilKilled}, {QStringLiteral("resume"), resume}};
}

} // namespace snugwalk::journey

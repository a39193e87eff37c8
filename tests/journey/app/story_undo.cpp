// SPDX-License-Identifier: Apache-2.0
// What was written by mistake: a mark is taken back on the walk, a mend from the logbook.
#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

void takeMarkBack(Life &life)
{
    WalkModel &walk = startWalk(life, QStringLiteral("Full round."));
    const QAbstractItemModel &tape = *walk.tape();
    passLine(life);
    const int line = walk.current();
    const int left = walk.linesLeft();
    passLine(life);
    expect(walk.linesLeft() == left - 1, QStringLiteral("the mark does not count"));
    life.finger().tap(QStringLiteral("undo"));
    life.finger().waitFor([&] { return walk.linesLeft() == left; }, QStringLiteral("the mark taken back"));
    expect(cell(tape, line, "mark").toString() == QStringLiteral("not_looked"),
           QStringLiteral("another mark was taken back"));
    life.shot(QStringLiteral("undo-1-mark"));
    finishWalk(life);
}

void takeMendBack(Life &life)
{
    Finger &finger = life.finger();
    life.settle();
    const int open = life.session().rig()->findingCount();
    finger.tapStarting(QStringLiteral("finding 1:"));
    life.arrive(QStringLiteral("finding"));
    finger.tapStarting(QStringLiteral("What kind of work: replaced"));
    finger.type(QStringLiteral("What was done"), QStringLiteral("the wrong one"));
    finger.tap(QStringLiteral("Write down the mend"));
    finger.waitFor([&] { return life.place() != QStringLiteral("finding"); }, QStringLiteral("the mend"));
    life.settle();
    finger.tap(QStringLiteral("Logbook"));
    finger.tap(QStringLiteral("mends"));
    life.shot(QStringLiteral("undo-2-mend"));
    finger.tapStarting(QStringLiteral("take back: "));
    life.settle();
    life.shot(QStringLiteral("undo-3-taken-back"));
    finger.waitFor([&] { return life.session().rig()->findingCount() == open; },
                   QStringLiteral("the finding open again"));
}

void takeBack(Life &life)
{
    takeMarkBack(life);
    takeMendBack(life);
}

} // namespace

Stories undoStories() { return {{QStringLiteral("take_back"), takeBack}}; }

} // namespace snugwalk::journey

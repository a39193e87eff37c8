// SPDX-License-Identifier: Apache-2.0
// Every line of a full round passed, some with a word or a figure, at the pace of a quick person.
#include <QTest>

#include "app_steps.hpp"
#include "runs.hpp"

namespace snugwalk::speed {
namespace {

constexpr int restMilliseconds = 500; // a glance and a tap; who looks longer leaves the thread more time

} // namespace

void roundOfFrames(journey::Life &life, WatchedApp &watch)
{
    (void)watch.take();
    watch.nowDoing(QStringLiteral("opening the walk"));
    WalkModel &walk = journey::startWalk(life, QStringLiteral("Full round."));
    life.settle();
    tellFrames(QStringLiteral("opening a walk"), watch.take());
    int lines = 0;
    while (!walk.isComplete()) {
        watch.nowDoing(QStringLiteral("line %1, %2").arg(walk.current()).arg(walk.title()));
        journey::passLine(life);
        QTest::qWait(restMilliseconds);
        ++lines;
    }
    tellFrames(QStringLiteral("a full round of %1 lines").arg(lines), watch.take());
    watch.nowDoing(QStringLiteral("finishing"));
    if (life.place() != QStringLiteral("finish"))
        life.finger().tap(QStringLiteral("stop here"));
    life.finger().tap(QStringLiteral("Finish the walk"));
    life.arrive(QStringLiteral("rig"));
    life.settle();
    tellFrames(QStringLiteral("finishing it"), watch.take());
}

} // namespace snugwalk::speed

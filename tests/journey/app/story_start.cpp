// SPDX-License-Identifier: Apache-2.0
// From no file at all to the first line of a first walk.
#include <cmath>

#include <QFile>
#include <QQuickWindow>
#include <QTest>

#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

// The invented rig and back: the window is made anew each time.
void lookRound(Life &life)
{
    const auto isDemo = [&] { return life.session().books()->isDemo(); };
    life.finger().tapStarting(QStringLiteral("Look round an invented rig first"));
    expect(QTest::qWaitFor(isDemo, 120'000), QStringLiteral("the invented rig never came"));
    life.settle();
    expect(life.session().hasRig(), QStringLiteral("the invented rig is empty"));
    life.shot(QStringLiteral("start-2-invented"));
    life.finger().tap(QStringLiteral("remove the invented rig"));
    life.finger().waitFor([&] { return !isDemo(); }, QStringLiteral("one's own logbook"));
    life.settle();
    expect(!life.session().hasRig(), QStringLiteral("the invented rig got into one's own logbook"));
}

void describe(Life &life)
{
    Finger &finger = life.finger();
    finger.tapStarting(
        QStringLiteral("Where is it at home? Lamps, plugs and gas follow that.: North America"));
    finger.tapStarting(QStringLiteral("travel trailer"));
    finger.type(QStringLiteral("Your name, written beside each mark; may stay empty"), QStringLiteral("Mar"));
    finger.tapStarting(QStringLiteral("Next: how big"));
    finger.type(QStringLiteral("Name"), QStringLiteral("Kea"));
    finger.type(QStringLiteral("Length of the body, without the drawbar"), QStringLiteral("21"));
    life.shot(QStringLiteral("start-3-measures"));
    finger.tapStarting(QStringLiteral("Draw it"));
    life.arrive(QStringLiteral("rig"));
    finger.waitFor([&] { return life.session().hasRig(); }, QStringLiteral("the rig"));
    life.shot(QStringLiteral("start-4-rig"));
}

void firstWalk(Life &life)
{
    life.finger().tapStarting(QStringLiteral("Start a walk"));
    life.shot(QStringLiteral("start-5-kinds"));
    life.finger().tapStarting(QStringLiteral("First look."));
    life.arrive(QStringLiteral("walk"));
    life.shot(QStringLiteral("start-6-walk"));
    const WalkModel &walk = walkOf(life);
    expect(walk.count() > 4 && walk.count() < 40,
           QStringLiteral("a first walk of %1 lines").arg(walk.count()));
    expect(life.session().person() == QStringLiteral("Mar"), QStringLiteral("nobody asked who looks"));
}

void putRight(Life &life)
{
    life.app().window().setProperty("currentPlace", QStringLiteral("rig"));
    life.settle();
    life.finger().tap(QStringLiteral("its measures and plates"));
    life.shot(QStringLiteral("start-7-sheet"));
    life.finger().type(QStringLiteral("Length of the body, without the drawbar"), QStringLiteral("20 ft"));
    life.finger().tap(QStringLiteral("Write it down"));
    life.finger().waitFor(
        [&] {
            return std::abs(life.session().rig()->drawn().value(QStringLiteral("bodyLength")).toDouble() -
                            20 * 0.3048) < 1e-9;
        },
        QStringLiteral("the length put right"));
}

void begin(Life &life)
{
    expect(!QFile::exists(life.book()), QStringLiteral("a file is made before there is a rig"));
    life.shot(QStringLiteral("start-1-empty"));
    lookRound(life);
    expect(!QFile::exists(life.book()), QStringLiteral("looking round made one's own logbook"));
    const int before = life.finger().taps();
    describe(life);
    firstWalk(life);
    say(QStringLiteral("taps %1").arg(life.finger().taps() - before));
    putRight(life);
}

} // namespace

Stories startStories() { return {{QStringLiteral("begin"), begin}}; }

} // namespace snugwalk::journey

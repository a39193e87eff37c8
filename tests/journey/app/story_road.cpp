// SPDX-License-Identifier: Apache-2.0
// Before the road: every line passed and no hold; another day one that could not be looked at, which holds,
// is accepted once by the person's own decision, and stands on the slip.
#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

void passTheRest(Life &life)
{
    while (!walkOf(life).isComplete())
        passLine(life);
    if (life.place() != QStringLiteral("finish"))
        life.finger().tap(QStringLiteral("stop here"));
    life.finger().tap(QStringLiteral("Finish the walk"));
    life.arrive(QStringLiteral("rig"));
    life.settle();
}

// The slip as a file, by the report's page.
void saveSlip(Life &life, const QString &shot)
{
    saveReport(life, QStringLiteral("What was looked at before the road"), QStringLiteral("PDF"), shot);
}

void clear(Life &life)
{
    startWalk(life, QStringLiteral("Before the road."));
    life.shot(QStringLiteral("road-1-first-line"));
    passTheRest(life);
    life.shot(QStringLiteral("road-2-no-hold"));
    say(QStringLiteral("state ") + life.session().rig()->state());
    expect(life.finger().reads(life.session().rig()->state()),
           QStringLiteral("the home does not say how it stands"));
    saveSlip(life, QStringLiteral("road-3-slip"));
}

void accept(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("why"));
    life.arrive(QStringLiteral("state"));
    life.shot(QStringLiteral("road-5-why"));
    finger.tapStarting(QStringLiteral("move it once on one's own decision"));
    life.arrive(QStringLiteral("accept"));
    finger.type(QStringLiteral("because"), QStringLiteral("it was too dark"));
    finger.type(QStringLiteral("what may follow"), QStringLiteral("a step left down"));
    life.shot(QStringLiteral("road-6-decision"));
    finger.tap(QStringLiteral("I decide so"));
    life.arrive(QStringLiteral("state"));
    finger.waitFor([&] { return finger.reads(QStringLiteral("accepted by Mar")); },
                   QStringLiteral("the decision on the page"));
    life.shot(QStringLiteral("road-7-accepted"));
}

void held(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("settings"));
    finger.type(QStringLiteral("Who looks"), QStringLiteral("Mar"));
    finger.tap(QStringLiteral("back"));
    startWalk(life, QStringLiteral("Before the road."));
    goToLine(life, life.given(QStringLiteral("line")));
    if (finger.sees(QStringLiteral("could not look")))
        finger.tap(QStringLiteral("could not look"));
    writeDown(life, QStringLiteral("could not look: ") + life.given(QStringLiteral("reason")));
    passTheRest(life);
    life.shot(QStringLiteral("road-4-held"));
    say(QStringLiteral("state ") + life.session().rig()->state());
    accept(life);
    finger.tap(QStringLiteral("back"));
    saveSlip(life, QStringLiteral("road-8-slip"));
}

} // namespace

Stories roadStories() { return {{QStringLiteral("clear"), clear}, {QStringLiteral("held"), held}}; }

} // namespace snugwalk::journey

// SPDX-License-Identifier: Apache-2.0
// One rivet from its first look to its confirmed mend: found on the underside with a photo and a circle
// on it, offered two months later, worse, mended, passed.
#include <QQuickItem>

#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

const QString rivetLine = QStringLiteral("Belly pan sheet");

WalkModel &walkToTheBellyPan(Life &life)
{
    WalkModel &walk = startWalk(life, QStringLiteral("Full round."));
    goToLine(life, rivetLine);
    return walk;
}

void drawCircle(Life &life)
{
    Finger &finger = life.finger();
    finger.tapStarting(QStringLiteral("photo: number 1"));
    finger.waitFor([&] { return finger.itemOfType(QStringLiteral("PhotoBoard")) != nullptr; },
                   QStringLiteral("the photo to draw on"));
    QQuickItem *board = finger.itemOfType(QStringLiteral("PhotoBoard"));
    life.settle();
    for (const double across : {0.5, 0.6})
        finger.touch(*board, across, 0.5);
    finger.waitFor([&] { return !life.session().drawing()->shapes().isEmpty(); },
                   QStringLiteral("the circle"));
    finger.tap(QStringLiteral("Back to the finding"));
}

// What a finding with a photo takes at least, after the tap on Attention: what, how bad, the camera, the
// photo, the pen.
void findWithFewTaps(Life &life)
{
    constexpr int most = 5;
    walkOf(life).goTo(0);
    readCautions(life);
    life.finger().tap(QStringLiteral("Attention"));
    const int before = life.finger().taps();
    life.finger().tapStarting(QStringLiteral("What: "));
    life.finger().tapStarting(QStringLiteral("grade 2:"));
    life.finger().tap(QStringLiteral("take a photo"));
    life.finger().tap(QStringLiteral("Take the photo"));
    writeDown(life, QStringLiteral("Write down"));
    const int taps = life.finger().taps() - before;
    expect(taps <= most, QStringLiteral("a finding with a photo took %1 taps after attention").arg(taps));
    say(QStringLiteral("taps %1").arg(taps));
    life.finger().tap(QStringLiteral("undo"));
    life.finger().waitFor([&] { return life.session().rig()->findingCount() == 1; },
                          QStringLiteral("the finding taken back"));
}

void find(Life &life)
{
    Finger &finger = life.finger();
    walkToTheBellyPan(life);
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
    drawCircle(life);
    life.shot(QStringLiteral("rivet-1-found"));
    writeDown(life, QStringLiteral("Write down"));
    findWithFewTaps(life);
    finishWalk(life);
    life.shot(QStringLiteral("rivet-2-on-the-drawing"));
}

void mendIt(Life &life)
{
    Finger &finger = life.finger();
    life.settle(); // the list may still be moving up
    finger.tapStarting(QStringLiteral("finding 1:"));
    life.arrive(QStringLiteral("finding"));
    life.shot(QStringLiteral("rivet-4a-its-page"));
    finger.tapStarting(QStringLiteral("What kind of work: replaced"));
    finger.type(QStringLiteral("What was done"), QStringLiteral("three rivets"));
    finger.type(QStringLiteral("With what and how many"), QStringLiteral("3 x rivet"));
    finger.tap(QStringLiteral("Write down the mend"));
    finger.waitFor([&] { return life.place() != QStringLiteral("finding"); }, QStringLiteral("the mend"));
    life.shot(QStringLiteral("rivet-4-mended"));
}

void comeBack(Life &life)
{
    Finger &finger = life.finger();
    WalkModel &walk = walkToTheBellyPan(life);
    expect(walk.untold() == 1, QStringLiteral("the rivet is not known here any more"));
    finger.tap(QStringLiteral("Pass")); // it cannot be passed over
    life.arrive(QStringLiteral("attention"));
    expect(finger.itemWith("numbered", false) != nullptr, QStringLiteral("the rivet's shape on the rig"));
    const QVariantMap offered = walk.openFindings().first().toMap();
    expect(offered.value(QStringLiteral("place")).toString().startsWith(QStringLiteral("underside")),
           QStringLiteral("the place in words"));
    expect(!offered.value(QStringLiteral("photo")).toString().isEmpty(), QStringLiteral("its last photo"));
    life.shot(QStringLiteral("rivet-3-offered"));
    finger.tap(QStringLiteral("Finding 1 now: worse"));
    finger.tapStarting(QStringLiteral("grade 4:"));
    finger.type(QStringLiteral("How much"), QStringLiteral("14 mm"));
    writeDown(life, QStringLiteral("Write down"));
    finishWalk(life);
    mendIt(life);
}

void confirm(Life &life)
{
    WalkModel &walk = walkToTheBellyPan(life);
    const QVariantMap offered = walk.openFindings().first().toMap();
    expect(offered.value(QStringLiteral("status")).toString() == QStringLiteral("mended"),
           QStringLiteral("the rivet does not wait for its pass"));
    life.shot(QStringLiteral("rivet-5-asks-for-its-pass"));
    writeDown(life, QStringLiteral("Pass"));
    finishWalk(life);
    life.finger().waitFor([&] { return life.session().rig()->findingCount() == 0; },
                          QStringLiteral("nothing open"));
    life.shot(QStringLiteral("rivet-6-confirmed"));
}

} // namespace

Stories rivetStories()
{
    return {{QStringLiteral("find"), find},
            {QStringLiteral("come_back"), comeBack},
            {QStringLiteral("confirm"), confirm}};
}

} // namespace snugwalk::journey

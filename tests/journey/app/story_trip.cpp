// SPDX-License-Identifier: Apache-2.0
// A track from a phone comes in and is a trip with a line; what is no track is refused in words.
#include <QQuickItem>

#include "app_steps.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

void take(Life &life, const QString &file)
{
    life.finger().tap(QStringLiteral("Choose the file"));
    chooseFile(life, file);
    life.settle();
}

void takeIn(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("Logbook"));
    finger.tap(QStringLiteral("trips"));
    life.shot(QStringLiteral("trip-1-none"));
    finger.tapStarting(QStringLiteral("Take a file in"));
    take(life, life.given(QStringLiteral("broken")));
    expect(!life.session().intake()->fault().isEmpty(), QStringLiteral("a broken file was taken in"));
    life.shot(QStringLiteral("trip-2-refused"));
    finger.tapStarting(QStringLiteral("The road, if you know it: "));
    take(life, life.given(QStringLiteral("track")));
    expect(!life.session().intake()->outcome().isEmpty(), QStringLiteral("the track was refused"));
    life.shot(QStringLiteral("trip-3-taken-in"));
    finger.tap(QStringLiteral("back"));
    finger.tap(QStringLiteral("trips"));
    life.shot(QStringLiteral("trip-4-list"));
    finger.tapStarting(life.given(QStringLiteral("title")));
    life.arrive(QStringLiteral("trip"));
    life.settle();
    expect(finger.itemOfType(QStringLiteral("TrackMap")) != nullptr, QStringLiteral("the trip has no line"));
    life.shot(QStringLiteral("trip-5-its-page"));
}

} // namespace

Stories tripStories() { return {{QStringLiteral("import"), takeIn}}; }

} // namespace snugwalk::journey

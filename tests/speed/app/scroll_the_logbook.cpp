// SPDX-License-Identifier: Apache-2.0
// Each shelf of the logbook from one end to the other, as a flick moves it.
#include <algorithm>
#include <cstdio>

#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>

#include "app_steps.hpp"
#include "runs.hpp"

namespace snugwalk::speed {
namespace {

constexpr double stepPixels = 40.0; // a flick of some 2,400 pixels a second

double length(const QQuickItem &item) { return item.property("contentHeight").toDouble(); }

// The visible list that has most to scroll; null when all of it is on the screen.
QQuickItem *longestList(QQuickItem &item)
{
    if (!item.isVisible())
        return nullptr;
    QQuickItem *best =
        item.inherits("QQuickFlickable") && length(item) > item.height() + 1.0 ? &item : nullptr;
    const auto children = item.childItems();
    for (QQuickItem *child : children) {
        QQuickItem *found = longestList(*child);
        if (found != nullptr && (best == nullptr || length(*found) > length(*best)))
            best = found;
    }
    return best;
}

int scrollThrough(QQuickItem &list)
{
    int steps = 0;
    for (;; ++steps) {
        const double end = list.property("originY").toDouble() + length(list) - list.height();
        const double at = list.property("contentY").toDouble();
        if (at >= end - 1.0) {
            // back to the head, where the shelves are chosen
            list.setProperty("contentY",
                             list.property("originY").toDouble() - list.property("topMargin").toDouble());
            return steps;
        }
        list.setProperty("contentY", std::min(end, at + stepPixels));
        QTest::qWait(16);
    }
}

} // namespace

void scrollTheLogbook(journey::Life &life, WatchedApp &watch)
{
    (void)watch.take();
    watch.nowDoing(QStringLiteral("opening the logbook"));
    life.finger().tap(QStringLiteral("Logbook"));
    life.settle();
    tellFrames(QStringLiteral("opening the logbook"), watch.take());
    for (const char *shelf : {"walks", "trips", "mends", "photos"}) {
        const QString name = QString::fromLatin1(shelf);
        if (name != QStringLiteral("walks")) {
            watch.nowDoing(QStringLiteral("opening the shelf of ") + name);
            life.finger().tap(name);
            life.settle();
            tellFrames(QStringLiteral("opening ") + name, watch.take());
        }
        QQuickItem *list = longestList(*life.app().window().contentItem());
        if (list == nullptr)
            continue;
        watch.nowDoing(QStringLiteral("scrolling ") + name);
        const int steps = scrollThrough(*list);
        tellFrames(QStringLiteral("scrolling %1 in %2 steps").arg(name).arg(steps), watch.take());
    }
}

} // namespace snugwalk::speed

// SPDX-License-Identifier: Apache-2.0
// Asking every item on the window whether it still loads.
#include "settled.hpp"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QQuickItem>
#include <QQuickWindow>

#include "session.hpp"

namespace snugwalk {
namespace {

constexpr int loadingStatus = 2; // Image.Loading and Loader.Loading
constexpr int sliceMilliseconds = 20;
constexpr int quietRounds = 3; // work that an event posted is done by the third
constexpr int patienceMilliseconds = 30'000;

bool isLoading(const QQuickItem &item)
{
    const bool canLoad = item.inherits("QQuickImageBase") || item.inherits("QQuickLoader");
    if (canLoad && item.property("status").toInt() == loadingStatus)
        return true;
    for (const QQuickItem *child : item.childItems()) {
        if (isLoading(*child))
            return true;
    }
    return false;
}

} // namespace

bool waitUntilSettled(const Session &session, QQuickWindow &window)
{
    const QDeadlineTimer deadline(patienceMilliseconds);
    int quiet = 0;
    while (quiet < quietRounds) {
        if (deadline.hasExpired())
            return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents, sliceMilliseconds);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const bool isBusy = !session.isLoaded() || session.isBusy() || isLoading(*window.contentItem());
        quiet = isBusy ? 0 : quiet + 1;
    }
    return true;
}

} // namespace snugwalk

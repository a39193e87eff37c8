// SPDX-License-Identifier: Apache-2.0
// Visiting pages and listening.
#include "self_test.hpp"

#include <QQuickWindow>

#include "data/embedded.hpp"
#include "message_watch.hpp"
#include "pages.hpp"
#include "settled.hpp"
#include "wiring.hpp"

namespace snugwalk {
namespace {

Error neverStill(const QString &page)
{
    return {Errc::Corrupt, "a page never stood still", page.toStdString(), "install the program again"};
}

Status visitAll(Wiring &wiring)
{
    for (const QString &page : pageNames()) {
        if (!openPage(wiring, page))
            return neverStill(page);
        if (wiring.window().grabWindow().isNull())
            return Error{Errc::Corrupt, "a page cannot be drawn", page.toStdString(),
                         "install the program again"};
    }
    return done();
}

// A rig as anyone might type it, so that the pages have something to show.
bool addSomeRig(Wiring &wiring)
{
    wiring.session().addRig(
        {{QStringLiteral("name"), QStringLiteral("Test rig")},
         {QStringLiteral("kind"), QStringLiteral("travel_trailer")},
         {QStringLiteral("practice"), QStringLiteral("other")},
         {QStringLiteral("length"), QStringLiteral("6.4 m")},
         {QStringLiteral("width"), QStringLiteral("2.3 m")},
         {QStringLiteral("height"), QStringLiteral("2.2 m")},
         {QStringLiteral("floor_height"), QStringLiteral("0.55 m")},
         {QStringLiteral("hitch_length"), QStringLiteral("1.25 m")},
         {QStringLiteral("axles"), QStringList{QStringLiteral("3.3 m"), QStringLiteral("4.15 m")}}});
    return waitUntilSettled(wiring.session(), wiring.window()) && wiring.session().rigProblems().isEmpty();
}

} // namespace

Status selfTest(Wiring &wiring, const MessageWatch &watch)
{
    if (!waitUntilSettled(wiring.session(), wiring.window()))
        return neverStill(QStringLiteral("first page"));
    SNUG_TRY(visitAll(wiring));
    if (!wiring.session().hasRig() && !addSomeRig(wiring))
        return Error{Errc::Corrupt, "a plain rig is refused", "new_rig",
                     "report this as a fault of the program"};
    for (const QSize &size : {QSize(360, 740), QSize(1280, 800)}) {
        wiring.window().resize(size);
        for (const Language &language : productLanguages()) {
            wiring.session().setLanguage(QString::fromStdString(language.slug));
            if (!openSomeWalk(wiring))
                return neverStill(QStringLiteral("walk"));
            SNUG_TRY(visitAll(wiring));
        }
    }
    if (!watch.warnings().isEmpty())
        return Error{Errc::Corrupt, watch.warnings().first().toStdString(), "self-test",
                     "see the messages above"};
    return done();
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Driving the window from outside.
#include "pages.hpp"

#include <QQuickWindow>

#include "settled.hpp"
#include "wiring.hpp"

namespace snugwalk {

const QStringList &pageNames()
{
    static const QStringList names =
        QStringLiteral(
            "rig due logbook bench bench_question bench_question/star bench_question/weigh "
            "bench_question/sealant "
            "start walk lines attention look_reasons finish "
            "reports reports/walk reports/work_order reports/out_and_back went went/shake went/cost "
            "went/concern went/reading "
            "compare finding draw camera trend state accept points add_point supplies why what_if trip "
            "map import search sync share join recover paper conflicts new_rig edit_rig "
            "settings about emergency")
            .split(u' ');
    return names;
}

bool openPage(Wiring &wiring, const QString &name)
{
    const QString thing = name.section(u'/', 1);
    const QString place = name.section(u'/', 0, 0);
    if (wiring.window().property("currentPlace").toString() == place) // of another thing: made anew
        wiring.window().setProperty("currentPlace", QStringLiteral("rig"));
    wiring.window().setProperty("currentThing", thing);
    wiring.window().setProperty("currentPlace", place);
    if (!waitUntilSettled(wiring.session(), wiring.window()))
        return false;
    if (name.startsWith(QStringLiteral("bench_question/")))
        wiring.session().bench()->showExample(); // an empty form shows nothing of its answer
    return waitUntilSettled(wiring.session(), wiring.window());
}

bool openSomeWalk(Wiring &wiring)
{
    if (!waitUntilSettled(wiring.session(), wiring.window()))
        return false;
    WalkModel &walk = *wiring.session().walk();
    if (walk.walk() != nullptr)
        walk.goOn();
    else if (wiring.session().hasRig())
        walk.start(QStringLiteral("before_road"));
    return waitUntilSettled(wiring.session(), wiring.window());
}

} // namespace snugwalk

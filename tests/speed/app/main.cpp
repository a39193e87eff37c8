// SPDX-License-Identifier: Apache-2.0
// The real app as a person has it, watched: ROLE BOOK SHOTS TIME [NAME=VALUE ...].
#include <cstdio>
#include <exception>
#include <map>

#include <QQuickStyle>
#include <QQuickWindow>

#include "runs.hpp"

using namespace snugwalk;
using namespace snugwalk::speed;

namespace {

using Run = void (*)(journey::Life &, WatchedApp &);

const std::map<QString, Run> runs{{QStringLiteral("frames"), roundOfFrames},
                                  {QStringLiteral("scroll"), scrollTheLogbook},
                                  {QStringLiteral("marks"), latencyOfMarks},
                                  {QStringLiteral("track"), importTrack},
                                  {QStringLiteral("photos"), importPhotos}};

int measure(int argc, char **argv)
{
    WatchedApp app(argc, argv);
    WatchedApp::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const journey::Life::Given given = journey::readGiven(WatchedApp::arguments());
    const auto run = runs.find(given.role);
    journey::expect(run != runs.end(), QStringLiteral("nothing is measured by that name"));
    journey::Life life(given, Wiring::Mode::Live);
    app.watch(life.app().window());
    run->second(life, app);
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    try {
        return measure(argc, argv);
    } catch (const std::exception &fault) {
        std::printf("failed: %s\n", fault.what());
        return 70;
    }
}

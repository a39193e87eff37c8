// SPDX-License-Identifier: Apache-2.0
// From a finger that leaves the screen to a mark that is on the disk, and to the picture that says so,
// against one bare SQLite commit of a row as large as a mark's entry on the same disk in the same run.
#include <QTest>

#include "app_steps.hpp"
#include "bare_commit.hpp"
#include "runs.hpp"

namespace snugwalk::speed {

void latencyOfMarks(journey::Life &life, WatchedApp &watch)
{
    constexpr int warm = 5;
    constexpr int counted = 30;
    const std::string book = life.book().toStdString();
    BareBook bare(book + ".bare", entrySize(book));
    WalkModel &walk = journey::startWalk(life, QStringLiteral("Full round."));
    double durable = 0.0;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { durable = watch.clock(); });
    std::vector<double> toDisk;
    std::vector<double> toPicture;
    std::vector<double> commits;
    for (int i = 0; i < warm + counted; ++i) {
        while (walk.untold() > 0)
            journey::passLine(life);
        journey::passLine(life);
        const double release = watch.lastRelease();
        life.finger().waitFor([&] { return watch.lastFrame() > durable; }, QStringLiteral("the picture"));
        const double shown = watch.lastFrame();
        QTest::qWait(400); // the logbook is read again in between, as at a person's pace
        const double from = watch.clock();
        bare.commit();
        const double commit = watch.clock() - from;
        if (i < warm)
            continue;
        toDisk.push_back(durable - release);
        toPicture.push_back(shown - release);
        commits.push_back(commit);
    }
    QObject::disconnect(heard);
    const double disk = quantile(toDisk, 0.5);
    const double commit = quantile(commits, 0.5);
    std::printf(
        "tap to mark on the disk      %7.2f ms (95 %% %.2f), bare commit %7.2f ms (95 %% %.2f), ratio %.2f "
        "(budget 1.5)\n",
        disk, quantile(toDisk, 0.95), commit, quantile(commits, 0.95), disk / commit);
    std::printf("tap to the picture of it     %7.2f ms (95 %% %.2f)\n", quantile(toPicture, 0.5),
                quantile(toPicture, 0.95));
}

} // namespace snugwalk::speed

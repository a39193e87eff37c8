// SPDX-License-Identifier: Apache-2.0
// A wheel fitted beside the road: written down at the bench, its nuts due after the first miles that are
// logged, and again, until the look after the last rung is done.
#include <QAbstractItemModel>

#include "app_steps.hpp"
#include "due_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

const QString nuts = QStringLiteral("Wheel nut torque");

QString whenDue(Life &life)
{
    QAbstractItemModel &rows = *life.session().due()->rows();
    for (int row = 0; row < rows.rowCount(); ++row) {
        if (cell(rows, row, "title").toString() == nuts && cell(rows, row, "kind") == QStringLiteral("event"))
            return cell(rows, row, "when").toString();
    }
    return {};
}

bool isDueNow(Life &life)
{
    const QString when = whenDue(life);
    return when.startsWith(QStringLiteral("due now")) || when.startsWith(QStringLiteral("past due"));
}

void fit(Life &life)
{
    Finger &finger = life.finger();
    expect(whenDue(life).isEmpty(), QStringLiteral("the nuts wait for a wheel that nobody fitted"));
    finger.tap(QStringLiteral("Bench"));
    finger.tapStarting(QStringLiteral("to the questions on Wheel"));
    finger.tapStarting(QStringLiteral("Star"));
    life.arrive(QStringLiteral("bench_question"));
    finger.tapStarting(QStringLiteral("Tightened: the next"));
    life.shot(QStringLiteral("wheel-1-star"));
    finger.tap(QStringLiteral("Which wheel: wheel 2R"));
    finger.tapStarting(QStringLiteral("Write down the fitting"));
    finger.waitFor([&] { return !whenDue(life).isEmpty(); }, QStringLiteral("nuts in the due list"));
    expect(!isDueNow(life), QStringLiteral("the nuts are due before a mile was driven"));
    life.settle(); // the page grows by what is said of the nuts: a finger waits until it stands still
    finger.tapStarting(nuts);
    life.arrive(QStringLiteral("why"));
    life.shot(QStringLiteral("wheel-2-due-later"));
}

void logTrip(Life &life)
{
    life.finger().tap(QStringLiteral("Logbook"));
    life.finger().tap(QStringLiteral("trips"));
    life.finger().tapStarting(QStringLiteral("Take a file in"));
    life.finger().tap(QStringLiteral("Choose the file"));
    chooseFile(life, life.given(QStringLiteral("track")));
    life.finger().waitFor([&] { return !life.session().intake()->outcome().isEmpty(); },
                          QStringLiteral("the trip"));
    life.finger().tap(QStringLiteral("back"));
}

void drive(Life &life)
{
    expect(!whenDue(life).isEmpty() && !isDueNow(life), QStringLiteral("due before this drive"));
    logTrip(life);
    life.finger().waitFor([&] { return isDueNow(life); }, QStringLiteral("nuts due by the miles driven"));
    life.finger().tap(QStringLiteral("Due"));
    life.shot(QStringLiteral("wheel-3-") + life.given(QStringLiteral("name")));
    life.finger().tap(QStringLiteral("Rig"));
    startWalk(life, QStringLiteral("Before the road."));
    goToLine(life, nuts);
    writeDown(life, QStringLiteral("Pass"));
    finishWalk(life);
    life.finger().waitFor([&] { return !isDueNow(life); }, QStringLiteral("nuts done for this rung"));
}

} // namespace

Stories wheelStories() { return {{QStringLiteral("fit"), fit}, {QStringLiteral("drive"), drive}}; }

} // namespace snugwalk::journey

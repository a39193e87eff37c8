// SPDX-License-Identifier: Apache-2.0
// What a person does on every walk.
#include "app_steps.hpp"

#include <cstdio>

#include <QAbstractItemModel>
#include <QDir>
#include <QQuickWindow>
#include <QTest>

#include "settled.hpp"
#include "tape_model.hpp"

namespace snugwalk::journey {

void say(const QString &line)
{
    std::printf("%s\n", qPrintable(line));
    std::fflush(stdout);
}

QString placeOf(Wiring &app) { return app.window().property("currentPlace").toString(); }

void grab(Wiring &app, const QString &folder, const QString &name)
{
    (void)waitUntilSettled(app.session(), app.window());
    QDir().mkpath(folder);
    expect(app.window().grabWindow().save(folder + QLatin1Char('/') + name + QStringLiteral(".png")), name);
}

QVariant cell(const QAbstractItemModel &model, int row, const char *role)
{
    const auto names = model.roleNames();
    for (auto it = names.begin(); it != names.end(); ++it) {
        if (it.value() == role)
            return model.data(model.index(row, 0), it.key());
    }
    giveUp(QStringLiteral("no such role: ") + QString::fromLatin1(role));
}

int lineTitled(const WalkModel &walk, const QString &title)
{
    QAbstractItemModel &tape = *walk.property("tape").value<QAbstractItemModel *>();
    for (int row = 0; row < tape.rowCount(); ++row) {
        if (cell(tape, row, "title").toString() == title)
            return row;
    }
    giveUp(QStringLiteral("no line is called ") + title);
}

// Cautions come in full first; a person reads them and goes on.
void readCautions(Finger &finger, const WalkModel &walk)
{
    while (!walk.property("cautionPanel").toList().isEmpty()) {
        finger.tapStarting(QStringLiteral("read:"));
        QTest::qWait(20);
    }
}

void goToLine(Finger &finger, WalkModel &walk, const QString &title)
{
    finger.tap(QStringLiteral("all lines"));
    finger.tapStarting(title);
    const int line = lineTitled(walk, title);
    finger.waitFor([&] { return walk.property("current").toInt() == line; }, title);
    readCautions(finger, walk);
}

} // namespace snugwalk::journey

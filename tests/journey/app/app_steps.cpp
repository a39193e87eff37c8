// SPDX-License-Identifier: Apache-2.0
// What a person does on every walk.
#include "app_steps.hpp"

#include <cstdio>

#include <QAbstractItemModel>
#include <QMetaMethod>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTest>
#include <QUrl>

#include "tape_model.hpp"

namespace snugwalk::journey {

void say(const QString &line)
{
    std::printf("%s\n", qPrintable(line));
    std::fflush(stdout);
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

WalkModel &walkOf(Life &life) { return *life.session().walk(); }

int lineTitled(const WalkModel &walk, const QString &title)
{
    QAbstractItemModel &tape = *walk.property("tape").value<QAbstractItemModel *>();
    for (int row = 0; row < tape.rowCount(); ++row) {
        if (cell(tape, row, "title").toString() == title)
            return row;
    }
    giveUp(QStringLiteral("no line is called ") + title);
}

WalkModel &startWalk(Life &life, const QString &kind)
{
    life.finger().tap(QStringLiteral("Start a walk"));
    life.finger().tapStarting(kind);
    life.arrive(QStringLiteral("walk"));
    return walkOf(life);
}

void readCautions(Life &life)
{
    while (!walkOf(life).cautionPanel().isEmpty()) {
        life.finger().tapStarting(QStringLiteral("read:"));
        QTest::qWait(20);
    }
}

void goToLine(Life &life, const QString &title)
{
    WalkModel &walk = walkOf(life);
    const int line = lineTitled(walk, title);
    life.finger().tap(QStringLiteral("all lines"));
    life.finger().tapStarting(title);
    life.finger().waitFor([&] { return walk.current() == line; }, title);
    readCautions(life);
}

void writeDown(Life &life, const QString &word)
{
    WalkModel &walk = walkOf(life);
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { marked = true; });
    life.finger().tap(word);
    life.finger().waitFor([&] { return marked; }, QStringLiteral("the mark on the disk"));
    QObject::disconnect(heard);
}

// A pass asks for what is known to be open: each is still there, and the mark becomes an attention.
void passLine(Life &life)
{
    WalkModel &walk = walkOf(life);
    readCautions(life);
    if (walk.untold() == 0)
        return writeDown(life, QStringLiteral("Pass"));
    const QVariantList offered = walk.openFindings();
    life.finger().tap(QStringLiteral("Pass"));
    for (const QVariant &one : offered) {
        const QVariantMap finding = one.toMap();
        if (finding.value(QStringLiteral("status")).toString() == QStringLiteral("open"))
            life.finger().tap(QStringLiteral("Finding %1 now: still there, the same")
                                  .arg(finding.value(QStringLiteral("number")).toInt()));
    }
    writeDown(life, QStringLiteral("Write down"));
}

void finishWalk(Life &life)
{
    life.finger().tap(QStringLiteral("stop here"));
    life.finger().tap(QStringLiteral("Finish the walk"));
    life.arrive(QStringLiteral("rig"));
}

void goHomeTo(Life &life, const QString &word)
{
    while (!life.finger().sees(word))
        life.finger().tap(QStringLiteral("back"));
    life.finger().tap(word);
}

namespace {

// Delegates belong to what made them, items to the window's tree: both are looked through.
QObject *openDialog(QQuickItem &item)
{
    const auto owned = item.findChildren<QObject *>();
    for (QObject *one : owned) {
        if (one->inherits("QQuickFileDialog") && one->property("visible").toBool())
            return one;
    }
    const auto children = item.childItems();
    for (QQuickItem *child : children) {
        if (QObject *found = openDialog(*child))
            return found;
    }
    return nullptr;
}

// The one that opened the dialog and waits for what was chosen there: it has a signal of that name.
QObject *asker(QObject *dialog)
{
    for (QObject *up = dialog->parent(); up != nullptr; up = up->parent()) {
        const QMetaObject &meta = *up->metaObject();
        for (int i = meta.methodOffset(); i < meta.methodCount(); ++i) {
            if (meta.method(i).name() == "chosen")
                return up;
        }
    }
    return nullptr;
}

QObject *askerOfOpenDialog(Life &life)
{
    QObject *dialog = nullptr;
    life.finger().waitFor(
        [&] { return (dialog = openDialog(*life.app().window().contentItem())) != nullptr; },
        QStringLiteral("the dialog for files"));
    QObject *who = asker(dialog);
    expect(who != nullptr, QStringLiteral("nobody waits for a file"));
    expect(QMetaObject::invokeMethod(dialog, "reject"), QStringLiteral("the dialog does not close"));
    return who;
}

} // namespace

void chooseFile(Life &life, const QString &file)
{
    const QString address = QUrl::fromLocalFile(file).toString();
    expect(QMetaObject::invokeMethod(askerOfOpenDialog(life), "chosen", Q_ARG(QString, address)),
           QStringLiteral("not one file is waited for"));
}

void chooseFiles(Life &life, const QStringList &files)
{
    QVariantList addresses;
    for (const QString &file : files)
        addresses << QUrl::fromLocalFile(file).toString();
    expect(QMetaObject::invokeMethod(askerOfOpenDialog(life), "chosen", Q_ARG(QVariant, QVariant(addresses))),
           QStringLiteral("no files are waited for"));
}

void saveMore(Life &life, const QString &form, const QString &given)
{
    const QString file = life.given(given.isEmpty() ? form : given);
    life.finger().tap(QStringLiteral("Save: ") + form);
    chooseFile(life, file);
    const QString name = file.section(QLatin1Char('/'), -1);
    const ReportModel &reports = *life.session().reports();
    life.finger().waitFor([&] { return !reports.isBusy() && reports.saved() == name; },
                          QStringLiteral("the file ") + name, 60'000);
    expect(life.finger().reads(name), QStringLiteral("the page does not say what was written"));
}

void saveReport(Life &life, const QString &kind, const QString &form, const QString &shot)
{
    goHomeTo(life, QStringLiteral("Logbook"));
    life.finger().tap(QStringLiteral("reports"));
    life.finger().tap(kind);
    life.finger().waitFor([&] { return !life.session().reports()->isBusy(); }, QStringLiteral("its pages"),
                          60'000);
    life.shot(shot);
    saveMore(life, form);
}

} // namespace snugwalk::journey

// SPDX-License-Identifier: Apache-2.0
// Files are made on the worker's thread; going over to one is the program's.
#include "books_model.hpp"

#include <QFileInfo>
#include <QUrl>

#include "logbook/check.hpp"

namespace snugwalk {
namespace {

std::string localFile(const QString &typed)
{
    const QUrl url(typed);
    return (url.isLocalFile() ? url.toLocalFile() : typed).toStdString();
}

} // namespace

BooksModel::BooksModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_hasDemo(desk->parts->books.hasDemo)
{}

bool BooksModel::isDemoOffered() const { return places().makeDemo && places().open && !isDemo(); }

bool BooksModel::isDemo() const { return !places().demo.isEmpty() && places().current == places().demo; }

QVariantList BooksModel::known() const
{
    QVariantList list;
    for (const QString &file : places().known)
        list << QVariantMap{{QStringLiteral("file"), file},
                            {QStringLiteral("name"), QFileInfo(file).completeBaseName()},
                            {QStringLiteral("current"), file == places().current}};
    return list;
}

void BooksModel::begin(const QString &step)
{
    m_busy = true;
    m_step = step;
    m_outcome.clear();
    Q_EMIT changed();
}

void BooksModel::end(const QString &outcome)
{
    m_busy = false;
    m_step.clear();
    m_outcome = outcome;
    Q_EMIT changed();
}

void BooksModel::fail(const Error &error)
{
    end({});
    m_desk->refuse(error);
}

void BooksModel::openDemo()
{
    if (m_busy || !isDemoOffered())
        return;
    begin(tr("Making the invented rig …"));
    // The session waits for its worker before its models go, so that `this` is there for every answer.
    m_desk->worker->runBeside([this, make = places().makeDemo] {
        const auto tell = [this](int played, int all) {
            const auto show = [this, played, all] {
                m_step = tr("Making the invented rig: %1 of %2").arg(played).arg(all);
                Q_EMIT changed();
            };
            QMetaObject::invokeMethod(this, show, Qt::QueuedConnection);
        };
        const Status made = make(tell);
        const auto goOver = [this, made] {
            if (!made)
                return fail(made.error());
            end({});
            places().open(places().demo, {});
        };
        QMetaObject::invokeMethod(this, goOver, Qt::QueuedConnection);
    });
}

void BooksModel::leaveDemo(bool forget)
{
    if (isDemo() && places().open)
        places().open(places().own, forget ? places().demo : QString());
}

void BooksModel::forgetDemo()
{
    if (isDemo() || !m_hasDemo || !places().open)
        return;
    m_hasDemo = false;
    places().open({}, places().demo);
    end(tr("The invented rig is gone from this device."));
}

void BooksModel::openBook(const QString &file)
{
    if (file != places().current && places().open)
        places().open(file, {});
}

void BooksModel::backUp(const QString &to)
{
    if (m_busy || to.isEmpty())
        return;
    begin(tr("Copying the logbook with its photos …"));
    const std::string target = localFile(to);
    m_desk->worker->run<std::monostate>(
        this, [target](Logbook &book) { return backupLogbook(book, target); },
        [this, target](const Status &copied) {
            if (!copied)
                return fail(copied.error());
            end(tr("Copied with its photos: %1").arg(QString::fromStdString(target)));
        });
}

void BooksModel::restore(const QString &from)
{
    if (m_busy || !canRestore() || from.isEmpty())
        return;
    begin(tr("Copying and checking the backup …"));
    // beside the open logbook, for that one may be why a backup is wanted
    m_desk->worker->runBeside([this, restore = places().restore, backup = localFile(from)] {
        const Result<std::string> file = restore(backup);
        const auto goOver = [this, file] {
            if (!file)
                return fail(file.error());
            end(tr("Checked and opened: %1").arg(QString::fromStdString(*file)));
            places().open(QString::fromStdString(*file), {});
        };
        QMetaObject::invokeMethod(this, goOver, Qt::QueuedConnection);
    });
}

} // namespace snugwalk

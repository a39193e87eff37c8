// SPDX-License-Identifier: Apache-2.0
// The logbooks of this device, and going over from one to another: all is made anew for the next, so that
// nothing of one can get into the other.
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QQuickWindow>

#include "demo/load_demo.hpp"
#include "device/device.hpp"
#include "logbook/check.hpp"
#include "wiring.hpp"

namespace snugwalk {
namespace {

const QString ending = QStringLiteral(".snugwalk");

// A logbook with all that is kept beside it. Whoever opens it afterwards finds nothing.
void removeBook(const QString &file)
{
    for (const char *part : {"", "-wal", "-shm", "-journal"})
        QFile::remove(file + QLatin1String(part));
    for (const char *part : {".photos", ".taken", ".stores"})
        QDir(file + QLatin1String(part)).removeRecursively();
}

QString besideOwn(const QString &own, const QString &name)
{
    return QFileInfo(own).absoluteDir().filePath(name + ending);
}

QString freeName(const QString &own)
{
    for (int number = 1;; ++number) {
        const QString file = besideOwn(own, QStringLiteral("restored-%1").arg(number));
        if (!QFile::exists(file) && !QFile::exists(file + QStringLiteral(".photos")))
            return file;
    }
}

} // namespace

BookPlaces Wiring::bookPlaces()
{
    BookPlaces books;
    books.current = m_bookFile;
    books.own = m_ownBook;
    books.demo = besideOwn(m_ownBook, QStringLiteral("invented-rig"));
    books.hasDemo = QFile::exists(books.demo);
    const QDir folder = QFileInfo(m_ownBook).absoluteDir();
    for (const QString &name : folder.entryList({u'*' + ending}, QDir::Files, QDir::Name)) {
        if (folder.filePath(name) != books.demo)
            books.known << folder.filePath(name);
    }
    books.makeDemo = [this, demo = books.demo](const std::function<void(int, int)> &progress) {
        return makeDemo(demo, progress);
    };
    books.restore = [this, target = freeName(m_ownBook)](const std::string &backup) -> Result<std::string> {
        const Result<DeviceKey> key = deviceKey(dataFolder());
        if (!key)
            return key.error();
        RandomIds ids;
        const auto report =
            restoreLogbook(backup, target.toStdString(), {*key, deviceLabel(), m_clock.get(), &ids, false});
        return report ? Result<std::string>(target.toStdString()) : report.error();
    };
    books.open = [this](const QString &file, const QString &forgotten) {
        // once the page that asked has had its say
        QMetaObject::invokeMethod(
            qGuiApp, [this, file, forgotten] { changeBook(file, forgotten); }, Qt::QueuedConnection);
    };
    return books;
}

// Under another name until it is whole: a killed process leaves no half of a demo.
Status Wiring::makeDemo(const QString &demo, const std::function<void(int, int)> &progress)
{
    if (QFile::exists(demo))
        return done();
    const QString making = demo + QStringLiteral(".making");
    removeBook(making);
    removeBook(demo);
    QDir().mkpath(QFileInfo(demo).absolutePath());
    const Result<DemoReport> report = loadDemo(making.toStdString(), builtInDemo(), m_codec, progress);
    if (!report) {
        removeBook(making);
        return report.error();
    }
    const QString photos = QStringLiteral(".photos");
    if (!QFile::rename(making + photos, demo + photos) || !QFile::rename(making, demo)) {
        removeBook(making);
        removeBook(demo);
        return Error{Errc::Io, "the invented rig cannot be kept", demo.toStdString(), "make room there"};
    }
    return done();
}

void Wiring::changeBook(const QString &file, const QString &forgotten)
{
    if (!file.isEmpty()) {
        const QRect place = m_window->geometry();
        m_preferences = m_session->preferences();
        QGuiApplication::setQuitOnLastWindowClosed(false); // one window goes before the next comes
        m_root.reset();
        m_pages.reset();
        m_engine.reset();
        m_window = nullptr;
        m_session.reset();
        m_bookFile = file;
        if (file != besideOwn(m_ownBook, QStringLiteral("invented-rig"))) {
            m_ownBook = file;
            if (m_options.book.isEmpty())
                m_preferences.book = file == usualBook() ? QString() : file;
            if (m_mode == Mode::Live)
                writePreferences(preferencesFile(), m_preferences);
        }
        beginPages();
        makeSession();
        const Status loaded = loadPages();
        if (!loaded)
            return QGuiApplication::exit(exitCode(loaded.error().code));
        m_window->setGeometry(place);
        QGuiApplication::setQuitOnLastWindowClosed(true);
    }
    if (!forgotten.isEmpty())
        removeBook(forgotten);
}

} // namespace snugwalk

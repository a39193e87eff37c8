// SPDX-License-Identifier: Apache-2.0
// While files come in, the thread that draws calls for no file, no database and no picture: in the real app,
// with its pages, counted at the libraries' own functions.
#include <QQuickItem>
#include <QQuickStyle>
#include <QTemporaryDir>
#include <QUrl>
#include <QtTest>

#include "app_steps.hpp"
#include "calls_by_thread.hpp"
#include "demo/load_demo.hpp"
#include "image/plain_codec.hpp"
#include "logbook/sqlite.hpp"

using namespace snugwalk;
using namespace snugwalk::journey;
using snugwalk::test::Calls;
using snugwalk::test::CallWatch;

namespace {

const QString photoFolder = QStringLiteral(SNUGWALK_SOURCE_DIR "/demo-rig/photos");

// A point a second, northward.
QString writeTrack(const QString &file, int points)
{
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly))
        return {};
    out.write("<?xml version=\"1.0\"?><gpx version=\"1.1\" creator=\"test\" "
              "xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
    const QDateTime start(QDate(2026, 11, 1), QTime(1, 0), Qt::UTC);
    for (int i = 0; i < points; ++i)
        out.write(QStringLiteral("<trkpt lat=\"%1\" lon=\"170.0\"><time>%2</time></trkpt>\n")
                      .arg(-44.0 + i * 1.5e-4, 0, 'f', 7)
                      .arg(start.addSecs(i).toString(Qt::ISODate))
                      .toUtf8());
    out.write("</trkseg></trk></gpx>");
    return file;
}

// The demo's photos, each told apart from the others by a comment behind its start [ISO/IEC 10918-1,
// B.2.4.5].
QStringList writePhotos(const QString &folder, int count)
{
    const QStringList names = QDir(photoFolder).entryList({QStringLiteral("*.jpg")}, QDir::Files);
    QStringList files;
    for (int i = 0; i < count && !names.isEmpty(); ++i) {
        QFile in(photoFolder + QLatin1Char('/') + names[i % names.size()]);
        QFile out(folder + QStringLiteral("/%1.jpg").arg(i));
        if (!in.open(QIODevice::ReadOnly) || !out.open(QIODevice::WriteOnly))
            return {};
        QByteArray bytes = in.readAll();
        const QByteArray note = "number " + QByteArray::number(i);
        bytes.insert(2, QByteArray("\xff\xfe") + '\0' + static_cast<char>(note.size() + 2) + note);
        out.write(bytes);
        files << out.fileName();
    }
    return files;
}

QByteArray told(const Calls &calls)
{
    std::string all;
    for (const auto *list : {&calls.files, &calls.database, &calls.pictures}) {
        for (const std::string &one : *list)
            all += one + "; ";
    }
    return QByteArray::fromStdString(all.substr(0, 2000));
}

} // namespace

class TstGuiThread : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void everyKindOfCallIsCounted();
    void aTrackComesIn();
    void photosComeIn();
    void aMarkIsWritten();

private:
    void takeIn(const QString &track);
    void choose(const QStringList &photos);

    QTemporaryDir m_folder;
    std::unique_ptr<journey::Life> m_life;
};

void TstGuiThread::initTestCase()
{
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QString book = m_folder.filePath(QStringLiteral("demo.snugwalk"));
    QVERIFY(
        loadDemo(book.toStdString(), demoFolder(SNUGWALK_SOURCE_DIR "/demo-rig"), PlainCodec()).has_value());
    m_life = std::make_unique<journey::Life>(
        journey::Life::Given{{}, book, {}, QStringLiteral("2026-11-20T08:10:00+13:00"), {}},
        Wiring::Mode::Still);
}

// What is not counted here would not be counted below.
void TstGuiThread::everyKindOfCallIsCounted()
{
    CallWatch watch;
    QVERIFY(QFile(photoFolder + QStringLiteral("/rivet-2026-11.jpg")).exists());
    QVERIFY(!QImage(photoFolder + QStringLiteral("/rivet-2026-11.jpg")).isNull());
    const std::string file = m_folder.filePath(QStringLiteral("other.db")).toStdString();
    QVERIFY(sqlite::Connection::open(file, sqlite::OpenMode::Create).has_value());
    const CallWatch::Seen seen = watch.take();
    QVERIFY(seen.here.files.size() >= 2);
    QVERIFY(!seen.here.database.empty());
    QVERIFY(!seen.here.pictures.empty());
}

void TstGuiThread::takeIn(const QString &track)
{
    QQuickItem *page = m_life->finger().itemOfType(QStringLiteral("ImportPage"));
    QVERIFY(page != nullptr);
    QVERIFY(QMetaObject::invokeMethod(page, "begin", Q_ARG(QString, QUrl::fromLocalFile(track).toString())));
    m_life->settle();
    QVERIFY(!m_life->session().intake()->outcome().isEmpty());
}

void TstGuiThread::aTrackComesIn()
{
    m_life->finger().tap(QStringLiteral("Logbook"));
    m_life->finger().tap(QStringLiteral("trips"));
    m_life->finger().tapStarting(QStringLiteral("Take a file in"));
    m_life->settle();
    // once before, so that letters of another kind need no font
    takeIn(writeTrack(m_folder.filePath(QStringLiteral("first.gpx")), 200));
    const QString track = writeTrack(m_folder.filePath(QStringLiteral("track.gpx")), 20'000);
    QVERIFY(QFileInfo(track).size() > 1'000'000);
    CallWatch watch;
    takeIn(track);
    const CallWatch::Seen seen = watch.take();
    QVERIFY2(seen.here.none(), told(seen.here));
    QVERIFY(!seen.elsewhere.files.empty());
    QVERIFY(!seen.elsewhere.database.empty());
}

void TstGuiThread::choose(const QStringList &photos)
{
    QQuickItem *choice = m_life->finger().itemOfType(QStringLiteral("PhotoChoice"));
    QVERIFY(choice != nullptr);
    QVariantList addresses;
    for (const QString &file : photos)
        addresses << QUrl::fromLocalFile(file).toString();
    QVERIFY(QMetaObject::invokeMethod(choice, "add", Q_ARG(QVariant, QVariant(addresses))));
    m_life->settle();
}

void TstGuiThread::photosComeIn()
{
    const QStringList photos = writePhotos(m_folder.path(), 21);
    QCOMPARE(photos.size(), 21);
    goHomeTo(*m_life, QStringLiteral("Rig"));
    startWalk(*m_life, QStringLiteral("Full round."));
    readCautions(*m_life);
    m_life->finger().tap(QStringLiteral("Attention"));
    m_life->finger().tapStarting(QStringLiteral("What: "));
    m_life->finger().tapStarting(QStringLiteral("grade 2:"));
    m_life->settle();
    choose(photos.mid(0, 1));
    CallWatch watch;
    choose(photos.mid(1));
    writeDown(*m_life, QStringLiteral("Write down"));
    m_life->settle();
    const CallWatch::Seen seen = watch.take();
    QVERIFY2(seen.here.none(), told(seen.here));
    QVERIFY(seen.elsewhere.files.size() >= 20);
    QVERIFY(seen.elsewhere.pictures.size() >= 20);
    QVERIFY(!seen.elsewhere.database.empty());
}

void TstGuiThread::aMarkIsWritten()
{
    passLine(*m_life);
    CallWatch watch;
    passLine(*m_life);
    m_life->settle();
    const CallWatch::Seen seen = watch.take();
    QVERIFY2(seen.here.none(), told(seen.here));
    QVERIFY(!seen.elsewhere.database.empty());
}

QTEST_MAIN(TstGuiThread)
#include "tst_gui_thread.moc"

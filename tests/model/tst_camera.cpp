// SPDX-License-Identifier: Apache-2.0
// Photos taken, and those that wait for their marks: none is lost, none is kept twice.
#include <QDir>
#include <QtTest>

#include "app_fixture.hpp"
#include "camera/make_camera.hpp"
#include "keys/hash.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QString photoFolder() { return QFileInfo(photoFile("front-seam-2025-03.jpg")).absolutePath(); }

// The picture that a recorded camera serves first.
std::string firstPicture()
{
    const QDir folder(photoFolder());
    const QString name = folder.entryList({QStringLiteral("*.jpg")}, QDir::Files, QDir::Name).first();
    return slurp(folder.filePath(name).toStdString());
}

std::string pathOf(const QString &address) { return QUrl(address).toLocalFile().toStdString(); }

} // namespace

class TstCamera : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void withoutACameraNothingIsOffered();
    void aPhotoTakenWaitsForItsMarkAndLeavesWithIt();
    void photosOfFilesWaitTooAndCanBePutAway();
    void aFolderWithoutPicturesIsNoCamera();
};

void TstCamera::withoutACameraNothingIsOffered()
{
    AppFixture app;
    CameraModel &camera = *app.open().camera();
    QVERIFY(!camera.isThere());
    camera.start();
    camera.take();
    QVERIFY(!camera.isBusy());
    QVERIFY(camera.waiting().isEmpty());
}

void TstCamera::aPhotoTakenWaitsForItsMarkAndLeavesWithIt()
{
    AppFixture app;
    const auto source = recordedCamera(photoFolder().toStdString());
    QVERIFY(source.has_value());
    app.parts.camera = source->get();
    CameraModel &camera = *app.open().camera();
    QVERIFY(camera.isThere());
    QVERIFY(!camera.isLive());
    camera.start();
    QVERIFY(camera.isLive());
    QSignalSpy taken(&camera, &CameraModel::taken);
    camera.take();
    QCOMPARE(taken.size(), 1);
    QCOMPARE(camera.waiting().size(), 1);
    const std::string bytes = slurp(pathOf(camera.waiting().first()));
    QVERIFY(bytes == firstPicture()); // the bytes of the camera, untouched

    // it survives the program
    app.open();
    app.start(QStringLiteral("full_round"));
    QTRY_COMPARE(app.session().camera()->waiting().size(), 1);
    const QString file = app.session().camera()->waiting().first();
    app.walk().attention({{QStringLiteral("defect"), QStringLiteral("other")},
                          {QStringLiteral("grade"), 2},
                          {QStringLiteral("photos"), QStringList{file}}});
    app.settle();
    QTRY_COMPARE(app.session().camera()->waiting().size(), 0);
    QVERIFY(!QFile::exists(QUrl(file).toLocalFile()));
    const FindingModel &findings = *app.session().rig()->findings();
    QCOMPARE(findings.rowCount(), 1);
    QCOMPARE(cell(findings, 0, "photo").toString().toStdString(), blake2b(bytes).text());
}

void TstCamera::photosOfFilesWaitTooAndCanBePutAway()
{
    AppFixture app;
    CameraModel &camera = *app.open().camera();
    const QString file = QUrl::fromLocalFile(photoFile("front-seam-2025-03.jpg")).toString();
    camera.keep({file, file});
    QTRY_COMPARE(camera.waiting().size(), 2);
    QVERIFY(QFile::exists(photoFile("front-seam-2025-03.jpg"))); // copied, not moved
    camera.putAway(camera.waiting().first());
    QTRY_COMPARE(camera.away(), 1);
    QCOMPARE(camera.waiting().size(), 1);
    camera.bringBack();
    QTRY_COMPARE(camera.waiting().size(), 2);
    camera.putAway(file); // not in the folder: left alone
    app.settle();
    QVERIFY(QFile::exists(photoFile("front-seam-2025-03.jpg")));
}

void TstCamera::aFolderWithoutPicturesIsNoCamera()
{
    const TempFolder empty;
    const auto source = recordedCamera(empty.path().string());
    QVERIFY(!source.has_value());
    QCOMPARE(source.error().code, Errc::NotFound);
}

QTEST_MAIN(TstCamera)
#include "tst_camera.moc"

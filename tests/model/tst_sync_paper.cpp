// SPDX-License-Identifier: Apache-2.0
// A code read off a screen, a key on paper and the way back from it, photos that are asked for.
#include <cmath>

#include <QSignalSpy>
#include <QtTest>

#include "camera/make_camera.hpp"
#include "logbook/photo_store.hpp"
#include "sync_pair.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstSyncPaper : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aCodeIsReadOutOfAPicture();
    void theCameraReadsACode();
    void aPictureWithoutACodeIsTold();
    void onlyAnOwnerMakesAPaper();
    void thePaperBringsTheRigBack();
    void anotherMarkIsRefused();
    void photosInFullComeWhenAskedFor();
};

namespace {

// A screen photographed askew, in a dim light, on a dark desk.
QImage photographed(const QImage &code)
{
    QImage photo(1400, 1100, QImage::Format_RGB32);
    const QTransform lie = QTransform()
                               .translate(700, 550)
                               .rotate(23)
                               .shear(0.08, 0.02)
                               .scale(1.3, 1.2)
                               .translate(-code.width() / 2.0, -code.height() / 2.0);
    const QTransform back = lie.inverted();
    quint32 noise = 1;
    for (int y = 0; y < photo.height(); ++y) {
        for (int x = 0; x < photo.width(); ++x) {
            const QPointF at = back.map(QPointF(x, y));
            const QPoint on(static_cast<int>(std::floor(at.x())), static_cast<int>(std::floor(at.y())));
            const int grey = code.rect().contains(on) ? qGray(code.pixel(on)) * 120 / 255 + 40 : 30;
            noise = noise * 1664525U + 1013904223U;
            const int seen = std::clamp(grey + static_cast<int>(noise >> 28) - 8, 0, 255);
            photo.setPixel(x, y, qRgb(seen, seen, seen));
        }
    }
    return photo;
}

// Blanks and numbers of lines are for people.
QString plain(const QString &words)
{
    QStringList list;
    for (const QString &word : words.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts)) {
        if (!word.at(0).isDigit())
            list << word;
    }
    return list.join(u' ');
}

struct Owner : Device {
    Owner() : Device(AppFixture::Book::Tandem, "owner") {}
    void offer()
    {
        share().offer(QStringLiteral("helper"), {});
        app.settle();
    }
};

} // namespace

void TstSyncPaper::aCodeIsReadOutOfAPicture()
{
    Owner owner;
    owner.offer();
    Device other(AppFixture::Book::Empty, "other");
    QVERIFY(other.sync().reader()->isAble());
    const QImage code = codePicture(owner.share().picture());
    for (const QImage &picture : {code, photographed(code)}) {
        const QString file = QString::fromStdString(other.app.folder().file("seen.png"));
        QVERIFY(picture.save(file));
        QSignalSpy found(other.sync().reader(), &CodeReader::found);
        other.sync().reader()->lookAtFile(QUrl::fromLocalFile(file).toString());
        other.app.settle();
        QCOMPARE(found.size(), 1);
        QCOMPARE(found.first().first().toString(), plain(owner.share().words()));
        QVERIFY(other.sync().reader()->fault().isEmpty());
    }
}

void TstSyncPaper::theCameraReadsACode()
{
    Owner owner;
    owner.offer();
    Device other(AppFixture::Book::Empty, "other");
    const std::string folder = other.app.folder().file("seen");
    std::filesystem::create_directories(folder);
    QVERIFY(photographed(codePicture(owner.share().picture()))
                .save(QString::fromStdString(folder + "/1.jpg"), nullptr, 80));
    const auto source = recordedCamera(folder);
    QVERIFY(source.has_value());
    other.app.parts.camera = source->get();
    other.app.open();
    CameraModel &camera = *other.app.session().camera();
    QSignalSpy found(other.sync().reader(), &CodeReader::found);
    other.sync().reader()->look(&camera); // nothing is seen yet
    QVERIFY(!other.sync().reader()->isBusy());
    camera.start();
    QTRY_VERIFY(camera.isLive());
    other.sync().reader()->look(&camera);
    other.app.settle();
    QCOMPARE(found.size(), 1);
    QCOMPARE(found.first().first().toString(), plain(owner.share().words()));
    other.app.close();
}

void TstSyncPaper::aPictureWithoutACodeIsTold()
{
    Device other(AppFixture::Book::Empty, "other");
    QSignalSpy found(other.sync().reader(), &CodeReader::found);
    const auto faultOf = [&](const QString &file) {
        other.sync().reader()->lookAtFile(file);
        other.app.settle();
        return what(other.sync().reader()->fault());
    };
    QVERIFY(faultOf(photoFile("rivet-2026-09.jpg")).contains(QStringLiteral("No code")));
    const QString text = QString::fromStdString(other.app.folder().file("text.png"));
    QFile file(text);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write("no picture") > 0);
    file.close();
    QVERIFY(faultOf(text).contains(QStringLiteral("no picture")));
    QVERIFY(faultOf(QStringLiteral("/no/such/file.png")).contains(QStringLiteral("/no/such/file.png")));
    QCOMPARE(found.size(), 0);
}

void TstSyncPaper::onlyAnOwnerMakesAPaper()
{
    Device alone(AppFixture::Book::Tandem, "alone");
    alone.sync().paper()->make();
    alone.app.settle();
    QVERIFY(!what(alone.sync().paper()->fault()).isEmpty());
    QVERIFY(alone.sync().paper()->words().isEmpty());
    Pair pair;
    pair.other.sync().paper()->make();
    pair.other.app.settle();
    QVERIFY(what(pair.other.sync().paper()->fault()).contains(QStringLiteral("owner")));
    QCOMPARE(pair.owner.sync().devices().size(), 2);
}

void TstSyncPaper::thePaperBringsTheRigBack()
{
    Pair pair;
    PaperModel &paper = *pair.owner.sync().paper();
    paper.make();
    pair.owner.app.settle();
    QCOMPARE(paper.step(), QStringLiteral("written"));
    QCOMPARE(plain(paper.words()).split(u' ').size(), 24);
    QCOMPARE(pair.owner.sync().devices().size(), 3); // the paper is one of them
    const QString words = paper.words();
    const QString mark = paper.mark();
    pair.owner.exchange();
    paper.clear();
    QVERIFY(paper.words().isEmpty());

    Device fresh(AppFixture::Book::Empty, "fresh");
    fresh.addStore(pair.folder());
    fresh.sync().paper()->recover(QStringLiteral("stick"), words, mark);
    fresh.app.settle();
    QVERIFY2(fresh.sync().paper()->fault().isEmpty(), qPrintable(what(fresh.sync().paper()->fault())));
    QCOMPARE(fresh.sync().paper()->step(), QStringLiteral("owner"));
    QVERIFY(fresh.sync().paper()->isCompared());
    fresh.exchange();
    QVERIFY(fresh.app.session().hasRig());
    QVERIFY(fresh.sync().isOwner());
    QCOMPARE(fresh.app.session().rig()->name(), pair.owner.app.session().rig()->name());
}

void TstSyncPaper::anotherMarkIsRefused()
{
    Pair pair;
    pair.owner.sync().paper()->make();
    pair.owner.app.settle();
    const QString words = pair.owner.sync().paper()->words();
    pair.owner.exchange();
    Device fresh(AppFixture::Book::Empty, "fresh");
    fresh.addStore(pair.folder());
    const auto faultOf = [&](const QString &typed, const QString &mark) {
        fresh.sync().paper()->recover(QStringLiteral("stick"), typed, mark);
        fresh.app.settle();
        return what(fresh.sync().paper()->fault());
    };
    Owner elsewhere; // a rig of its own
    elsewhere.offer();
    elsewhere.sync().paper()->make();
    elsewhere.app.settle();
    QVERIFY(faultOf(words, elsewhere.sync().paper()->mark()).contains(QStringLiteral("another mark")));
    QVERIFY(faultOf(elsewhere.sync().paper()->words(), {}).contains(QStringLiteral("no rig of that key")));
    QVERIFY(!faultOf(pair.owner.sync().paper()->mark(), {}).isEmpty()); // seven words are no key
    QVERIFY(!fresh.sync().isJoining());
    QVERIFY(faultOf(words, {}).isEmpty());
    QVERIFY(!fresh.sync().paper()->isCompared());
}

void TstSyncPaper::photosInFullComeWhenAskedFor()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("full_round"));
    pair.owner.mark([](WalkModel &walk) {
        walk.attention({{QStringLiteral("defect"), QStringLiteral("worn")},
                        {QStringLiteral("grade"), 2},
                        {QStringLiteral("photos"), QStringList{photoFile("rivet-2026-09.jpg")}}});
    });
    QVERIFY(pair.owner.sync().elsewhere().isEmpty());
    pair.owner.exchange();
    pair.other.exchange();
    QCOMPARE(pair.other.sync().elsewhere().size(), 1);
    const QString photo = pair.other.sync().elsewhere().first();
    const PhotoStore folder(pair.other.app.file() + ".photos");
    QVERIFY(!folder.original(*Hash::parse(photo.toStdString())).has_value());
    pair.other.sync().ask(photo);
    pair.other.app.settle();
    QVERIFY(pair.other.sync().asked().startsWith(QStringLiteral("1 original")));
    pair.other.exchange();
    QVERIFY(pair.other.sync().elsewhere().isEmpty());
    QFile taken(photoFile("rivet-2026-09.jpg"));
    QVERIFY(taken.open(QIODevice::ReadOnly));
    const auto arrived = folder.original(*Hash::parse(photo.toStdString()));
    QVERIFY(arrived.has_value());
    QCOMPARE(QByteArray::fromStdString(*arrived), taken.readAll());
}

QTEST_MAIN(TstSyncPaper)
#include "tst_sync_paper.moc"

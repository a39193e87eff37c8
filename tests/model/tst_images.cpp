// SPDX-License-Identifier: Apache-2.0
// Photos for the pages: read off the drawing thread, upright, never larger than asked for.
#include <QImageReader>
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/photo_store.hpp"
#include "photo_provider.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstImages : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void qtIsToldToLoadThemAside();
    void theOriginalComesInTheSizeAskedFor();
    void theThumbnailIsSmall();
    void aChosenFileIsShownBeforeItIsWrittenDown();
    void anUnknownNameGivesNoPicture();
};

namespace {

struct OnePhoto {
    TempFolder folder;
    QString hash;
    QSize size;

    OnePhoto()
    {
        const QString file = photoFile("front-seam-2025-03.jpg");
        PhotoStore store(folder.path());
        const QtCodec codec;
        const Result<PhotoFacts> facts = store.add(slurp(file.toStdString()), codec);
        SNUG_ASSERT(facts.has_value());
        hash = QString::fromStdString(facts->hash.text());
        size = QImageReader(file).size();
    }
};

} // namespace

void TstImages::qtIsToldToLoadThemAside()
{
    const PhotoProvider provider("nowhere");
    QVERIFY(provider.flags().testFlag(QQmlImageProviderBase::ForceAsynchronousImageLoading));
}

void TstImages::theOriginalComesInTheSizeAskedFor()
{
    const OnePhoto one;
    PhotoProvider provider(one.folder.path());
    QSize told;
    const QImage whole = provider.requestImage(QStringLiteral("full/") + one.hash, &told, {});
    QCOMPARE(whole.size(), one.size);
    QCOMPARE(told, one.size);
    const QImage half = provider.requestImage(QStringLiteral("full/") + one.hash, &told, one.size / 2);
    QVERIFY(half.width() <= one.size.width() / 2 + 1);
    QVERIFY(half.height() <= one.size.height() / 2 + 1);
    const QImage larger = provider.requestImage(QStringLiteral("full/") + one.hash, &told, one.size * 4);
    QCOMPARE(larger.size(), one.size);
}

void TstImages::theThumbnailIsSmall()
{
    const OnePhoto one;
    PhotoProvider provider(one.folder.path());
    const QImage thumb = provider.requestImage(QStringLiteral("thumb/") + one.hash, nullptr, {});
    QVERIFY(!thumb.isNull());
    QCOMPARE(std::max(thumb.width(), thumb.height()),
             std::min(thumbnailEdge, std::max(one.size.width(), one.size.height())));
}

void TstImages::aChosenFileIsShownBeforeItIsWrittenDown()
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("Dach 1 ü+.png"));
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::red);
    QVERIFY(picture.save(file));
    const auto named = [](const QString &address) { // as Picture.qml has it
        return QStringLiteral("file/") +
               QString::fromLatin1(address.toUtf8().toBase64().replace('/', '_').replace('+', '-'));
    };
    PhotoProvider provider("nowhere");
    for (const QString &address : {QUrl::fromLocalFile(file).toString(), file}) {
        const QImage shown = provider.requestImage(named(address), nullptr, {});
        QCOMPARE(shown.size(), picture.size());
        QCOMPARE(shown.pixelColor(20, 15), QColor(Qt::red));
    }
    QVERIFY(provider.requestImage(named(file + u'x'), nullptr, {}).isNull());
    QVERIFY(provider.requestImage(QStringLiteral("file/%%%"), nullptr, {}).isNull());
}

void TstImages::anUnknownNameGivesNoPicture()
{
    const OnePhoto one;
    PhotoProvider provider(one.folder.path());
    for (const QString &id : {QStringLiteral("thumb/"), QStringLiteral("thumb/../../etc/passwd"),
                              QStringLiteral("full/") + QString(64, u'0'), QString(), QStringLiteral("///")})
        QVERIFY(provider.requestImage(id, nullptr, {}).isNull());
}

QTEST_MAIN(TstImages)
#include "tst_images.moc"

// SPDX-License-Identifier: Apache-2.0
// Two devices over one folder: they meet, exchange, and are told what does not go.
#include <QProcess>
#include <QtTest>

#include "sync/words.hpp"
#include "sync_pair.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstSync : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aRigThatIsNotSharedWaitsForNothing();
    void theRigComesOverTheStore();
    void anotherReaderReadsThePicture();
    void theWrongWordsAreTold();
    void whatIsWrittenWaitsQuietly();
    void aFileIsHandedOver();
    void placesThatAreNoneAreTold();
    void aStoreThatIsAwayIsTold();
    void anExchangeStopsWhereNothingIsLost();
};

void TstSync::aRigThatIsNotSharedWaitsForNothing()
{
    Device device(AppFixture::Book::Tandem, "owner");
    QVERIFY(!device.sync().isShared());
    QVERIFY(device.sync().mark().isEmpty());
    QVERIFY(device.sync().waiting().isEmpty());
    QVERIFY(device.sync().devices().isEmpty());
    QVERIFY(device.sync().standing().contains(QStringLiteral("this device only")));
    device.share().offer(QStringLiteral("helper"), QStringLiteral("soon"));
    QVERIFY(what(device.share().fault()).contains(QStringLiteral("soon")));
    QVERIFY(!device.sync().isShared());
}

void TstSync::theRigComesOverTheStore()
{
    Pair pair("technician");
    QCOMPARE(pair.codes.at(0).size(), 7); // six digits and the blank between
    QCOMPARE(pair.codes.at(0), pair.codes.at(1));
    QCOMPARE(pair.owner.share().step(), QStringLiteral("enrolled"));
    QVERIFY(pair.other.app.session().hasRig());
    QCOMPARE(pair.other.app.session().rig()->name(), pair.owner.app.session().rig()->name());
    QVERIFY(!pair.other.sync().isJoining());
    QVERIFY(pair.other.sync().standing().contains(QStringLiteral("technician")));
    QVERIFY(!pair.other.sync().isOwner());

    const QVariantList devices = pair.owner.sync().devices();
    QCOMPARE(devices.size(), 2);
    QCOMPARE(text(row(devices, 0), "name"), QStringLiteral("device other"));
    QCOMPARE(text(row(devices, 0), "role"), QStringLiteral("technician")); // as the owner chose, not as asked
    QVERIFY(text(row(devices, 0), "until").contains(QStringLiteral("2027")));
    QVERIFY(row(devices, 0).value(QStringLiteral("revocable")).toBool());
    QVERIFY(!row(devices, 1).value(QStringLiteral("revocable")).toBool()); // the last owner, this device
    for (const QVariant &device : pair.other.sync().devices())
        QVERIFY(!device.toMap().value(QStringLiteral("revocable")).toBool());

    const QVariantMap store = row(pair.owner.sync().stores(), 0);
    QCOMPARE(text(store, "waits"), QStringLiteral("nothing new since"));
    QVERIFY(pair.other.sync().outcome().first().contains(QStringLiteral("received")));
    pair.owner.sync().remove(QStringLiteral("stick"));
    pair.owner.app.settle();
    QVERIFY(pair.owner.sync().stores().isEmpty());
    QVERIFY(!std::filesystem::is_empty(pair.folder()));
}

// zbarimg of Debian's zbar-tools, which others wrote, reads what we draw with four quiet modules around, as
// ISO/IEC 18004 asks for (from memory).
void TstSync::anotherReaderReadsThePicture()
{
    Device device(AppFixture::Book::Tandem, "owner");
    device.share().offer(QStringLiteral("helper"), {});
    device.app.settle();
    const QStringList rows = device.share().picture();
    QVERIFY(rows.size() >= 21);
    const QImage picture = codePicture(rows);
    const QString file = QString::fromStdString(device.app.folder().file("code.png"));
    QVERIFY(picture.save(file));
    QProcess reader;
    reader.start(QStringLiteral(SNUGWALK_ZBARIMG),
                 {QStringLiteral("--raw"), QStringLiteral("--oneshot"), QStringLiteral("-q"),
                  QStringLiteral("-Sdisable"), QStringLiteral("-Sqrcode.enable"), QStringLiteral("-Sbinary"),
                  file});
    QVERIFY(reader.waitForFinished());
    const Result<std::string> bytes = bytesFromWords(device.share().words().toStdString());
    QVERIFY(bytes.has_value());
    QCOMPARE(reader.readAllStandardOutput(), QByteArray::fromStdString(*bytes));
}

void TstSync::theWrongWordsAreTold()
{
    Device owner(AppFixture::Book::Tandem, "owner");
    Device other(AppFixture::Book::Empty, "other");
    owner.share().offer(QStringLiteral("helper"), {});
    owner.app.settle();
    QString words = owner.share().words();
    const QString first = words.section(u' ', 0, -1, QString::SectionSkipEmpty).section(u' ', 1, 1);
    other.share().answer(words.replace(words.indexOf(first), 1, QStringLiteral("x")),
                         QStringLiteral("helper"));
    other.app.settle();
    QVERIFY2(what(other.share().fault()).contains(QStringLiteral("word 1")),
             qPrintable(what(other.share().fault())));
    QCOMPARE(other.share().step(), QString());
    QVERIFY(!other.sync().isJoining());

    owner.share().takeAnswer(owner.share().words()); // its own offer is no answer
    owner.app.settle();
    QVERIFY(what(owner.share().fault()).contains(QStringLiteral("no answer")));
    QCOMPARE(owner.share().step(), QStringLiteral("offer"));

    owner.app.clock().advance(std::chrono::minutes(11));
    other.app.clock().advance(std::chrono::minutes(11));
    other.share().answer(owner.share().words(), QStringLiteral("helper"));
    other.app.settle();
    QVERIFY(what(other.share().fault()).contains(QStringLiteral("ten minutes")));
    QVERIFY(!text(other.share().fault(), "act").isEmpty());
}

void TstSync::whatIsWrittenWaitsQuietly()
{
    Pair pair;
    QVERIFY2(pair.owner.sync().mark().isEmpty(), qPrintable(pair.owner.sync().mark()));
    pair.owner.app.start(QStringLiteral("full_round"));
    pair.owner.app.session().refresh();
    pair.owner.app.settle();
    QVERIFY(pair.owner.sync().mark().startsWith(QStringLiteral("1 ")));
    QVERIFY(pair.owner.sync().waiting().first().startsWith(QStringLiteral("1 entry")));
    QVERIFY(text(row(pair.owner.sync().stores(), 0), "waits").startsWith(QStringLiteral("1 ")));
    pair.owner.exchange();
    QVERIFY(pair.owner.sync().mark().isEmpty());
    QVERIFY(pair.owner.sync().outcome().first().startsWith(QStringLiteral("1 ")));
    pair.other.exchange();
    QVERIFY(pair.other.app.session().rig()->walkOpen());
}

void TstSync::aFileIsHandedOver()
{
    Pair pair;
    const std::string file = pair.owner.app.folder().file("mail.snug");
    pair.owner.addStore(file, "mail", "file");
    pair.other.addStore(file, "mail", "file");
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.owner.exchange("mail");
    QVERIFY(std::filesystem::is_regular_file(file));
    pair.other.exchange("mail");
    QVERIFY(pair.other.app.session().rig()->walkOpen());
    // given to one store, and new to the other
    QVERIFY(text(row(pair.owner.sync().stores(), 0), "waits").startsWith(QStringLiteral("1 ")));
    QCOMPARE(text(row(pair.owner.sync().stores(), 1), "waits"), QStringLiteral("nothing new since"));
}

void TstSync::placesThatAreNoneAreTold()
{
    Device device(AppFixture::Book::Tandem, "owner");
    const auto faultOf = [&](const std::string &place, const char *name, const char *kind) {
        device.addStore(place, name, kind);
        return what(device.sync().fault());
    };
    QVERIFY(faultOf("/no/such/folder", "stick", "folder").contains(QStringLiteral("/no/such/folder")));
    QVERIFY(faultOf("/no/such/mail.snug", "mail", "file").contains(QStringLiteral("/no/such")));
    QVERIFY(faultOf("http://example.org/rig/", "web", "webdav").contains(QStringLiteral("address")));
    QVERIFY(faultOf(device.app.folder().file(""), "a name", "folder").contains(QStringLiteral("letters")));
    device.sync().add({{QStringLiteral("name"), QStringLiteral("web")},
                       {QStringLiteral("kind"), QStringLiteral("webdav")},
                       {QStringLiteral("place"), QStringLiteral("https://example.org/rig/")},
                       {QStringLiteral("authority"), QStringLiteral("/no/such/authority.pem")}});
    device.app.settle();
    QVERIFY2(what(device.sync().fault()).contains(QStringLiteral("/no/such/authority.pem")),
             qPrintable(what(device.sync().fault())));
    QVERIFY(device.sync().stores().isEmpty());
}

void TstSync::aStoreThatIsAwayIsTold()
{
    Pair pair;
    std::filesystem::rename(pair.folder(), pair.folder() + ".away");
    pair.owner.exchange();
    QVERIFY(what(pair.owner.sync().fault()).contains(QStringLiteral("not there")));
    QVERIFY(text(pair.owner.sync().fault(), "act").contains(QStringLiteral("stick")));
    QVERIFY(pair.owner.sync().outcome().isEmpty());
    QVERIFY(pair.owner.app.session().errorWhat().isEmpty()); // told on the page, nowhere else
    std::filesystem::rename(pair.folder() + ".away", pair.folder());
    pair.owner.exchange();
    QVERIFY(pair.owner.sync().fault().isEmpty());
    pair.owner.addStore(pair.folder()); // the name is taken
    QVERIFY(what(pair.owner.sync().fault()).contains(QStringLiteral("stick")));
}

void TstSync::anExchangeStopsWhereNothingIsLost()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.owner.sync().exchangeNow(QStringLiteral("stick"));
    pair.owner.sync().stop(); // before, in the middle or after: any is fine
    pair.owner.app.settle();
    QVERIFY(pair.owner.sync().isStopped() != !pair.owner.sync().outcome().isEmpty());
    QVERIFY(pair.owner.sync().fault().isEmpty());
    pair.everybody();
    QVERIFY(pair.other.app.session().rig()->walkOpen());
    QVERIFY(pair.owner.sync().mark().isEmpty());
}

QTEST_MAIN(TstSync)
#include "tst_sync.moc"

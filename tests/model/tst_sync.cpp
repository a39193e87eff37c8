// SPDX-License-Identifier: Apache-2.0
// Two devices over one folder, as their pages would have it: meet, exchange, disagree, settle, revoke.
#include <QImage>
#include <QProcess>
#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/acts.hpp"
#include "logbook/query.hpp"
#include "logbook/receive.hpp"
#include "places/known_places.hpp"
#include "places/qr_rows.hpp"
#include "sync/words.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr const char *contested = "breakaway-lanyard";

// A device: its app, and the list of its stores beside its logbook.
struct Device {
    explicit Device(AppFixture::Book book, const std::string &seed)
        : app(book, seed), places(app.folder().file("device"))
    {
        app.parts.places = &places;
        app.parts.qrRows = qrRows;
        app.parts.preferences.person = QString::fromStdString(seed);
        app.open();
    }
    [[nodiscard]] SyncModel &sync() { return *app.session().sync(); }
    [[nodiscard]] ShareModel &share() { return *sync().share(); }
    [[nodiscard]] ConflictsModel &conflicts() { return *sync().conflicts(); }

    void addStore(const std::string &folder)
    {
        sync().add({{QStringLiteral("name"), QStringLiteral("stick")},
                    {QStringLiteral("kind"), QStringLiteral("folder")},
                    {QStringLiteral("place"), QString::fromStdString(folder)}});
        app.settle();
    }
    void exchange()
    {
        sync().exchangeNow(QStringLiteral("stick"));
        app.settle();
    }
    // On the open walk, with no knowledge of what others do.
    void mark(const std::function<void(WalkModel &)> &act)
    {
        WalkModel &walk = app.walk();
        walk.goOn();
        for (int row = 0; row < walk.count(); ++row) {
            const auto &points = walk.walk()->tape[static_cast<std::size_t>(row)].points;
            if (std::find(points.begin(), points.end(), contested) != points.end())
                walk.goTo(row);
        }
        walk.selectPoint(QLatin1String(contested));
        act(walk);
        app.settle();
        app.session().refresh();
        app.settle();
    }

    AppFixture app;
    KnownPlaces places;
};

// An owner with a rig and a device that takes part in it, both at one store.
struct Pair {
    explicit Pair(const char *role = "helper")
        : owner(AppFixture::Book::Tandem, "owner"), other(AppFixture::Book::Empty, "other")
    {
        std::filesystem::create_directories(folder());
        meet(role);
        owner.addStore(folder());
        other.addStore(folder());
        owner.exchange();
        other.exchange();
    }
    [[nodiscard]] std::string folder() const { return owner.app.folder().file("stick"); }

    void meet(const char *role)
    {
        owner.share().offer(QLatin1String(role), QStringLiteral("2027-03-31"));
        owner.app.settle();
        other.share().answer(owner.share().words(), QStringLiteral("viewer"));
        other.app.settle();
        owner.share().takeAnswer(other.share().words());
        owner.app.settle();
        codes = {owner.share().code(), other.share().code()};
        owner.share().confirm();
        owner.app.settle();
    }
    void everybody()
    {
        owner.exchange();
        other.exchange();
        owner.exchange();
    }

    Device owner;
    Device other;
    QStringList codes;
};

QVariantMap row(const QVariantList &list, int at) { return list.value(at).toMap(); }
QString text(const QVariantMap &map, const char *key) { return map.value(QLatin1String(key)).toString(); }
QString what(const QVariantMap &fault) { return text(fault, "what"); }

} // namespace

class TstSync : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aRigThatIsNotSharedWaitsForNothing();
    void theRigComesOverTheStore();
    void anotherReaderReadsThePicture();
    void theWrongWordsAreTold();
    void whatIsWrittenWaitsQuietly();
    void twoMarksMeetAndOneIsChosen();
    void whatARevokedDeviceWritesIsSetAside();
    void whatAViewerWritesCountsOnceAdopted();
    void aStoreThatIsAwayIsTold();
    void anExchangeStopsWhereNothingIsLost();
    void tapsFollowAStreamBegunBeside();
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
    constexpr int scale = 6;
    constexpr int quiet = 4;
    const int side = (static_cast<int>(rows.size()) + 2 * quiet) * scale;
    QImage picture(side, side, QImage::Format_Grayscale8);
    picture.fill(Qt::white);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            if (rows.value(y / scale - quiet).mid(x / scale - quiet, x / scale < quiet ? 0 : 1) ==
                QStringLiteral("1"))
                picture.setPixel(x, y, qRgb(0, 0, 0));
        }
    }
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
    other.share().answer(words.replace(words.indexOf(first), 1, QStringLiteral("x")), QStringLiteral("helper"));
    other.app.settle();
    QVERIFY2(what(other.share().fault()).contains(QStringLiteral("word 1")), qPrintable(what(other.share().fault())));
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
    QVERIFY(pair.owner.sync().waiting().first().startsWith(QStringLiteral("1 entry waits")) ||
            pair.owner.sync().waiting().first().startsWith(QStringLiteral("1 entry")));
    QVERIFY(text(row(pair.owner.sync().stores(), 0), "waits").startsWith(QStringLiteral("1 ")));
    pair.owner.exchange();
    QVERIFY(pair.owner.sync().mark().isEmpty());
    QVERIFY(pair.owner.sync().outcome().first().startsWith(QStringLiteral("1 ")));
    pair.other.exchange();
    QVERIFY(pair.other.app.session().rig()->walkOpen());
}

void TstSync::twoMarksMeetAndOneIsChosen()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    pair.owner.mark([](WalkModel &walk) { walk.pass(QStringLiteral("looked")); });
    pair.other.mark([](WalkModel &walk) { walk.couldNotLook(QStringLiteral("too_dark"), {}); });
    pair.everybody();

    for (Device *device : {&pair.owner, &pair.other}) {
        const QVariantList rows = device->conflicts().conflicts();
        QCOMPARE(rows.size(), 1);
        const QVariantList versions = row(rows, 0).value(QStringLiteral("versions")).toList();
        QCOMPARE(versions.size(), 2);
        QStringList who;
        for (const QVariant &version : versions) {
            who << text(version.toMap(), "who");
            // the worst of two marks is shown until a person chooses
            QCOMPARE(version.toMap().value(QStringLiteral("shown")).toBool(),
                     text(version.toMap(), "text").contains(QStringLiteral("could not look")));
        }
        who.sort();
        QCOMPARE(who, QStringList({QStringLiteral("other"), QStringLiteral("owner")}));
        QVERIFY(!device->sync().mark().isEmpty());
    }
    const QVariantMap conflict = row(pair.owner.conflicts().conflicts(), 0);
    const QVariantList versions = conflict.value(QStringLiteral("versions")).toList();
    const int pass = text(row(versions, 0), "who") == QStringLiteral("owner") ? 0 : 1;
    pair.owner.conflicts().choose(text(conflict, "key"), 7); // there is none
    pair.owner.conflicts().choose(text(conflict, "key"), pass);
    pair.owner.app.settle();
    QVERIFY(pair.owner.conflicts().conflicts().isEmpty());
    pair.everybody();
    QVERIFY(pair.other.conflicts().conflicts().isEmpty());

    pair.other.app.close();
    Logbook &book = pair.other.app.book();
    const Rig rig = allRigs(book)->front();
    const auto walks = walksOf(book, rig.id);
    const auto marks = marksOf(book, walks->front().id);
    const auto mark = std::find_if(marks->begin(), marks->end(), [](const Mark &m) { return m.point == contested; });
    QVERIFY(mark != marks->end());
    QCOMPARE(mark->state, MarkState::Pass);
    QCOMPARE(mark->reason, std::string()); // of the version that was not kept
    pair.other.app.closeBook();
    pair.other.app.open();
}

void TstSync::whatARevokedDeviceWritesIsSetAside()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    const QString device = text(row(pair.owner.sync().devices(), 0), "id");
    pair.owner.sync().revoke(device, QStringLiteral("left in a train"));
    pair.owner.app.settle();
    const QVariantMap last = row(pair.owner.sync().devices(), 1);
    QVERIFY(last.value(QStringLiteral("revoked")).toBool());
    QCOMPARE(text(last, "note"), QStringLiteral("left in a train"));

    pair.other.mark([](WalkModel &walk) { walk.pass(QStringLiteral("glance")); });
    pair.other.sync().exchangeNow(QStringLiteral("stick"));
    pair.other.app.settle();
    QVERIFY2(pair.other.sync().standing().contains(QStringLiteral("revoked")), qPrintable(pair.other.sync().standing()));
    pair.owner.exchange();
    // it learned of it before it sent: what it wrote stays with it, and waits there
    QVERIFY(pair.owner.conflicts().aside().isEmpty());
    QVERIFY(pair.owner.conflicts().mayAdopt());
    QVERIFY(!pair.other.conflicts().mayAdopt());
}

void TstSync::whatAViewerWritesCountsOnceAdopted()
{
    Pair pair("viewer");
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    pair.other.mark([](WalkModel &walk) { walk.pass(QStringLiteral("glance")); });
    pair.other.exchange();
    pair.owner.exchange();
    const QVariantList aside = pair.owner.conflicts().aside();
    QCOMPARE(aside.size(), 1);
    QCOMPARE(text(row(aside, 0), "reason"), QStringLiteral("a viewer writes nothing"));
    QCOMPARE(text(row(aside, 0), "who"), QStringLiteral("other"));
    QVERIFY(!pair.owner.sync().mark().isEmpty());
    QVERIFY(!pair.other.conflicts().mayAdopt());
    pair.owner.conflicts().adopt(text(row(aside, 0), "key"));
    pair.owner.app.settle();
    QVERIFY(pair.owner.conflicts().aside().isEmpty());
    pair.owner.exchange();
    QVERIFY(pair.owner.sync().mark().isEmpty());
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

// A copy of the logbook went on elsewhere: the exchange begins another stream, and the connection that taps go
// through must follow, or two entries would have one number.
void TstSync::tapsFollowAStreamBegunBeside()
{
    Pair pair;
    pair.owner.app.close();
    Logbook &taps = pair.owner.app.book();
    const StreamId before = taps.stream();
    CountingIds ids("beside");
    Result<Logbook> beside = Logbook::open(taps.file(), {taps.device(), "same", &pair.owner.app.clock(), &ids, false});
    QVERIFY(beside.has_value());
    QVERIFY(startIncarnation(*beside).has_value());
    Rig rig = allRigs(taps)->front();
    rig.name = "Tussock";
    QVERIFY(saveRig(taps, rig, {"owner", std::nullopt, std::nullopt}).has_value());
    QVERIFY(taps.stream() != before);
    QVERIFY(taps.stream() == beside->stream());
    pair.owner.app.closeBook();
    pair.owner.app.open();
    pair.everybody();
    QCOMPARE(pair.other.app.session().rig()->name(), QStringLiteral("Tussock"));
}

QTEST_MAIN(TstSync)
#include "tst_sync.moc"

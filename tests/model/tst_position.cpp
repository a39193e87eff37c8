// SPDX-License-Identifier: Apache-2.0
// Positions from a log, from the hand, from nowhere; and on what is written.
#include <QtTest>

#include "app_fixture.hpp"
#include "position/make_position.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// NMEA 0183's own worked GGA example as its standard's readers print it, from memory: 48 degrees
// 07.038 minutes north, 11 degrees 31.000 minutes east, 545.4 m; the RMC of the same second dates it.
constexpr const char *sentences = "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n"
                                  "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n";

// A receiver that can be switched off.
class Receiver : public PositionSource {
public:
    [[nodiscard]] QString kind() const override { return QStringLiteral("receiver"); }
    void start() override { started = true; }
    void stop() override { started = false; }
    bool started = false;
};

Fix fixAt(double latitude, double longitude)
{
    Fix fix;
    fix.point = {latitude, longitude, 640.0, metres(6)};
    return fix;
}

} // namespace

class TstPosition : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void withoutASourceThereIsNone();
    void aLogGivesItsLastFix();
    void aLogIsReplayed();
    void whatIsTypedIsRead_data();
    void whatIsTypedIsRead();
    void aSilentReceiverIsForgotten();
    void aMarkCarriesThePlace();
};

void TstPosition::withoutASourceThereIsNone()
{
    AppFixture app;
    const PositionModel &position = *app.open().position();
    QVERIFY(!position.has());
    QCOMPARE(position.words(), QStringLiteral("no position"));
    QCOMPARE(position.source(), QString());
}

void TstPosition::aLogGivesItsLastFix()
{
    const TempFolder folder;
    spill(folder.path() / "log.nmea", sentences);
    auto source = lastOfNmea(folder.file("log.nmea"));
    QVERIFY(source.has_value());
    AppFixture app;
    app.parts.position = source->get();
    const PositionModel &position = *app.open().position();
    QVERIFY(position.has());
    QVERIFY(std::abs(position.where()->latitude - (48.0 + 7.038 / 60.0)) < 1e-9);
    QVERIFY(std::abs(position.where()->longitude - (11.0 + 31.0 / 60.0)) < 1e-9);
    QCOMPARE(position.source(), QStringLiteral("log"));
    app.close();
    QVERIFY(!lastOfNmea(folder.file("absent.nmea")).has_value());
}

void TstPosition::aLogIsReplayed()
{
    const TempFolder folder;
    spill(folder.path() / "log.nmea", sentences);
    auto source = nmeaPosition(folder.file("log.nmea"));
    QVERIFY(source.has_value());
    QSignalSpy fixed(source->get(), &PositionSource::fixed);
    (*source)->start();
    QVERIFY(!fixed.isEmpty() || fixed.wait());
    const Fix fix = fixed.first().first().value<Fix>();
    QVERIFY(std::abs(fix.point.latitude - (48.0 + 7.038 / 60.0)) < 1e-6);
    QVERIFY(!nmeaPosition(folder.file("absent.nmea")).has_value());
}

void TstPosition::whatIsTypedIsRead_data()
{
    QTest::addColumn<QString>("latitude");
    QTest::addColumn<QString>("longitude");
    QTest::addColumn<double>("north");
    QTest::addColumn<double>("east");
    QTest::newRow("signs") << "-44.262"
                           << "170.105" << -44.262 << 170.105;
    QTest::newRow("letters") << "44.262 S"
                             << "170.105 E" << -44.262 << 170.105;
    QTest::newRow("commas") << "44,262 s"
                            << "3,5 O" << -44.262 << -3.5;
    QTest::newRow("west") << "51.5N"
                          << "0.12W" << 51.5 << -0.12;
    QTest::newRow("no number") << "north"
                               << "170" << qQNaN() << qQNaN();
    QTest::newRow("off the earth") << "91"
                                   << "0" << qQNaN() << qQNaN();
    QTest::newRow("empty") << ""
                           << "" << qQNaN() << qQNaN();
    QTest::newRow("not a number") << "nan"
                                  << "nan" << qQNaN() << qQNaN();
}

void TstPosition::whatIsTypedIsRead()
{
    QFETCH(QString, latitude);
    QFETCH(QString, longitude);
    QFETCH(double, north);
    QFETCH(double, east);
    AppFixture app;
    PositionModel &position = *app.open().position();
    const bool wanted = !std::isnan(north);
    QCOMPARE(position.type(latitude, longitude), wanted);
    QCOMPARE(position.has(), wanted);
    if (!wanted)
        return;
    QCOMPARE(position.where()->latitude, north);
    QCOMPARE(position.where()->longitude, east);
    QCOMPARE(position.source(), QStringLiteral("typed"));
}

void TstPosition::aSilentReceiverIsForgotten()
{
    AppFixture app;
    Receiver receiver;
    app.parts.position = &receiver;
    const PositionModel &position = *app.open().position();
    QVERIFY(receiver.started);
    Q_EMIT receiver.fixed(fixAt(-44.262, 170.105));
    QVERIFY(position.has());
    app.clock().advance(std::chrono::minutes(9));
    QVERIFY(position.has());
    app.clock().advance(std::chrono::minutes(2));
    QVERIFY(!position.has());
    Q_EMIT receiver.fixed(fixAt(-44.262, 170.105));
    QVERIFY(position.has());
    Q_EMIT receiver.lost();
    QVERIFY(!position.has());
    Q_EMIT receiver.fixed(fixAt(500, 0));
    QVERIFY(!position.has());
    app.close();
}

void TstPosition::aMarkCarriesThePlace()
{
    AppFixture app;
    auto source = recordedPosition({fixAt(-44.0, 170.0), fixAt(-44.262, 170.105)});
    app.parts.position = source.get();
    app.open();
    app.start(QStringLiteral("full_round"));
    app.walk().pass(QStringLiteral("looked"));
    app.settle();
    const std::optional<GeoPoint> where = app.walk().marks().front().where;
    QVERIFY(where.has_value());
    QCOMPARE(where->latitude, -44.262);
    QCOMPARE(where->longitude, 170.105);
    app.close();
}

QTEST_MAIN(TstPosition)
#include "tst_position.moc"

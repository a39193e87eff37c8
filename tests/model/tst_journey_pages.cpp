// SPDX-License-Identifier: Apache-2.0
// Files taken in, and a trip on the map: whole or not at all, told in words, drawn where it was.
#include <cmath>
#include <fstream>
#include <numbers>

#include <QtTest>

#include "app_fixture.hpp"
#include "intake_words.hpp"
#include "logbook/query.hpp"
#include "support/temp_folder.hpp"
#include "trip_map.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QUrl trackFile()
{
    return QUrl::fromLocalFile(
        QStringLiteral(SNUGWALK_SOURCE_DIR "/demo-rig/tracks/2024-10-05-lindis-south.gpx"));
}

QUrl written(const AppFixture &app, const char *name, const std::string &text)
{
    const auto path = app.folder().path() / name;
    spill(path, text);
    return QUrl::fromLocalFile(QString::fromStdString(path.string()));
}

void takeIn(AppFixture &app, const QString &kind, const QUrl &file, const QVariantMap &map = {})
{
    app.session().intake()->begin(kind, file, map);
    app.settle();
}

// Ten minutes at 20 m/s, 100 samples a second: a body that bounces twice a second by `size` m/s^2.
std::string shakingLog(double size)
{
    std::string log = "time_s,x_m/s2,y_m/s2,z_m/s2,speed_m/s\n";
    for (int i = 0; i < 60'000; ++i) {
        const double t = i * 0.01;
        const double z = 9.81 + size * std::sin(2.0 * std::numbers::pi * 2.0 * t);
        log += std::to_string(t) + ",0.0,0.0," + std::to_string(z) + ",20.0\n";
    }
    return log;
}

} // namespace

class TstJourneyPages : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aTrackBecomesATrip();
    void theSameTrackTwiceIsToldSo();
    void aBrokenFileIsToldWithItsLine();
    void whatWasStoppedIsNowhere();
    void weatherWantsAPlace();
    void aLogOfShakingMeasuresItsTrip();
    void theMapIsTrueToTheGround();
    void aTripWithoutALineHasNoMap();
};

void TstJourneyPages::aTrackBecomesATrip()
{
    AppFixture app;
    Session &session = app.open();
    takeIn(app, QStringLiteral("track"), trackFile(), {{QStringLiteral("road"), QStringLiteral("gravel")}});
    QVERIFY(session.intake()->fault().isEmpty());
    QVERIFY(session.intake()->outcome().first().contains(QStringLiteral("km")));
    QCOMPARE(session.book()->trips()->rowCount(), 1);
    QVERIFY(cell(*session.book()->trips(), 0, "points").toList().size() > 2);
    QCOMPARE(cell(*session.book()->trips(), 0, "roadText").toString(), QStringLiteral("gravel"));
    QCOMPARE(session.intake()->share(), 1.0);
    TripModel &trip = *session.trip();
    trip.open({});
    app.settle();
    QVERIFY(trip.sentence().contains(QStringLiteral("shook like")));
    QVERIFY(!trip.facts().isEmpty());
    QVERIFY(!trip.map().isEmpty());
}

void TstJourneyPages::theSameTrackTwiceIsToldSo()
{
    AppFixture app;
    Session &session = app.open();
    takeIn(app, QStringLiteral("track"), trackFile());
    takeIn(app, QStringLiteral("track"), trackFile());
    QVERIFY(session.intake()->outcome().isEmpty());
    QVERIFY(session.intake()
                ->fault()
                .value(QStringLiteral("what"))
                .toString()
                .contains(QStringLiteral("already")));
    QCOMPARE(session.book()->trips()->rowCount(), 1);
}

void TstJourneyPages::aBrokenFileIsToldWithItsLine()
{
    AppFixture app;
    Session &session = app.open();
    takeIn(app, QStringLiteral("track"), QUrl::fromLocalFile(QStringLiteral("/nowhere/absent.gpx")));
    QVERIFY(session.intake()
                ->fault()
                .value(QStringLiteral("what"))
                .toString()
                .contains(QStringLiteral("absent.gpx")));
    takeIn(app, QStringLiteral("track"), written(app, "bad.gpx", "<gpx>\n<trk>\n"));
    const QVariantMap fault = session.intake()->fault();
    QVERIFY2(fault.value(QStringLiteral("where")).toString().contains(QStringLiteral("line")),
             qPrintable(fault.value(QStringLiteral("where")).toString()));
    QVERIFY(!fault.value(QStringLiteral("act")).toString().isEmpty());
    QCOMPARE(session.book()->trips()->rowCount(), 0);
    const QVariantMap placed = intakeFault({Errc::InvalidInput, "bad number", "line 12, column 3", {}}, {});
    QCOMPARE(placed.value(QStringLiteral("where")).toString(), QStringLiteral("line 12, column 3"));
}

void TstJourneyPages::whatWasStoppedIsNowhere()
{
    AppFixture app;
    Session &session = app.open();
    session.intake()->begin(QStringLiteral("track"), trackFile(), {});
    session.intake()->stop(); // before the reader's end can be heard of on this thread
    app.settle();
    QVERIFY(session.intake()->isStopped());
    QVERIFY(session.intake()->outcome().isEmpty());
    session.refresh();
    app.settle();
    QCOMPARE(session.book()->trips()->rowCount(), 0);
    takeIn(app, QStringLiteral("track"), trackFile());
    QVERIFY(!session.intake()->isStopped());
    QCOMPARE(session.book()->trips()->rowCount(), 1);
}

void TstJourneyPages::weatherWantsAPlace()
{
    AppFixture app;
    Session &session = app.open();
    const QUrl file = written(app, "days.csv", "date,tmin,tmax\n2026-10-01,4,16\n2026-10-02,5,18\n");
    takeIn(app, QStringLiteral("weather"), file);
    QVERIFY(!session.intake()->fault().isEmpty());
    takeIn(app, QStringLiteral("weather"), file,
           {{QStringLiteral("place"), QStringLiteral("-44.27, 170.10")}});
    QVERIFY2(session.intake()->fault().isEmpty(),
             qPrintable(session.intake()->fault().value(QStringLiteral("reason")).toString()));
    QVERIFY(session.intake()->outcome().first().contains(u'2'));
}

void TstJourneyPages::aLogOfShakingMeasuresItsTrip()
{
    AppFixture app;
    Session &session = app.open();
    const QUrl log = written(app, "drive.csv", shakingLog(1.0));
    takeIn(app, QStringLiteral("shake"), log); // of no trip
    QVERIFY(!session.intake()->fault().isEmpty());
    takeIn(app, QStringLiteral("track"), trackFile());
    const QString trip = cell(*session.book()->trips(), 0, "tripId").toString();
    takeIn(app, QStringLiteral("shake"), log,
           {{QStringLiteral("trip"), trip}, {QStringLiteral("sensor"), QStringLiteral("rig")}});
    QVERIFY2(session.intake()->fault().isEmpty(),
             qPrintable(session.intake()->fault().value(QStringLiteral("reason")).toString()));
    session.trip()->open(trip);
    app.settle();
    QVERIFY(session.trip()->isMeasured());
    const QVariantMap along = session.trip()->roughness();
    QCOMPARE(along.value(QStringLiteral("span")).toDouble(), 12'000.0); // ten minutes at 20 m/s
    const QVariantList bars = along.value(QStringLiteral("bars")).toList();
    QVERIFY(bars.size() > 115 && bars.size() <= 120); // the filters settle in the first 2 s
    const double middle = bars[60].toMap().value(QStringLiteral("value")).toDouble();
    for (const QVariant &bar : bars)
        QVERIFY(std::abs(bar.toMap().value(QStringLiteral("value")).toDouble() / middle - 1.0) < 0.05);
    QCOMPARE(session.book()->trips()->rowCount(), 1);
}

// A degree of latitude is 111.2 km, of longitude the same times the cosine; a sphere of 6371 km.
void TstJourneyPages::theMapIsTrueToTheGround()
{
    Trip trip;
    trip.outline = {{-45.0, 179.5, {}, {}}, {-44.0, 179.5, {}, {}}, {-44.0, -179.5, {}, {}}};
    const TripMap map = tripMap(trip, nullptr);
    QCOMPARE(map.track.size(), std::size_t{3});
    const double north = map.track[0].y - map.track[1].y;
    const double east = map.track[2].x - map.track[1].x; // over 180 degrees
    const double degree = std::numbers::pi * 6371.0 / 180.0;
    QVERIFY(std::abs(north - degree) < 0.01 * degree);
    QVERIFY(std::abs(east - degree * std::cos(44.5 * std::numbers::pi / 180.0)) < 0.01 * degree);
    for (const FlatPoint &p : map.track)
        QVERIFY(p.x > 0.0 && p.x < map.width && p.y > 0.0 && p.y < map.height);
    QVERIFY(std::abs(map.width / map.height - mapShape) < 1e-9);
    QVERIFY(!map.grid.empty());
    QVERIFY(!map.coastKnown && map.land.empty());
    const QVariantMap words = mapWords(Voice(), trip, map);
    QVERIFY(words.value(QStringLiteral("spoken")).toString().contains(QStringLiteral("not known")));
    const QVariantMap scale = words.value(QStringLiteral("scale")).toMap();
    QVERIFY(scale.value(QStringLiteral("length")).toDouble() < map.width / 2.0);
}

void TstJourneyPages::aTripWithoutALineHasNoMap()
{
    QVERIFY(mapWords(Voice(), Trip(), tripMap(Trip(), nullptr)).isEmpty());
    AppFixture app;
    TripModel &trip = *app.open().trip();
    trip.open({}); // a logbook without a trip
    app.settle();
    QVERIFY(trip.tripId().isEmpty());
    QVERIFY(trip.sentence().isEmpty() && trip.map().isEmpty() && trip.facts().isEmpty());
}

QTEST_MAIN(TstJourneyPages)
#include "tst_journey_pages.moc"

// SPDX-License-Identifier: Apache-2.0
// Accelerations from a log and from a machine that may have no sensor.
#include <QtTest>

#include "sensor/make_vibration.hpp"
#include "support/temp_folder.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstVibration : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLogIsReplayed();
    void stoppingStops();
    void faultsNameTheFileAndLine();
    void aMachineWithoutASensorHasNone();
};

namespace {

constexpr const char *recording = "time,x (g),y (g),z (g)\n10,0,0,1\n10.01,0.5,0,1\n10.02,0,0,-1\n";

}

void TstVibration::aLogIsReplayed()
{
    const TempFolder folder;
    spill(folder.path() / "log.csv", recording);
    auto source = recordedVibration(folder.file("log.csv"));
    QVERIFY(source.has_value());
    QCOMPARE((*source)->kind(), QStringLiteral("log"));
    QSignalSpy sampled(source->get(), &VibrationSource::sampled);
    QSignalSpy ended(source->get(), &VibrationSource::ended);
    (*source)->start();
    QCOMPARE(sampled.size(), 3);
    QCOMPARE(ended.size(), 1);
    QCOMPARE(sampled[1][0].toDouble(), 10.01);
    QCOMPARE(sampled[1][1].toDouble(), 0.5 * 9.80665);
    QCOMPARE(sampled[2][3].toDouble(), -9.80665);
}

void TstVibration::stoppingStops()
{
    const TempFolder folder;
    spill(folder.path() / "log.csv", recording);
    auto source = recordedVibration(folder.file("log.csv"));
    QVERIFY(source.has_value());
    int seen = 0;
    connect(source->get(), &VibrationSource::sampled, this, [&] {
        if (++seen == 2)
            (*source)->stop();
    });
    QSignalSpy ended(source->get(), &VibrationSource::ended);
    (*source)->start();
    QCOMPARE(seen, 2);
    QCOMPARE(ended.size(), 0);
}

void TstVibration::faultsNameTheFileAndLine()
{
    const TempFolder folder;
    QVERIFY(!recordedVibration(folder.file("absent.csv")).has_value());
    spill(folder.path() / "log.csv", "time,x,y,z\n0,0,0,9.8\n0.01,0,nan,9.8\n");
    const auto source = recordedVibration(folder.file("log.csv"));
    QVERIFY(!source.has_value());
    QVERIFY(source.error().where.ends_with("log.csv, line 3, column 3"));
}

void TstVibration::aMachineWithoutASensorHasNone()
{
    const auto source = systemVibration();
    QVERIFY(!source || source->kind() == QStringLiteral("sensor"));
}

QTEST_MAIN(TstVibration)
#include "tst_vibration.moc"

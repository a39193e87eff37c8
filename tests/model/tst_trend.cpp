// SPDX-License-Identifier: Apache-2.0
// A trend as its plot gets it: the dots are the readings, the line meets the limit where the date says.
#include <cmath>

#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

double number(const QVariantMap &map, const char *key) { return map.value(QLatin1String(key)).toDouble(); }

// Six rounds, two months apart, tread of one tire wearing by `step` millimetres each.
void wear(AppFixture &app, double first, double step)
{
    for (int round = 0; round < 6; ++round) {
        app.start(QStringLiteral("full_round"));
        WalkModel &walk = app.walk();
        for (int row = 0; row < walk.count(); ++row) {
            if (walk.walk()->tape[static_cast<std::size_t>(row)].slug == "tread-depth")
                walk.goTo(row);
        }
        const QVariantMap field = walk.readings().first().toMap();
        walk.setReading(field.value(QStringLiteral("slug")).toString(),
                        field.value(QStringLiteral("places")).toStringList().first(),
                        QStringLiteral("%1 mm").arg(first - round * step));
        walk.pass(QStringLiteral("measured"));
        app.settle();
        QSignalSpy finished(&walk, &WalkModel::finished);
        walk.finish();
        QVERIFY(finished.wait());
        app.settle();
        app.clock().advance(std::chrono::hours(24 * 60));
    }
}

} // namespace

class TstTrend : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void theLineMeetsTheLimitOnTheDay();
    void aPointWithoutReadingsHasNoPlot();
};

void TstTrend::theLineMeetsTheLimitOnTheDay()
{
    AppFixture app;
    app.open();
    wear(app, 8.0, 0.5);
    app.session().refresh();
    app.settle();
    TrendModel &trends = *app.session().trends();
    trends.open({}); // the point with the most readings is the only one that has any
    app.settle();
    QCOMPARE(trends.rows().size(), 1);
    const QVariantMap row = trends.rows().first().toMap();
    const QVariantList points = row.value(QStringLiteral("points")).toList();
    QCOMPARE(points.size(), 6);
    for (int i = 0; i < 6; ++i)
        QVERIFY(points[i]
                    .toMap()
                    .value(QStringLiteral("text"))
                    .toString()
                    .contains(QString::number(8.0 - 0.5 * i)));
    const QVariantMap picture = trends.picture(0, 400, 300, 14, 2, QStringLiteral("sans"));
    QCOMPARE(picture.value(QStringLiteral("xs")).toList().size(), 6);
    QVERIFY(trends.picture(1, 400, 300, 14, 2, QStringLiteral("sans")).isEmpty());
    const double left = number(picture, "left");
    double lastX = left;
    double lastY = 0.0;
    int dots = 0;
    QVariantMap ring;
    for (const QVariant &one : picture.value(QStringLiteral("inks")).toList()) {
        const QVariantMap ink = one.toMap();
        const QVariantList xy = ink.value(QStringLiteral("xy")).toList();
        if (ink.value(QStringLiteral("shape")) == QStringLiteral("ring"))
            ring = ink;
        if (ink.value(QStringLiteral("shape")) != QStringLiteral("dot"))
            continue;
        ++dots; // each lies further on and further down than the one before, within the field
        QVERIFY(xy[0].toDouble() > lastX && xy[1].toDouble() > lastY);
        lastX = xy[0].toDouble();
        lastY = xy[1].toDouble();
    }
    QCOMPARE(dots, 6);
    // where it meets its limit lies ahead of the last reading and below it
    const QVariantList meets = ring.value(QStringLiteral("xy")).toList();
    QCOMPARE(meets.size(), 2);
    QVERIFY(meets[0].toDouble() > lastX && meets[1].toDouble() > lastY);
    QVERIFY(meets[0].toDouble() < left + number(picture, "across"));
    QVERIFY(row.value(QStringLiteral("sentence")).toString().contains(QStringLiteral("5.5")));
}

void TstTrend::aPointWithoutReadingsHasNoPlot()
{
    AppFixture app;
    app.open();
    TrendModel &trends = *app.session().trends();
    trends.open(QStringLiteral("front-cap-seam"));
    app.settle();
    QVERIFY(trends.rows().isEmpty());
    QCOMPARE(trends.title(), QStringLiteral("Front cap seam"));
}

QTEST_MAIN(TstTrend)
#include "tst_trend.moc"

// SPDX-License-Identifier: Apache-2.0
// The due place: filters, why a date is where it is, and what a plan would move.
#include <cmath>

#include <QRegularExpression>
#include <QtTest>

#include "app_fixture.hpp"
#include "leg_form.hpp"
#include "round/why.hpp"
#include "shift_words.hpp"
#include "why_picture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

double number(const QVariantMap &map, const char *key) { return map.value(QLatin1String(key)).toDouble(); }

QVariantMap legOn(const char *from, const char *until, const char *place)
{
    return {{QStringLiteral("from"), QLatin1String(from)},
            {QStringLiteral("until"), QLatin1String(until)},
            {QStringLiteral("place"), QLatin1String(place)},
            {QStringLiteral("distance"), QStringLiteral("4000 km")},
            {QStringLiteral("road"), QStringLiteral("washboard")}};
}

QStringList pointsOf(DueModel &due)
{
    QStringList points;
    for (int row = 0; row < due.rows()->rowCount(); ++row)
        points << cell(*due.rows(), row, "point").toString();
    return points;
}

} // namespace

class TstDates : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void filtersKeepWhatIsAskedFor();
    void byConcernGoesAsTheState();
    void theSentenceTellsTheDecomposition();
    void thePictureEndsAtTheLikelyDate();
    void aPlanMovesDatesAndWritesNothing();
    void legsAreReadOrRefused_data();
    void legsAreReadOrRefused();
    void placesAreRead_data();
    void placesAreRead();
};

void TstDates::filtersKeepWhatIsAskedFor()
{
    AppFixture app(AppFixture::Book::Demo);
    DueModel &due = *app.open().due();
    const int all = due.rows()->rowCount();
    QCOMPARE(due.total(), all);
    due.setSpan(QStringLiteral("past"));
    for (int row = 0; row < due.rows()->rowCount(); ++row)
        QVERIFY(cell(*due.rows(), row, "pastDue").toBool());
    const int past = due.rows()->rowCount();
    due.setSpan(QStringLiteral("month"));
    for (int row = 0; row < due.rows()->rowCount(); ++row)
        QVERIFY(cell(*due.rows(), row, "likely").toDouble() <= 30.0);
    const int month = due.rows()->rowCount();
    due.setSpan(QStringLiteral("season"));
    const int season = due.rows()->rowCount();
    QVERIFY(past <= month && month <= season && season <= all);
    QVERIFY(season > 0);
    due.setSpan(QStringLiteral("all"));
    int together = 0;
    for (const QVariant &zone : due.zones()) {
        due.setZone(zone.toMap().value(QStringLiteral("slug")).toString());
        QVERIFY(due.rows()->rowCount() > 0);
        for (int row = 0; row < due.rows()->rowCount(); ++row)
            QCOMPARE(cell(*due.rows(), row, "zone"), zone.toMap().value(QStringLiteral("name")));
        together += due.rows()->rowCount();
    }
    QCOMPARE(together, all);
    QCOMPARE(due.total(), all);
}

void TstDates::byConcernGoesAsTheState()
{
    AppFixture app(AppFixture::Book::Demo);
    DueModel &due = *app.open().due();
    const QStringList byDate = pointsOf(due);
    due.setOrder(QStringLiteral("concern"));
    const QStringList byConcern = pointsOf(due);
    QVERIFY(byDate != byConcern);
    QCOMPARE(QSet<QString>(byDate.begin(), byDate.end()), QSet<QString>(byConcern.begin(), byConcern.end()));
    due.setOrder(QStringLiteral("date"));
    QCOMPARE(pointsOf(due), byDate);
}

// The numbers of the sentence are those of the parts, rounded alike; the two largest stand first.
void TstDates::theSentenceTellsTheDecomposition()
{
    AppFixture app(AppFixture::Book::Empty);
    Voice voice;
    voice.texts = app.parts.texts("en").value();
    DueBand band;
    band.rule = "months";
    DueShift shift;
    shift.nominal = *parseDate("2027-06-01");
    shift.likely = *parseDate("2027-04-21");
    shift.since = *parseDate("2026-12-01");
    shift.parts = {{"shake", -24.35}, {"use", -18.26}, {"history", 2.6}, {"limit", -0.99}};
    shift.days = 120.0;
    shift.agedDays = 163.6;
    const QString sentence = shiftSentence(voice, band, shift);
    // -24.35 and -18.26 days by 30.4375
    QCOMPARE(sentence, QStringLiteral("Likely in April 2027 instead of June 2027: 0.8 months sooner by rough "
                                      "roads, 0.6 months sooner by how far it goes."));
    QVERIFY(agedSentence(voice, shift).contains(QStringLiteral("164")));
    voice.locale = QLocale(QStringLiteral("es"));
    voice.texts = app.parts.texts("es").value();
    QVERIFY(shiftSentence(voice, band, shift).contains(QStringLiteral("0,8 meses antes")));
    shift.parts = {{"shake", 0.4}};
    QVERIFY(shiftShort(voice, shift).isEmpty());
}

// For every dated point of the demo: the line's steps lead from the catalogue's date to the likely one.
void TstDates::thePictureEndsAtTheLikelyDate()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    WhyModel &why = *session.why();
    int drawn = 0;
    const QStringList points = pointsOf(*session.due());
    for (qsizetype i = 0; i < points.size(); i += 7) {
        why.open(points[i]);
        app.settle();
        QVERIFY(!why.title().isEmpty());
        QVERIFY(!why.facts().isEmpty());
        const QVariantMap picture = why.picture();
        if (picture.isEmpty())
            continue;
        const QVariantList steps = picture.value(QStringLiteral("steps")).toList();
        for (qsizetype told = 0; told < std::min<qsizetype>(2, steps.size()); ++told) {
            const QString moved = steps[told].toMap().value(QStringLiteral("text")).toString();
            QVERIFY2(why.sentence().contains(moved), qPrintable(why.sentence() + u' ' + moved));
        }
        double at = number(picture, "nominal");
        for (const QVariant &step : steps) {
            QVERIFY(std::abs(number(step.toMap(), "from") - at) < 1e-9);
            at = number(step.toMap(), "to");
            QVERIFY(at >= number(picture, "firstDay") && at <= number(picture, "lastDay"));
        }
        QVERIFY2(std::abs(at - number(picture, "likely")) < 0.05 * daysPerMonth + 1e-6,
                 qPrintable(points[i]));
        ++drawn;
    }
    QVERIFY(drawn > 5);
}

void TstDates::aPlanMovesDatesAndWritesNothing()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    WhatIfModel &plan = *session.whatIf();
    const QString dates = cell(*session.due()->rows(), 0, "likelyText").toString();
    QVERIFY(plan.addLeg(legOn("2026-12-01", "2027-02-28", "-45.87, 170.50")));
    app.settle();
    QCOMPARE(plan.legs().size(), 1);
    QVERIFY2(!plan.rows().isEmpty(), qPrintable(plan.sentence()));
    for (const QVariant &row : plan.rows())
        QVERIFY(!row.toMap().value(QStringLiteral("moved")).toString().isEmpty());
    QVERIFY(!plan.addLeg(legOn("2027-02-01", "2027-03-01", "-45.87, 170.50"))); // shares days with the first
    QCOMPARE(plan.problems().size(), 1);
    plan.removeLeg(0);
    app.settle();
    QVERIFY(plan.rows().isEmpty());
    QVERIFY(plan.sentence().isEmpty());
    session.refresh();
    app.settle();
    QCOMPARE(cell(*session.due()->rows(), 0, "likelyText").toString(), dates);
    QVERIFY(session.errorWhat().isEmpty());
}

void TstDates::legsAreReadOrRefused_data()
{
    QTest::addColumn<QVariantMap>("typed");
    QTest::addColumn<QString>("field"); // of the fault; empty: none
    const QVariantMap whole = legOn("2027-01-01", "2027-01-31", "-44.27, 170.10");
    const auto with = [&](const char *key, const char *value) {
        QVariantMap map = whole;
        map[QLatin1String(key)] = QLatin1String(value);
        return map;
    };
    QTest::newRow("whole") << whole << QString();
    QTest::newRow("no distance") << with("distance", "") << QString();
    QTest::newRow("miles") << with("distance", "2500 mi") << QString();
    QTest::newRow("known place") << with("stay", "0") << QString();
    QTest::newRow("no date") << with("from", "next week") << QStringLiteral("from");
    QTest::newRow("31 February") << with("until", "2027-02-31") << QStringLiteral("until");
    QTest::newRow("ends first") << with("until", "2026-12-31") << QStringLiteral("until");
    QTest::newRow("beyond the pole") << with("place", "94, 10") << QStringLiteral("place");
    QTest::newRow("no such stay") << with("place", "") << QStringLiteral("place");
    QTest::newRow("less than nothing") << with("distance", "-5 km") << QStringLiteral("distance");
}

void TstDates::legsAreReadOrRefused()
{
    QFETCH(QVariantMap, typed);
    QFETCH(QString, field);
    const std::vector<KnownPlace> places = {{QStringLiteral("yard"), {-44.0, 170.0, {}, {}}, true}};
    const LegForm form = readLeg(typed, places, UnitSystem::Si);
    QCOMPARE(form.leg.has_value(), field.isEmpty());
    if (!field.isEmpty()) {
        QCOMPARE(form.problems.first().toMap().value(QStringLiteral("field")).toString(), field);
        QVERIFY(!form.problems.first().toMap().value(QStringLiteral("act")).toString().isEmpty());
    } else if (typed.contains(QStringLiteral("stay"))) {
        QCOMPARE(form.leg->name, std::string("yard"));
    }
}

void TstDates::placesAreRead_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<bool>("isPlace");
    QTest::addColumn<double>("latitude");
    QTest::addColumn<double>("longitude");
    QTest::newRow("signs") << QStringLiteral("-44.27, 170.10") << true << -44.27 << 170.10;
    QTest::newRow("letters") << QStringLiteral("44.27 S, 170.10 E") << true << -44.27 << 170.10;
    QTest::newRow("west") << QStringLiteral("40.5\u00b0 N; 105\u00b0 W") << true << 40.5 << -105.0;
    QTest::newRow("a true minus") << QStringLiteral("\u221244.27 170.10") << true << -44.27 << 170.10;
    QTest::newRow("one number") << QStringLiteral("44.27") << false << 0.0 << 0.0;
    QTest::newRow("too far east") << QStringLiteral("10, 190") << false << 0.0 << 0.0;
    QTest::newRow("words") << QStringLiteral("the yard") << false << 0.0 << 0.0;
}

void TstDates::placesAreRead()
{
    QFETCH(QString, typed);
    QFETCH(bool, isPlace);
    QFETCH(double, latitude);
    QFETCH(double, longitude);
    const auto place = readPlace(typed);
    QCOMPARE(place.has_value(), isPlace);
    if (place) {
        QCOMPARE(place->latitude, latitude);
        QCOMPARE(place->longitude, longitude);
    }
}

QTEST_MAIN(TstDates)
#include "tst_dates.moc"

// SPDX-License-Identifier: Apache-2.0
// The map of a rig: what lies on it, how it is moved, and what is pressed.
#include <algorithm>
#include <cmath>

#include <QtTest>

#include "app_fixture.hpp"
#include "logbook/acts.hpp"
#include "map_model.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QVariantList groupsOf(const MapModel &map) { return map.sheet().value(QStringLiteral("groups")).toList(); }

int countedOn(const MapModel &map)
{
    int count = 0;
    for (const QVariant &group : groupsOf(map))
        count += group.toMap().value(QStringLiteral("count")).toInt();
    return count;
}

MapModel &opened(AppFixture &app, const QString &thing = {})
{
    MapModel &map = *app.session().map();
    map.fit(400.0, 500.0, 48.0, 15.0);
    map.open(thing);
    app.settle();
    return map;
}

double number(const QVariant &map, const char *key)
{
    return map.toMap().value(QLatin1String(key)).toDouble();
}

} // namespace

class TstMap : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aRigWithoutAPlaceHasNone();
    void everythingOfTheDemoIsThereOnce();
    void spotsToPressKeepApart();
    void nothingIsLaidOutWithoutAPage();
    void whatIsHiddenIsGone();
    void zoomingKeepsWhatIsUnderTheFingers();
    void movingMovesEverythingAlike();
    void aGroupOpensToItsMembers();
    void aLineIsPressedWhereItRuns();
    void oneThingIsLookedAt();
    void aFindingAndATripSayWhere();
};

void TstMap::aRigWithoutAPlaceHasNone()
{
    AppFixture app;
    app.open();
    MapModel &map = opened(app);
    QVERIFY(map.isEmpty());
    QVERIFY(groupsOf(map).isEmpty());
}

void TstMap::everythingOfTheDemoIsThereOnce()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    QVERIFY(session.map()->sheet().isEmpty()); // nothing is laid out before a page asks
    MapModel &map = opened(app);
    QVERIFY(!map.isEmpty());
    const QVariantMap sheet = map.sheet();
    QCOMPARE(sheet.value(QStringLiteral("width")).toDouble(), 400.0);
    QVERIFY(sheet.value(QStringLiteral("sea")).toBool()); // the demo's rig lives on an island
    QVERIFY(!sheet.value(QStringLiteral("land")).toList().isEmpty());
    QVERIFY(!sheet.value(QStringLiteral("labels")).toList().isEmpty());
    QVERIFY(sheet.value(QStringLiteral("spoken")).toString().contains(QStringLiteral(" of ")));
    const int all = countedOn(map);
    QVERIFY(all > 3);
    // drawn larger it falls into more groups, but not into more or fewer things
    map.fit(1600.0, 2000.0, 48.0, 15.0);
    map.whole();
    app.settle();
    QCOMPARE(countedOn(map), all);
    map.fit(60.0, 60.0, 48.0, 15.0);
    map.whole();
    app.settle();
    QCOMPARE(countedOn(map), all);
}

void TstMap::spotsToPressKeepApart()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    for (int i = 0; i < 6; ++i) {
        const QVariantList groups = groupsOf(map);
        for (int a = 0; a < groups.size(); ++a) {
            for (int b = a + 1; b < groups.size(); ++b)
                QVERIFY(std::max(std::abs(number(groups[a], "x") - number(groups[b], "x")),
                                 std::abs(number(groups[a], "y") - number(groups[b], "y"))) >= 47.999);
        }
        map.zoom(2.0, 200.0, 250.0);
        app.settle();
    }
}

void TstMap::nothingIsLaidOutWithoutAPage()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    const int all = countedOn(map);
    QVERIFY(all > 0);
    map.close();
    app.session().refresh(); // as a mark does
    app.settle();
    QVERIFY(map.sheet().isEmpty());
    QCOMPARE(countedOn(opened(app)), all);
}

void TstMap::whatIsHiddenIsGone()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    const int all = countedOn(map);
    int left = all;
    for (const char *slug : {"past", "findings", "stays", "trips"}) {
        map.wish(QLatin1String(slug), false);
        app.settle();
        QVERIFY(countedOn(map) <= left);
        left = countedOn(map);
    }
    QCOMPARE(left, 0);
    QVERIFY(map.sheet().value(QStringLiteral("lines")).toList().isEmpty());
    QVERIFY(!map.isEmpty()); // there is something, it is only hidden
    for (const QVariant &wish : map.wishes()) {
        QVERIFY(!wish.toMap().value(QStringLiteral("on")).toBool());
        map.wish(wish.toMap().value(QStringLiteral("slug")).toString(), true);
    }
    app.settle();
    QCOMPARE(countedOn(map), all);
}

void TstMap::zoomingKeepsWhatIsUnderTheFingers()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    for (const char *slug : {"findings", "stays"})
        map.wish(QLatin1String(slug), false);
    app.settle();
    const QVariant before = groupsOf(map).first();
    const double scale = number(map.sheet().value(QStringLiteral("scale")), "length");
    map.zoom(1.5, number(before, "x"), number(before, "y"));
    app.settle();
    const QVariantList after = groupsOf(map);
    const bool isThere = std::any_of(after.begin(), after.end(), [&](const QVariant &group) {
        return std::hypot(number(group, "x") - number(before, "x"),
                          number(group, "y") - number(before, "y")) < 0.5;
    });
    QVERIFY(isThere);
    QVERIFY(scale > 0.0);
    map.zoom(1e-9, 200.0, 250.0); // no further than the whole earth
    app.settle();
    QVERIFY(!map.sheet().isEmpty());
    map.zoom(1e12, 200.0, 250.0);
    app.settle();
    QVERIFY(!map.sheet().isEmpty());
}

void TstMap::movingMovesEverythingAlike()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    const QVariantList before = groupsOf(map);
    map.move(30.0, -20.0);
    app.settle();
    const QVariantList after = groupsOf(map);
    QCOMPARE(after.size(), before.size());
    for (int i = 0; i < before.size(); ++i) {
        // a frame's kilometres are those of its middle, a hair longer or shorter 20 pixels south
        QVERIFY(std::abs(number(after[i], "x") - number(before[i], "x") - 30.0) < 0.5);
        QVERIFY(std::abs(number(after[i], "y") - number(before[i], "y") + 20.0) < 0.5);
        QCOMPARE(after[i].toMap().value(QStringLiteral("id")), before[i].toMap().value(QStringLiteral("id")));
    }
}

void TstMap::aGroupOpensToItsMembers()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    map.fit(120.0, 120.0, 48.0, 15.0);
    map.whole();
    app.settle();
    const QVariantList groups = groupsOf(map);
    const auto largest =
        std::max_element(groups.begin(), groups.end(), [](const QVariant &a, const QVariant &b) {
            return number(a, "count") < number(b, "count");
        });
    QVERIFY(number(*largest, "count") > 1);
    map.choose(static_cast<int>(largest - groups.begin()));
    QCOMPARE(map.members().size(), static_cast<qsizetype>(number(*largest, "count")));
    // the one whose shape is shown comes first, and each has words
    QCOMPARE(map.members().first().toMap().value(QStringLiteral("shape")),
             largest->toMap().value(QStringLiteral("shape")));
    for (const QVariant &member : map.members()) {
        QVERIFY(!member.toMap().value(QStringLiteral("title")).toString().isEmpty());
        QVERIFY(!member.toMap().value(QStringLiteral("detail")).toString().isEmpty());
    }
    map.choose(-1);
    QVERIFY(map.members().isEmpty());
    map.choose(9999);
    QVERIFY(map.members().isEmpty());
    map.choose(static_cast<int>(largest - groups.begin()));
    map.lookCloser();
    app.settle();
    QVERIFY(map.members().isEmpty());
    QVERIFY(!groupsOf(map).isEmpty());
}

void TstMap::aLineIsPressedWhereItRuns()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    const QVariantList lines = map.sheet().value(QStringLiteral("lines")).toList();
    QVERIFY(!lines.isEmpty());
    const QVariantList points = lines.last().toMap().value(QStringLiteral("points")).toList();
    const QString trip = map.tripAt(points[0].toDouble(), points[1].toDouble());
    QVERIFY(Id::parse(trip.toStdString()).has_value());
    QVERIFY(map.tripAt(-5000.0, -5000.0).isEmpty());
}

void TstMap::oneThingIsLookedAt()
{
    AppFixture app(AppFixture::Book::Demo);
    app.open();
    MapModel &map = opened(app);
    const QString id = groupsOf(map).first().toMap().value(QStringLiteral("id")).toString();
    map.wish(QStringLiteral("findings"), false);
    map.open(id);
    app.settle();
    const QVariantList groups = groupsOf(map);
    const bool isInTheMiddle = std::any_of(groups.begin(), groups.end(), [](const QVariant &group) {
        return std::abs(number(group, "x") - 200.0) < 60.0 && std::abs(number(group, "y") - 250.0) < 60.0;
    });
    QVERIFY(isInTheMiddle);
}

void TstMap::aFindingAndATripSayWhere()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    bool isFound = false;
    opened(app);
    for (const QVariant &group : groupsOf(*session.map())) {
        if (group.toMap().value(QStringLiteral("kind")) != QStringLiteral("finding"))
            continue;
        const QString id = group.toMap().value(QStringLiteral("id")).toString();
        isFound = !session.rig()->finding(id).value(QStringLiteral("near")).toString().isEmpty();
        QVERIFY(isFound);
    }
    QVERIFY(isFound);
    QVERIFY(cell(*session.book()->trips(), 0, "wayText").toString().startsWith(QStringLiteral("from: ")));
}

QTEST_MAIN(TstMap)
#include "tst_map.moc"

// SPDX-License-Identifier: Apache-2.0
// What the models show of one small logbook, against kept files: a change of any word is seen.
#include <QtTest>

#include "app_fixture.hpp"
#include "dump.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr int rowLimit = 4;

// A round with one of each mark, by way of the core alone.
void writeRound(AppFixture &app)
{
    Logbook &book = app.book();
    const Doer doer{"A", std::nullopt, GeoPoint{-44.262, 170.105, 640.0, metres(6)}};
    const Rig rig = allRigs(book)->front();
    const Walk walk = *startWalk(book, *app.parts.catalogue, rig, "full_round", {}, {}, doer);
    for (const MarkDraft &draft :
         {passOf("roof-vent-sealant", "smooth"), attentionOn("front-cap-seam", 2, "hairline"),
          attentionOn("chains-condition", 5, "link worn"), couldNotLook("roof-membrane")}) {
        app.clock().advance(std::chrono::minutes(1));
        SNUG_ASSERT(markPoint(book, *app.parts.catalogue, rig, walk, draft, doer).has_value());
    }
    app.closeBook();
}

} // namespace

class TstState : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void modelsShowWhatTheyShowed_data();
    void modelsShowWhatTheyShowed();
    void aStateNeverClaimsMoreThanALook();
    void onlyALookThatFailedCanBeAccepted();
    void threeFiguresAndTheirGrounds();
};

void TstState::modelsShowWhatTheyShowed_data()
{
    QTest::addColumn<QString>("language");
    QTest::addColumn<QString>("units");
    QTest::newRow("en_si") << QStringLiteral("en") << QStringLiteral("si");
    QTest::newRow("es_us") << QStringLiteral("es") << QStringLiteral("us");
}

void TstState::modelsShowWhatTheyShowed()
{
    QFETCH(QString, language);
    QFETCH(QString, units);
    AppFixture app;
    writeRound(app);
    Session &session = app.open();
    session.setLanguage(language);
    session.setUnits(units);
    const std::vector<std::pair<QByteArray, const QObject *>> models = {
        {"rig", session.rig()}, {"walk", session.walk()}, {"due", session.due()}, {"book", session.book()}};
    QByteArrayList differ;
    for (const auto &[name, model] : models) {
        if (!isAsKept(dumpOf(*model, rowLimit), name + '_' + QTest::currentDataTag()))
            differ << name;
    }
    QCOMPARE(differ, QByteArrayList());
}

void TstState::aStateNeverClaimsMoreThanALook()
{
    AppFixture app;
    writeRound(app);
    const QString state = app.open().rig()->state();
    QVERIFY(state.contains(QStringLiteral("do not move it"))); // grade 5 on the hold list
    QVERIFY(state.contains(QStringLiteral("not that nothing will fail")));
    // the project's own list of words that no text may use
    const QRegularExpression never(QStringLiteral("\\b(safe|ok|good|cleared|fit|ready|roadworthy)\\b"),
                                   QRegularExpression::CaseInsensitiveOption);
    QVERIFY(!never.match(state).hasMatch());
}

void TstState::onlyALookThatFailedCanBeAccepted()
{
    AppFixture app;
    writeRound(app); // a link of a chain at grade 5: found, and nobody accepts it
    app.open();
    app.walk().finish();
    app.settle();
    app.start(QStringLiteral("before_road"));
    WalkModel &walk = app.walk();
    for (int row = 0; row < walk.count(); ++row) {
        const std::vector<std::string> &points = walk.walk()->tape[static_cast<std::size_t>(row)].points;
        if (std::find(points.begin(), points.end(), "breakaway-lanyard") != points.end())
            walk.goTo(row);
    }
    walk.selectPoint(QStringLiteral("breakaway-lanyard"));
    walk.couldNotLook(QStringLiteral("no_tool"), {});
    app.settle();
    app.session().refresh();
    app.settle();
    RigModel &rig = *app.session().rig();
    const auto holdOn = [&](const char *point) {
        for (const QVariant &hold : rig.holds()) {
            if (hold.toMap().value(QStringLiteral("point")).toString() == QLatin1String(point))
                return hold.toMap();
        }
        return QVariantMap();
    };
    QVERIFY(!holdOn("breakaway-lanyard").isEmpty());
    QVERIFY(holdOn("breakaway-lanyard").value(QStringLiteral("acceptable")).toBool());
    QVERIFY(!holdOn("chains-condition").value(QStringLiteral("acceptable")).toBool());

    rig.accept(QStringLiteral("chains-condition"), QStringLiteral("late"), QStringLiteral("it may part"));
    QTRY_VERIFY(!app.session().errorWhat().isEmpty());
    app.session().clearError();
    rig.accept(QStringLiteral("breakaway-lanyard"), QStringLiteral("the tool is not here"),
               QStringLiteral("it may not brake when it parts"));
    QTRY_VERIFY(!holdOn("breakaway-lanyard").value(QStringLiteral("accepted")).toString().isEmpty());
    QVERIFY(app.session().errorWhat().isEmpty());
    // it is shown as accepted by whom, and it stays a hold
    QVERIFY(holdOn("breakaway-lanyard")
                .value(QStringLiteral("accepted"))
                .toString()
                .contains(QStringLiteral("A")));
    QVERIFY(rig.state().contains(QStringLiteral("do not move it")));
}

void TstState::threeFiguresAndTheirGrounds()
{
    AppFixture app;
    QVERIFY(app.open().rig()->figures().isEmpty()); // nothing was looked at: no figure
    app.close();
    writeRound(app);
    const QVariantList figures = app.open().rig()->figures();
    QCOMPARE(figures.size(), 3);
    for (const QVariant &figure : figures) {
        QVERIFY(!figure.toMap().value(QStringLiteral("brief")).toString().isEmpty());
        QVERIFY(!figure.toMap().value(QStringLiteral("why")).toStringList().isEmpty());
    }
    // the worst item is the one that is numbered first
    QVERIFY(figures.first()
                .toMap()
                .value(QStringLiteral("text"))
                .toString()
                .startsWith(app.session().rig()->finding({}).value(QStringLiteral("title")).toString()));
}

QTEST_MAIN(TstState)
#include "tst_state.moc"

// SPDX-License-Identifier: Apache-2.0
// The bench's page: drawn from the table of questions, faults at their field, readings kept by the mark's
// act.
#include <QtTest>

#include "app_fixture.hpp"
#include "bench/ask/ask.hpp"
#include "logbook/query.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QString field(BenchModel &bench, const QString &name, const char *role)
{
    for (int row = 0; row < bench.inputs()->rowCount(); ++row) {
        if (cell(*bench.inputs(), row, "name").toString() == name)
            return cell(*bench.inputs(), row, role).toString();
    }
    return QStringLiteral("no such field");
}

const QString pressure = QStringLiteral("tire-pressure");

} // namespace

class TstBench : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void everyQuestionOfTheTableIsThereInBothLanguages();
    void everyWorkedExampleHasAnAnswer();
    void theRigsPlatesAreFilledIn();
    void aFaultStandsAtItsField();
    void figuresAreReadByTheMarksOfTheLanguage();
    void whatIsMissingIsNamed();
    void oneOfTwoThatMayStayEmptyIsAskedFor();
    void whatWasTypedStaysWithItsQuestion();
    void bareNumbersAreInThePersonsUnits();
    void aFigureIsKeptOnAMarkedPointOnly();
    void theStarIsDrawnInItsOrder();
    void theWheelsShowTheirReadings();
    void aFittedWheelMakesItsNutsDue();
};

void TstBench::everyQuestionOfTheTableIsThereInBothLanguages()
{
    AppFixture app;
    Session &session = app.open();
    for (const char *language : {"en", "es", "fr", "de"}) {
        session.setLanguage(QLatin1String(language));
        std::size_t count = 0;
        for (const QVariant &subject : session.bench()->subjects()) {
            for (const QVariant &one : subject.toMap().value(QStringLiteral("questions")).toList()) {
                const QString slug = one.toMap().value(QStringLiteral("slug")).toString();
                session.bench()->open(slug);
                QCOMPARE(session.bench()->question(), slug);
                // a text that is missing reads as its slug
                QVERIFY2(session.bench()->title() != QStringLiteral("title"), qPrintable(slug));
                QVERIFY2(session.bench()->inputs()->rowCount() > 0, qPrintable(slug));
                ++count;
            }
        }
        QCOMPARE(count, benchQuestions().size());
    }
}

void TstBench::everyWorkedExampleHasAnAnswer()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    for (const BenchQuestion &question : benchQuestions()) {
        bench.open(Voice::text(question.name));
        bench.showExample();
        const QString stands = bench.missing() + bench.problem();
        QVERIFY2(!bench.figures().isEmpty(), qPrintable(Voice::text(question.name) + u' ' + stands));
        // the model adds words, never figures of its own
        const auto asked =
            askBench(question, exampleOf(question), UnitSystem::Si, civilDate(app.clock().now()));
        QVERIFY(asked.has_value());
        QCOMPARE(static_cast<std::size_t>(bench.figures().size()), asked->figures.size());
        QVERIFY(bench.cautions().size() > 0 || question.cautions.empty());
    }
}

void TstBench::theRigsPlatesAreFilledIn()
{
    AppFixture app; // 340 kPa on the placard, 345 on the sidewall
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    QCOMPARE(field(bench, QStringLiteral("placard"), "typed"), QStringLiteral("340 kPa"));
    bench.type(QStringLiteral("placard"), QString());
    QCOMPARE(field(bench, QStringLiteral("placard"), "typed"), QString());
    bench.clear();
    QCOMPARE(field(bench, QStringLiteral("placard"), "typed"), QStringLiteral("340 kPa"));
}

void TstBench::aFaultStandsAtItsField()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    bench.showExample();
    QVERIFY(field(bench, QStringLiteral("load"), "problem").isEmpty());
    bench.type(QStringLiteral("load"), QStringLiteral("heavy"));
    QVERIFY(!field(bench, QStringLiteral("load"), "problem").isEmpty());
    QVERIFY(field(bench, QStringLiteral("placard"), "problem").isEmpty());
    QVERIFY(bench.figures().isEmpty());
    QVERIFY(bench.problem().isEmpty());
    // beyond what can be typed: the limits are told
    bench.type(QStringLiteral("load"), QStringLiteral("60 t"));
    QVERIFY(field(bench, QStringLiteral("load"), "problem").remove(u',').contains(QStringLiteral("5000")));
}

// Decimal marks: the locale's own (Unicode CLDR), as Qt's QLocale carries them.
void TstBench::figuresAreReadByTheMarksOfTheLanguage()
{
    AppFixture app(AppFixture::Book::Empty);
    Session &session = app.open();
    session.setLanguage(QStringLiteral("de"));
    BenchModel &bench = *session.bench();
    const QString load = QStringLiteral("load");
    bench.open(pressure);
    bench.type(load, QStringLiteral("512,5 kg"));
    QCOMPARE(field(bench, load, "typed"), QStringLiteral("512,5 kg"));
    QVERIFY2(field(bench, load, "understood").contains(QStringLiteral("512,5")),
             qPrintable(field(bench, load, "understood")));
    bench.type(load, QStringLiteral("1.250 kg")); // 1250 in German, 1.25 on a gauge made elsewhere
    QVERIFY2(field(bench, load, "problem").contains(QStringLiteral("1250")),
             qPrintable(field(bench, load, "problem")));
    QVERIFY(bench.figures().isEmpty());
    bench.showExample(); // plain, whatever the language
    QCOMPARE(field(bench, load, "problem"), QString());
    QVERIFY(!bench.figures().isEmpty());
    session.setLanguage(QStringLiteral("en"));
    bench.type(load, QStringLiteral("1,050 kg"));
    QCOMPARE(field(bench, load, "problem"), QString());
}

void TstBench::whatIsMissingIsNamed()
{
    AppFixture app(AppFixture::Book::Empty);
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    QVERIFY(bench.missing().contains(field(bench, QStringLiteral("load"), "label")));
    QVERIFY(field(bench, QStringLiteral("load"), "problem").isEmpty());
    QVERIFY(bench.figures().isEmpty());
}

void TstBench::oneOfTwoThatMayStayEmptyIsAskedFor()
{
    AppFixture app(AppFixture::Book::Empty);
    BenchModel &bench = *app.open().bench();
    bench.open(QStringLiteral("breakaway"));
    bench.showExample();
    QVERIFY(!bench.figures().isEmpty());
    for (const char *name : {"magnets", "current"})
        bench.type(QLatin1String(name), QString());
    QVERIFY(bench.missing().contains(field(bench, QStringLiteral("magnets"), "label")));
    QCOMPARE(field(bench, QStringLiteral("magnets"), "needed"), QStringLiteral("true"));
    QCOMPARE(field(bench, QStringLiteral("current"), "needed"), QStringLiteral("false"));
}

void TstBench::whatWasTypedStaysWithItsQuestion()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    bench.type(QStringLiteral("load"), QStringLiteral("700 kg"));
    bench.open(Voice::text(benchQuestions().back().name));
    bench.open(pressure);
    QCOMPARE(field(bench, QStringLiteral("load"), "typed"), QStringLiteral("700 kg"));
    app.session().refresh();
    app.settle();
    QCOMPARE(field(bench, QStringLiteral("load"), "typed"), QStringLiteral("700 kg"));
}

void TstBench::bareNumbersAreInThePersonsUnits()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    bench.type(QStringLiteral("placard"), QStringLiteral("48"));
    QVERIFY(field(bench, QStringLiteral("placard"), "problem").size() >
            0); // 48 kPa is under what can be typed
    app.session().setUnits(QStringLiteral("us"));
    QCOMPARE(field(bench, QStringLiteral("placard"), "problem"), QString());
    // 48 psi x 6.894757 kPa [NIST-SP811]
    QVERIFY(field(bench, QStringLiteral("placard"), "understood").contains(QStringLiteral("330.9")));
}

void TstBench::aFigureIsKeptOnAMarkedPointOnly()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    bench.showExample();
    QVERIFY(!bench.keeping().value(QStringLiteral("able")).toBool());
    QVERIFY(!bench.keeping().value(QStringLiteral("stands")).toString().isEmpty());
    app.start(QStringLiteral("full_round"));
    app.session().refresh();
    app.settle();
    QVERIFY(!bench.keeping().value(QStringLiteral("able")).toBool()); // not marked yet
    WalkModel &walk = app.walk();
    for (int row = 0; row < walk.count(); ++row) {
        if (walk.walk()->tape[static_cast<std::size_t>(row)].slug == "tire-pressure")
            walk.goTo(row);
    }
    walk.pass(QStringLiteral("measured"));
    app.settle();
    app.session().refresh();
    app.settle();
    QVERIFY2(bench.keeping().value(QStringLiteral("able")).toBool(),
             qPrintable(bench.keeping().value(QStringLiteral("stands")).toString()));
    bench.keep(QStringLiteral("wheel 1L"));
    app.settle();
    QVERIFY(app.session().errorWhat().isEmpty());
    QVERIFY(bench.keeping().value(QStringLiteral("stands")).toString().contains(QStringLiteral("kPa")));
    const Id id = walk.walk()->id;
    app.close();
    const auto marks = marksOf(app.book(), id);
    const Mark *mark = findMark(*marks, "tire-pressure");
    QVERIFY(mark != nullptr);
    QVERIFY(mark->state == MarkState::Pass); // a figure changes no mark
    QCOMPARE(mark->readings.size(), std::size_t{1});
    QCOMPARE(mark->readings.front().place, std::string("wheel 1L"));
    QCOMPARE(mark->readings.front().tool, std::string("bench tire-pressure"));
}

void TstBench::theStarIsDrawnInItsOrder()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(QStringLiteral("star"));
    bench.type(QStringLiteral("studs"), QStringLiteral("5"));
    QVERIFY(!bench.pictures().isEmpty());
    const QVariantMap picture = bench.pictures().first().toMap();
    QCOMPARE(picture.value(QStringLiteral("kind")).toString(), QStringLiteral("star"));
    QSet<int> nuts;
    for (const QVariant &nut : picture.value(QStringLiteral("sequence")).toList())
        nuts.insert(nut.toInt());
    QCOMPARE(nuts, QSet<int>({1, 2, 3, 4, 5}));
    // what else is typed leaves the picture as it is
    QSignalSpy drawn(&bench, &BenchModel::picturesChanged);
    app.session().refresh();
    app.settle();
    QCOMPARE(drawn.count(), 0);
}

void TstBench::theWheelsShowTheirReadings()
{
    AppFixture app(AppFixture::Book::Demo);
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    QVariantMap map;
    for (const QVariant &picture : bench.pictures()) {
        if (picture.toMap().value(QStringLiteral("kind")) == QStringLiteral("wheels"))
            map = picture.toMap();
    }
    const QVariantList wheels = map.value(QStringLiteral("wheels")).toList();
    QVERIFY(wheels.size() >= 2);
    QVERIFY(wheels[0].toMap().value(QStringLiteral("left")).toBool());
    QVERIFY(!wheels[1].toMap().value(QStringLiteral("left")).toBool());
    for (const QVariant &wheel : wheels) {
        const QVariantMap one = wheel.toMap();
        QVERIFY(one.value(QStringLiteral("value")).toString().endsWith(QStringLiteral("kPa")));
        QVERIFY(!one.value(QStringLiteral("history")).toList().isEmpty());
    }
}

void TstBench::aFittedWheelMakesItsNutsDue()
{
    AppFixture app;
    BenchModel &bench = *app.open().bench();
    bench.open(pressure);
    QVERIFY(bench.fitting().isEmpty());
    bench.open(QStringLiteral("star"));
    QVERIFY(bench.fitting().value(QStringLiteral("when")).toString().isEmpty());
    bench.noteWheelFitted(QStringLiteral("wheel 2R"));
    app.settle();
    QVERIFY(!bench.fitting().value(QStringLiteral("when")).toString().isEmpty());
    bool isListed = false;
    for (int row = 0; row < app.session().due()->rows()->rowCount(); ++row) {
        isListed = isListed ||
                   (cell(*app.session().due()->rows(), row, "point") == QStringLiteral("wheel-nut-torque") &&
                    cell(*app.session().due()->rows(), row, "kind") == QStringLiteral("event"));
    }
    QVERIFY(isListed);
    app.close();
    const Result<std::vector<Rig>> rigs = allRigs(app.book());
    const auto happenings = happeningsOf(app.book(), rigs->front().id);
    QCOMPARE(happenings->size(), std::size_t{1});
    QCOMPARE(happenings->front().kind, std::string("wheel_fitted"));
    QCOMPARE(happenings->front().note, std::string("wheel 2R"));
}

QTEST_MAIN(TstBench)

#include "tst_bench.moc"

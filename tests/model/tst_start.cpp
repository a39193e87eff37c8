// SPDX-License-Identifier: Apache-2.0
// The first five minutes without a window: nothing is made too early, the first walk is short, a rig's sheet
// can be put right, the invented rig comes and goes, a backup comes back.
#include <QtTest>

#include "app_fixture.hpp"
#include "demo/load_demo.hpp"
#include "logbook/check.hpp"
#include "logbook/query.hpp"
#include "rig_form.hpp"
#include "start/first_look.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QVariantMap least()
{
    return {{QStringLiteral("name"), QStringLiteral("Kea")},
            {QStringLiteral("kind"), QStringLiteral("travel_trailer")},
            {QStringLiteral("practice"), QStringLiteral("north_america")}};
}

QVariantMap with(QVariantMap map, const char *key, const QVariant &value)
{
    map[QLatin1String(key)] = value;
    return map;
}

void addRig(AppFixture &app, const QVariantMap &map)
{
    QSignalSpy added(&app.session(), &Session::rigAdded);
    app.session().addRig(map);
    QVERIFY(!added.isEmpty() || added.wait());
    app.settle();
}

QVariantMap suggested(const RigModel &rig)
{
    for (const QVariant &kind : rig.kinds()) {
        if (kind.toMap().value(QStringLiteral("suggested")).toBool())
            return kind.toMap();
    }
    return {};
}

QStringList names(const Session &session, bool archived)
{
    QStringList list;
    for (const QVariant &rig : session.rigs()) {
        if (rig.toMap().value(QStringLiteral("archived")).toBool() == archived)
            list << rig.toMap().value(QStringLiteral("name")).toString();
    }
    return list;
}

} // namespace

class TstStart : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void noFileIsMadeBeforeThereIsARig();
    void threeAnswersMakeARig();
    void whatIsTypedIsDrawnAtOnce();
    void wrongTextsAreDrawnAsUsual();
    void theFirstWalkIsShort();
    void jobsAreNotCountedAsLooking();
    void aSheetIsPutRight();
    void untouchedFiguresKeepTheirValue();
    void platesAreRead();
    void aRigIsPutAwayAndComesBack();
    void theInventedRigIsMadeBesideOnesOwn();
    void aBackupComesBackBesideWhatIsThere();
};

void TstStart::noFileIsMadeBeforeThereIsARig()
{
    AppFixture app(AppFixture::Book::Empty);
    QFile::remove(QString::fromStdString(app.file()));
    app.parts.bookMissing = true;
    Session &session = app.open();
    session.refresh();
    app.settle();
    QVERIFY(!session.hasRig());
    QVERIFY(!QFile::exists(QString::fromStdString(app.file())));
    addRig(app, least());
    QVERIFY(session.hasRig());
    QVERIFY(QFile::exists(QString::fromStdString(app.file())));
}

void TstStart::threeAnswersMakeARig()
{
    AppFixture app(AppFixture::Book::Empty);
    app.open();
    addRig(app, least());
    const RigModel &rig = *app.session().rig();
    QCOMPARE(rig.name(), QStringLiteral("Kea"));
    QCOMPARE(rig.drawn().value(QStringLiteral("axles")).toList().size(), 2);
    QVERIFY(rig.drawn().value(QStringLiteral("bodyLength")).toDouble() > 5.0 &&
            rig.drawn().value(QStringLiteral("bodyLength")).toDouble() < 8.0);
    QVERIFY(rig.drawn().value(QStringLiteral("hitchLength")).toDouble() > 0.0);
}

void TstStart::whatIsTypedIsDrawnAtOnce()
{
    AppFixture app(AppFixture::Book::Empty);
    const RigModel &rig = *app.open().rig();
    const auto length = [&](const QVariantMap &map) {
        return rig.draft(map, false).value(QStringLiteral("bodyLength")).toDouble();
    };
    // NIST SP 811 appendix B.8: 1 ft = 0.3048 m exactly
    QVERIFY(std::abs(length(with(least(), "length", QStringLiteral("21 ft"))) - 21 * 0.3048) < 1e-9);
    const QVariantMap three = rig.draft(with(least(), "axle_count", QStringLiteral("3")), false);
    QCOMPARE(three.value(QStringLiteral("axles")).toList().size(), 3);
    QCOMPARE(three.value(QStringLiteral("kindSlug")).toString(), QStringLiteral("travel_trailer"));
    QVERIFY(rig.draft({}, false).value(QStringLiteral("bodyLength")).toDouble() > 1.0); // nothing chosen yet
}

void TstStart::wrongTextsAreDrawnAsUsual()
{
    AppFixture app(AppFixture::Book::Empty);
    const RigModel &rig = *app.open().rig();
    const QVariantMap usual = rig.draft(least(), false);
    for (const char *wrong : {"long", "2000 m", "-3 m", "6 kg", "6,,4"}) {
        const QVariantMap drawn = rig.draft(with(least(), "length", QLatin1String(wrong)), false);
        QCOMPARE(drawn.value(QStringLiteral("bodyLength")), usual.value(QStringLiteral("bodyLength")));
    }
    QVariantMap two = with(least(), "axles", QStringList{QStringLiteral("90 m")});
    two = with(two, "width", QStringLiteral("wide"));
    QCOMPARE(rig.draft(two, false).value(QStringLiteral("axles")), usual.value(QStringLiteral("axles")));
}

void TstStart::theFirstWalkIsShort()
{
    AppFixture app(AppFixture::Book::Empty);
    app.open();
    addRig(app, least());
    const RigModel &rig = *app.session().rig();
    const QVariantMap first = rig.kinds().first().toMap();
    QCOMPARE(first, suggested(rig));
    QCOMPARE(first.value(QStringLiteral("slug")).toString(), QStringLiteral("first_look"));
    QVERIFY(first.value(QStringLiteral("minutes")).toInt() <= firstLookMinutes);
    QVERIFY(first.value(QStringLiteral("lines")).toInt() > 4);
    QVERIFY(rig.barDetail().startsWith(QStringLiteral("First look")));

    QSignalSpy started(&app.walk(), &WalkModel::started);
    app.walk().start(first.value(QStringLiteral("walk")).toString(),
                     first.value(QStringLiteral("budget")).toInt());
    QVERIFY(!started.isEmpty() || started.wait());
    app.settle();
    QCOMPARE(app.walk().count(), first.value(QStringLiteral("lines")).toInt());
    app.walk().cautionsRead();
    app.walk().pass(QStringLiteral("looked"));
    app.settle();
    app.session().refresh();
    app.settle();
    QVERIFY(suggested(rig).value(QStringLiteral("slug")).toString() != QStringLiteral("first_look"));
}

void TstStart::jobsAreNotCountedAsLooking()
{
    AppFixture app;
    const RigModel &rig = *app.open().rig();
    double all = 0.0;
    int jobs = 0;
    for (const QVariant &entry : rig.kinds()) {
        const QVariantMap kind = entry.toMap();
        if (kind.value(QStringLiteral("slug")).toString() != QStringLiteral("full_round"))
            continue;
        all = kind.value(QStringLiteral("minutes")).toDouble();
        jobs = kind.value(QStringLiteral("jobs")).toString().section(u' ', 0, 0).toInt();
    }
    double counted = 0.0;
    int longOnes = 0;
    const auto tape = tapeFor(*app.parts.catalogue, tandem(), "full_round", {}, {});
    QVERIFY(tape.has_value());
    for (const TapeLine &line : *tape) {
        for (const std::string &slug : line.points) {
            const double minutes = app.parts.catalogue->find(slug)->minutes;
            counted += minutes < 15 ? minutes : 0;
            longOnes += minutes < 15 ? 0 : 1;
        }
    }
    QVERIFY(jobs > 0);
    QCOMPARE(jobs, longOnes);
    QCOMPARE(all, std::round(counted));
}

void TstStart::aSheetIsPutRight()
{
    AppFixture app;
    Session &session = app.open();
    QVariantMap form = session.rig()->formTexts();
    form[QStringLiteral("name")] = QStringLiteral("Weka");
    form[QStringLiteral("length")] = QStringLiteral("6.7 m");
    QSignalSpy written(&session, &Session::rigAdded);
    session.changeRig(form);
    QVERIFY(session.rigProblems().isEmpty());
    QVERIFY(!written.isEmpty() || written.wait());
    app.settle();
    QCOMPARE(session.rig()->name(), QStringLiteral("Weka"));
    QCOMPARE(session.rig()->drawn().value(QStringLiteral("bodyLength")).toDouble(), 6.7);
    QCOMPARE(session.rigs().size(), 1); // the same rig, not another one

    form[QStringLiteral("length")] = QStringLiteral("far");
    session.changeRig(form);
    QCOMPARE(session.rigProblems().size(), 1);
    QCOMPARE(session.rigProblems().first().toMap().value(QStringLiteral("field")).toString(),
             QStringLiteral("length"));
    QCOMPARE(session.rig()->drawn().value(QStringLiteral("bodyLength")).toDouble(), 6.7);
    app.close();
    QVERIFY(checkLogbook(app.book(), true)->faults.empty());
}

// What a form shows is shorter than what is known: 21 ft are 6.4008 m and stand there as 6.4 m.
void TstStart::untouchedFiguresKeepTheirValue()
{
    Rig rig = tandem();
    rig.measures.length = Length::fromSi(21 * 0.3048);
    rig.tires.placard = psi(49); // under the sidewall's 345 kPa
    rig.ratings.gross = Mass::fromSi(2721.554);
    for (const char *language : {"en", "es", "de"}) {
        for (const UnitSystem units : {UnitSystem::Si, UnitSystem::Us}) {
            Voice voice;
            voice.locale = QLocale(QLatin1String(language));
            voice.units = units;
            const RigForm form = readRigForm(rigFormTexts(rig, voice), rig, voice);
            QVERIFY2(
                form.problems.isEmpty(),
                qPrintable(QLatin1String(language) + u' ' +
                           (form.problems.isEmpty()
                                ? QString()
                                : form.problems.first().toMap().value(QStringLiteral("field")).toString())));
            QVERIFY2(form.rig == rig, language);
        }
    }
    Voice voice;
    QVariantMap other = rigFormTexts(rig, voice);
    other[QStringLiteral("kind")] = QStringLiteral("van");
    const RigForm van = readRigForm(other, rig, voice);
    QCOMPARE(van.rig.hitch, HitchType::None);
    QCOMPARE(van.rig.openings.size(), rig.openings.size());
}

void TstStart::platesAreRead()
{
    QVariantMap map = with(least(), "placard", QStringLiteral("65 psi"));
    map = with(map, "max_pressure", QStringLiteral("4.5 bar"));
    map = with(map, "max_load", QStringLiteral("2,040 lb"));
    map = with(map, "tire_size", QStringLiteral("205/75 R14"));
    map = with(map, "torque", QStringLiteral("100 lb·ft"));
    const RigForm form = readRigForm(map, UnitSystem::Si);
    QVERIFY(form.problems.isEmpty());
    // NIST SP 811 appendix B.8: 1 psi = 6.894757 kPa, 1 bar = 100 kPa, 1 lb = 0.45359237 kg
    QVERIFY(std::abs(form.rig.tires.placard->si() - 448159.2) < 0.05);
    QVERIFY(std::abs(form.rig.tires.maxPressure->si() - 450000) < 1e-6);
    QVERIFY(std::abs(form.rig.tires.maxLoad->si() - 2040 * 0.45359237) < 1e-9);
    QCOMPARE(form.rig.tires.size, std::string("205/75 R14"));

    const auto fieldAtFault = [&](const char *key, const char *typed) {
        const RigForm wrong = readRigForm(with(map, key, QLatin1String(typed)), UnitSystem::Si);
        return wrong.problems.size() == 1
                   ? wrong.problems.first().toMap().value(QStringLiteral("field")).toString()
                   : QStringLiteral("%1 faults").arg(wrong.problems.size());
    };
    QCOMPARE(fieldAtFault("placard", "a lot"), QStringLiteral("placard"));
    QCOMPARE(fieldAtFault("placard", "70 psi"), QStringLiteral("placard")); // over the sidewall's
    QCOMPARE(fieldAtFault("max_load", "3 kg"), QStringLiteral("max_load"));
    QCOMPARE(fieldAtFault("gross", "2 m"), QStringLiteral("gross"));
    QCOMPARE(fieldAtFault("torque", "9000 N·m"), QStringLiteral("torque"));
}

void TstStart::aRigIsPutAwayAndComesBack()
{
    AppFixture app;
    Session &session = app.open();
    const QString first = session.rig()->name();
    addRig(app, least());
    QCOMPARE(session.rig()->name(), QStringLiteral("Kea"));
    QString id;
    for (const QVariant &rig : session.rigs()) {
        if (rig.toMap().value(QStringLiteral("current")).toBool())
            id = rig.toMap().value(QStringLiteral("id")).toString();
    }
    session.archiveRig(id, true);
    QTRY_COMPARE(names(session, true), QStringList{QStringLiteral("Kea")});
    QTRY_COMPARE(session.rig()->name(), first);
    QCOMPARE(names(session, false), QStringList{first});
    session.archiveRig(id, false);
    QTRY_COMPARE(names(session, true), QStringList());
    app.settle();
    QCOMPARE(session.rig()->name(), QStringLiteral("Kea"));
}

void TstStart::theInventedRigIsMadeBesideOnesOwn()
{
    AppFixture app(AppFixture::Book::Empty);
    const QString demo = QString::fromStdString(app.folder().file("demo.snug"));
    QStringList opened;
    app.parts.books.current = app.parts.books.own = QString::fromStdString(app.file());
    app.parts.books.demo = demo;
    QThread *made = nullptr;
    app.parts.books.makeDemo = [&](const std::function<void(int, int)> &progress) -> Status {
        made = QThread::currentThread();
        const auto report = loadDemo(demo.toStdString(), builtInDemo(), *app.parts.codec, progress);
        return report ? done() : Status(report.error());
    };
    app.parts.books.open = [&](const QString &file, const QString &forgotten) {
        opened << file + u'|' + forgotten;
    };
    Session &session = app.open();
    BooksModel &books = *session.books();
    QVERIFY(books.isDemoOffered());
    QVERIFY(!books.isDemo());
    QStringList steps;
    connect(&books, &BooksModel::changed, this, [&] { steps << books.step(); });
    books.openDemo();
    QVERIFY(books.isBusy());
    books.openDemo(); // a second tap does not make two
    QTRY_VERIFY_WITH_TIMEOUT(!opened.isEmpty(), 60000);
    QCOMPARE(opened, QStringList{demo + u'|'});
    QVERIFY(made != nullptr && made != thread());
    QVERIFY(steps.size() > 20); // told after every act
    QVERIFY(!books.isBusy());
    QVERIFY(!session.hasRig()); // one's own stays empty

    opened.clear();
    app.parts.books.current = demo;
    TestBook reader("reader");
    app.parts.openBook = [&] { return Logbook::open(demo.toStdString(), reader.options(false)); };
    QVERIFY(!app.open().books()->isDemoOffered());
    QVERIFY(app.session().books()->isDemo());
    QVERIFY(app.session().hasRig());
    app.session().books()->leaveDemo(true);
    QCOMPARE(opened, QStringList{QString::fromStdString(app.file()) + u'|' + demo});
    app.close(); // before the reader that its logbook leans on
}

void TstStart::aBackupComesBackBesideWhatIsThere()
{
    AppFixture app;
    const std::string again = app.folder().file("again.snug");
    QStringList opened;
    app.parts.books.current = app.parts.books.own = QString::fromStdString(app.file());
    app.parts.books.restore = [&](const std::string &backup) -> Result<std::string> {
        TestBook other("restored");
        const auto report = restoreLogbook(backup, again, other.options());
        return report ? Result<std::string>(again) : report.error();
    };
    app.parts.books.open = [&](const QString &file, const QString &) { opened << file; };
    BooksModel &books = *app.open().books();
    const QString copy = QString::fromStdString(app.folder().file("copy.snug"));
    books.backUp(QUrl::fromLocalFile(copy).toString());
    QTRY_VERIFY(!books.isBusy());
    QVERIFY(books.outcome().contains(copy));
    books.backUp(copy); // taken
    QTRY_VERIFY(!books.isBusy());
    QVERIFY(!app.session().errorWhat().isEmpty());
    app.session().clearError();

    books.restore(QUrl::fromLocalFile(copy).toString());
    QTRY_VERIFY(!books.isBusy());
    QCOMPARE(opened, QStringList{QString::fromStdString(again)});
    books.restore(QString::fromStdString(app.folder().file("none.snug")));
    QTRY_VERIFY(!books.isBusy());
    QVERIFY(!app.session().errorWhat().isEmpty());
    QCOMPARE(opened.size(), 1);
}

QTEST_MAIN(TstStart)
#include "tst_start.moc"

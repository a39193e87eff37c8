// SPDX-License-Identifier: Apache-2.0
// A report chosen, looked at and saved, over the demo's logbook.
#include <atomic>
#include <memory>

#include <QFile>
#include <QSignalSpy>
#include <QThread>
#include <QUrl>
#include <QtTest>

#include "app_fixture.hpp"
#include "desk/paper_desk.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

/// Counts what is asked for, and by which thread.
class WatchedDesk final : public ReportDesk {
public:
    explicit WatchedDesk(const SupplyList &supplies) : m_desk(supplies) {}
    [[nodiscard]] std::vector<ReportKind> kinds(const Texts &texts) const override
    {
        return m_desk.kinds(texts);
    }
    [[nodiscard]] std::vector<std::string> endings() const override { return m_desk.endings(); }
    [[nodiscard]] ReportChoices choices(const Shown &shown, const std::string &kind) const override
    {
        return m_desk.choices(shown, kind);
    }
    [[nodiscard]] Result<ReportLook> look(Logbook &book, const Shown &shown, const ReportWish &wish,
                                          int width) const override
    {
        note();
        ++looks;
        return m_desk.look(book, shown, wish, width);
    }
    [[nodiscard]] Result<std::string> bytes(Logbook &book, const Shown &shown, const ReportWish &wish,
                                            const std::string &ending) const override
    {
        note();
        return m_desk.bytes(book, shown, wish, ending);
    }
    [[nodiscard]] Result<std::string> plotBytes(const Plot &plot, const std::string &ending) const override
    {
        note();
        return m_desk.plotBytes(plot, ending);
    }
    mutable std::atomic<int> looks = 0;
    mutable std::atomic<int> onMain = 0;

private:
    void note() const
    {
        if (QThread::currentThread() == QCoreApplication::instance()->thread())
            ++onMain;
    }
    PaperDesk m_desk;
};

struct Home {
    explicit Home(AppFixture::Book book) : fixture(book), desk(*fixture.parts.supplies)
    {
        fixture.parts.reports = &desk;
        fixture.open();
    }
    ReportModel &reports() { return *fixture.session().reports(); }
    QString file(const char *name)
    {
        return QString::fromStdString((fixture.folder().path() / name).string());
    }
    AppFixture fixture;
    WatchedDesk desk;
};

QByteArray contentOf(const QString &name)
{
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class TstReports : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { m_demo = std::make_unique<Home>(AppFixture::Book::Demo); } // takes seconds: once
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void nothingIsDrawnBeforeItIsWanted();
    void pagesComeFromTheWorker();
    void eachKindIsNamedAndDrawn();
    void aChangeMeanwhileIsDrawnOnce();
    void filesAreWhatTheirEndingSays();
    void whatItIsAboutIsChosen();
    void whatIsSignedStaysAsItStood();
    void aFileThatCannotBeWrittenIsTold();
    void withoutAWalkThereIsStillAPage();
    void cleanupTestCase() { m_demo.reset(); }

private:
    std::unique_ptr<Home> m_demo;
};

void TstReports::nothingIsDrawnBeforeItIsWanted()
{
    Home &home = *m_demo;
    QCOMPARE(home.desk.looks.load(), 0);
    QVERIFY(home.reports().pages().isEmpty());
}

void TstReports::pagesComeFromTheWorker()
{
    Home &home = *m_demo;
    home.reports().open();
    QVERIFY(home.reports().isBusy());
    home.fixture.settle();
    QVERIFY(home.reports().pageCount() >= 2);
    QCOMPARE(home.desk.onMain.load(), 0);
    ReportPictures pictures(home.reports().sheets());
    QVERIFY(pictures.flags().testFlag(QQmlImageProviderBase::ForceAsynchronousImageLoading));
    QSize size;
    const QString name = home.reports().pages().first().mid(QStringLiteral("image://report/").size());
    const QImage page = pictures.requestImage(name, &size, {});
    // ISO 216: the sides are as 1 to the root of 2
    QVERIFY(std::abs(static_cast<double>(size.height()) / size.width() - std::sqrt(2.0)) < 0.01);
    QVERIFY(page.pixelColor(0, 0) == QColor(Qt::white));
    QVERIFY(home.reports().words().contains(QStringLiteral("Not an official inspection.")));
}

void TstReports::eachKindIsNamedAndDrawn()
{
    Home &home = *m_demo;
    home.reports().open();
    const QVariantList kinds = home.reports().kinds();
    QCOMPARE(kinds.size(), 13);
    for (const QVariant &kind : kinds) {
        const QVariantMap one = kind.toMap();
        QVERIFY(!one[QStringLiteral("name")].toString().isEmpty());
        home.reports().setKind(one[QStringLiteral("slug")].toString());
        home.fixture.settle();
        QVERIFY2(home.reports().fault().isEmpty(), qPrintable(one[QStringLiteral("slug")].toString()));
        QVERIFY(!home.reports().pages().isEmpty());
    }
}

void TstReports::aChangeMeanwhileIsDrawnOnce()
{
    Home &home = *m_demo;
    home.reports().open();
    home.fixture.settle();
    home.desk.looks = 0;
    for (const char *sheet : {"letter", "a4", "letter", "a4", "letter"})
        home.reports().setSheet(QString::fromLatin1(sheet));
    home.fixture.settle();
    QCOMPARE(home.desk.looks.load(), 2); // the one that was on its way, and the last
    ReportPictures pictures(home.reports().sheets());
    QSize size;
    (void)pictures.requestImage(home.reports().pages().first().mid(QStringLiteral("image://report/").size()),
                                &size, {});
    QVERIFY(std::abs(size.height() * 8.5 / size.width() - 11.0) < 0.05);
}

void TstReports::filesAreWhatTheirEndingSays()
{
    Home &home = *m_demo;
    home.reports().setKind(QStringLiteral("walk"));
    home.reports().open();
    home.fixture.settle();
    const std::vector<std::pair<const char *, QByteArray>> beginnings = {{"pdf", "%PDF-1."},
                                                                         {"html", "<!doctype html>"},
                                                                         {"ics", "BEGIN:VCALENDAR"},
                                                                         {"csv", "walk,"},
                                                                         {"geojson", "{"}};
    for (const auto &[ending, beginning] : beginnings) {
        const QString file = home.file("report.") + QLatin1String(ending);
        home.reports().save(QLatin1String(ending), QUrl::fromLocalFile(file).toString());
        home.fixture.settle();
        QVERIFY(contentOf(file).startsWith(beginning));
        QCOMPARE(home.reports().saved(), QStringLiteral("report.") + QLatin1String(ending));
    }
    QCOMPARE(home.desk.onMain.load(), 0);
    QVERIFY(home.reports().suggested(QStringLiteral("pdf")).endsWith(QStringLiteral("-walk-2026-11-24.pdf")));
}

void TstReports::whatItIsAboutIsChosen()
{
    Home &home = *m_demo;
    ReportModel &reports = home.reports();
    const auto slugOf = [](const QVariant &one) { return one.toMap()[QStringLiteral("slug")].toString(); };
    reports.setKind(QStringLiteral("then_and_now"));
    reports.open();
    home.fixture.settle();
    const QVariantList walks = reports.walks();
    QVERIFY(walks.size() > 3);
    QVERIFY(slugOf(walks[0]).isEmpty());             // the last one
    QCOMPARE(reports.others().size(), walks.size()); // all but itself, and the one before the first offered
    const QString before = reports.words();
    reports.setWalk(slugOf(walks[2]));
    QCOMPARE(slugOf(reports.others()[1]), slugOf(walks[3])); // what stands before it
    reports.setOther(slugOf(walks[3]));
    home.fixture.settle();
    QVERIFY2(reports.fault().isEmpty(), qPrintable(reports.words()));
    QVERIFY(reports.words() != before);
    QCOMPARE(reports.walk(), slugOf(walks[2]));

    reports.setKind(QStringLiteral("work_order"));
    home.fixture.settle();
    QVERIFY(reports.walks().isEmpty());
    QVERIFY(reports.walk().isEmpty());
    QVERIFY(reports.hasSite());
    const QVariantList findings = reports.findings();
    QVERIFY(findings.size() > 1);
    reports.setChosen({slugOf(findings[1]), QStringLiteral("no such id")});
    reports.setSite(QStringLiteral("access"), QStringLiteral(" by the yard gate "));
    home.fixture.settle();
    QCOMPARE(reports.chosen(), QStringList{slugOf(findings[1])});
    QVERIFY(reports.words().contains(QStringLiteral(": by the yard gate\n")));
    const auto titleOf = [&](qsizetype i) {
        return findings[i].toMap()[QStringLiteral("name")].toString().section(u':', 0, 0);
    };
    QVERIFY(reports.words().contains(titleOf(1)));
}

void TstReports::whatIsSignedStaysAsItStood()
{
    Home &home = *m_demo;
    ReportModel &reports = home.reports();
    reports.setKind(QStringLiteral("out_and_back"));
    reports.open();
    home.fixture.settle();
    QCOMPARE(reports.signers().size(), 4);
    const QVariantMap left{{QStringLiteral("x"), 0.1}, {QStringLiteral("y"), 0.1}};
    const QVariantMap right{{QStringLiteral("x"), 0.6},
                            {QStringLiteral("y"), 7.0}}; // off the line: kept on it
    const QVariantList strokes{QVariant(QVariantList{left, right})};
    reports.sign(9, strokes); // no such line
    reports.sign(0, {});      // nothing drawn
    QVERIFY(!reports.isSigned());
    reports.sign(0, strokes);
    home.fixture.settle();
    QVERIFY(reports.isSigned());
    QVERIFY(reports.signers()[0].toMap()[QStringLiteral("signed")].toBool());
    QVERIFY(reports.words().contains(QStringLiteral("signed on the screen, ")));
    const QString file = home.file("signed.html");
    reports.save(QStringLiteral("html"), file);
    home.fixture.settle();
    QVERIFY(contentOf(file).contains("viewBox='0 0 1000 300'"));
    QVERIFY(contentOf(file).contains("L600.0 300.0"));
    reports.setPlace(QStringLiteral("coarse")); // nobody signed that
    home.fixture.settle();
    QVERIFY(!reports.isSigned());
    reports.setPlace(QStringLiteral("left_out"));
    reports.sign(1, strokes);
    reports.close();
    QVERIFY(!reports.isSigned());
}

void TstReports::aFileThatCannotBeWrittenIsTold()
{
    Home &home = *m_demo;
    home.reports().open();
    home.fixture.settle();
    home.reports().save(QStringLiteral("pdf"), home.file("nowhere") + QStringLiteral("/report.pdf"));
    home.fixture.settle();
    QVERIFY(home.reports().saved().isEmpty());
    QVERIFY(!home.reports().fault()[QStringLiteral("what")].toString().isEmpty());
    QVERIFY(!home.reports().pages().isEmpty()); // what was shown stays
}

void TstReports::withoutAWalkThereIsStillAPage()
{
    Home home(AppFixture::Book::Tandem);
    home.reports().open();
    home.fixture.settle();
    QVERIFY(home.reports().pageCount() >= 1 ||
            !home.reports().fault()[QStringLiteral("what")].toString().isEmpty());
}

QTEST_MAIN(TstReports)
#include "tst_reports.moc"

// SPDX-License-Identifier: Apache-2.0
// Plots of the demo in the app: each kind drawn, worked out away from the thread that draws, read again in
// another language and unit, and written as picture, drawing and table that other readers take.
#include <QImage>
#include <QSvgRenderer>
#include <QtTest>

#include "app_fixture.hpp"
#include "desk/paper_desk.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QVariantMap shown(PlotsModel &plots) { return plots.plots().value(plots.which()).toMap(); }

QVariantMap pictureOf(PlotsModel &plots) { return plots.picture(380, 300, 15, 2, QStringLiteral("sans")); }

QByteArray contentOf(const QString &name)
{
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class TstPlots : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() // takes seconds: once
    {
        m_demo = std::make_unique<AppFixture>(AppFixture::Book::Demo);
        m_desk = std::make_unique<PaperDesk>(*m_demo->parts.supplies);
        m_demo->parts.reports = m_desk.get();
        m_demo->open();
    }
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void nothingIsWorkedOutBeforeItIsWanted();
    void eachKindIsDrawn();
    void aFindingHasItsOwnConcern();
    void theLastTwoYearsComeFirst();
    void languageAndUnitsChangeTheWords();
    void filesAreWhatTheirEndingSays();
    void aFileThatCannotBeWrittenIsTold();
    void anEmptyLogbookSaysWhatBringsData();
    void cleanupTestCase() { m_demo.reset(); }

private:
    PlotsModel &plots() { return *m_demo->session().plots(); }
    void open(const QString &thing)
    {
        plots().open(thing);
        m_demo->settle();
    }
    std::unique_ptr<PaperDesk> m_desk;
    std::unique_ptr<AppFixture> m_demo;
};

void TstPlots::nothingIsWorkedOutBeforeItIsWanted()
{
    QVERIFY(plots().plots().isEmpty());
    QVERIFY(pictureOf(plots()).isEmpty());
    QCOMPARE(plots().kinds().size(), 5);
}

void TstPlots::eachKindIsDrawn()
{
    for (const QVariant &kind : plots().kinds()) {
        const QString slug = kind.toMap().value(QStringLiteral("slug")).toString();
        plots().open(slug);
        QVERIFY(plots().isBusy()); // on the worker
        m_demo->settle();
        QCOMPARE(plots().kind(), slug);
        QVERIFY2(!plots().plots().isEmpty(), qPrintable(slug));
        const QVariantMap plot = shown(plots());
        QCOMPARE(plot.value(QStringLiteral("empty")).toString(), QString());
        const QVariantList rows = plot.value(QStringLiteral("rows")).toList();
        QVERIFY2(rows.size() >= 2, qPrintable(slug));
        const QVariantMap picture = pictureOf(plots());
        QVERIFY(!picture.value(QStringLiteral("inks")).toList().isEmpty());
        const QVariantList xs = picture.value(QStringLiteral("xs")).toList();
        QCOMPARE(xs.size(), rows.size());
        for (const QVariant &x : xs)
            QVERIFY(x.toDouble() >= picture.value(QStringLiteral("left")).toDouble() - 1 &&
                    x.toDouble() <= 381);
        for (const QVariant &word : picture.value(QStringLiteral("words")).toList()) {
            const QVariantMap one = word.toMap();
            QVERIFY2(one.value(QStringLiteral("x")).toDouble() >= -0.5 &&
                         one.value(QStringLiteral("x")).toDouble() +
                                 one.value(QStringLiteral("width")).toDouble() <=
                             381,
                     qPrintable(one.value(QStringLiteral("text")).toString()));
        }
    }
}

void TstPlots::aFindingHasItsOwnConcern()
{
    open(QStringLiteral("concern"));
    const QVariantList subjects = plots().subjects();
    QVERIFY(subjects.size() >= 2); // the worst, and open findings
    const QString worst = shown(plots()).value(QStringLiteral("title")).toString();
    plots().setSubject(subjects.last().toMap().value(QStringLiteral("slug")).toString());
    m_demo->settle();
    QVERIFY(shown(plots()).value(QStringLiteral("title")).toString() != worst);
    const int before = plots().serial();
    plots().setKind(QStringLiteral("shake"));
    m_demo->settle();
    QVERIFY(plots().serial() > before);
    QCOMPARE(plots().subject(), QString());
    QVERIFY(plots().subjects().isEmpty());
}

void TstPlots::theLastTwoYearsComeFirst()
{
    open(QStringLiteral("weathering"));
    const qsizetype some = shown(plots()).value(QStringLiteral("rows")).toList().size();
    QVERIFY(some <= 24);
    const bool more = plots().hasMore();
    plots().setAll(true);
    m_demo->settle();
    const qsizetype all = shown(plots()).value(QStringLiteral("rows")).toList().size();
    QCOMPARE(all > some, more);
    QCOMPARE(plots().hasMore(), more);
}

void TstPlots::languageAndUnitsChangeTheWords()
{
    open(QStringLiteral("shake"));
    const QString title = shown(plots()).value(QStringLiteral("title")).toString();
    QVERIFY(shown(plots()).value(QStringLiteral("about")).toString().contains(QStringLiteral("km")));
    m_demo->session().setUnits(QStringLiteral("us"));
    m_demo->settle();
    QVERIFY(shown(plots()).value(QStringLiteral("about")).toString().contains(QStringLiteral("mi")));
    m_demo->session().setLanguage(QStringLiteral("es"));
    m_demo->settle();
    QVERIFY(shown(plots()).value(QStringLiteral("title")).toString() != title);
    m_demo->session().setLanguage(QStringLiteral("en"));
    m_demo->session().setUnits(QStringLiteral("si"));
    m_demo->settle();
}

void TstPlots::filesAreWhatTheirEndingSays()
{
    open(QStringLiteral("cost"));
    QCOMPARE(plots().forms().size(), 3);
    QVERIFY(plots().suggested(QStringLiteral("png")).endsWith(QStringLiteral(".png")));
    for (const QString &ending : {QStringLiteral("png"), QStringLiteral("svg"), QStringLiteral("csv")}) {
        const QString file = QString::fromStdString(m_demo->folder().file("plot." + ending.toStdString()));
        plots().save(ending, file);
        m_demo->settle();
        QVERIFY(plots().fault().isEmpty());
        QCOMPARE(plots().saved(), QStringLiteral("plot.") + ending);
        const QByteArray bytes = contentOf(file);
        if (ending == QStringLiteral("png")) {
            const QImage image = QImage::fromData(bytes, "PNG");
            QCOMPARE(image.width(), 2000);
            QVERIFY(image.pixelColor(2, 2) == QColor(Qt::white));
            int dark = 0;
            for (int x = 0; x < image.width(); x += 4) {
                for (int y = 0; y < image.height(); y += 4)
                    dark += image.pixelColor(x, y).lightness() < 80;
            }
            QVERIFY(dark > 1000); // bars and words
        } else if (ending == QStringLiteral("svg")) {
            QVERIFY(QSvgRenderer(bytes).isValid());
        } else {
            QVERIFY(bytes.startsWith("year,cost,currency,mends\r\n"));
            QCOMPARE(bytes.count('\n'), shown(plots()).value(QStringLiteral("rows")).toList().size() + 1);
        }
    }
}

void TstPlots::aFileThatCannotBeWrittenIsTold()
{
    open(QStringLiteral("cost"));
    plots().save(QStringLiteral("svg"), QStringLiteral("/nowhere/at/all.svg"));
    m_demo->settle();
    QVERIFY(!plots().fault().value(QStringLiteral("what")).toString().isEmpty());
    QVERIFY(!plots().fault().value(QStringLiteral("act")).toString().isEmpty());
    QCOMPARE(plots().saved(), QString());
}

void TstPlots::anEmptyLogbookSaysWhatBringsData()
{
    AppFixture app;
    app.open();
    PlotsModel &none = *app.session().plots();
    for (const QVariant &kind : none.kinds()) {
        none.open(kind.toMap().value(QStringLiteral("slug")).toString());
        app.settle();
        QCOMPARE(none.plots().size(), 1);
        QVERIFY(shown(none).value(QStringLiteral("empty")).toString().size() > 20);
        QVERIFY(pictureOf(none).isEmpty());
        QVERIFY(none.forms().isEmpty()); // no desk, no files
    }
}

QTEST_MAIN(TstPlots)
#include "tst_plots.moc"

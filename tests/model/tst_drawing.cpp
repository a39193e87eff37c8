// SPDX-License-Identifier: Apache-2.0
// Lines on a photo: kept beside the untouched original, with lengths told by ratio, and taken back.
#include <cmath>

#include <QImageReader>
#include <QtTest>

#include "app_fixture.hpp"
#include "keys/hash.hpp"
#include "logbook/photo_store.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const char *const photoName = "front-seam-2025-03.jpg";

QString address() { return QUrl::fromLocalFile(photoFile(photoName)).toString(); }

QVariantMap seam(const QVariantList &lines)
{
    return {{QStringLiteral("defect"), QStringLiteral("crack")},
            {QStringLiteral("grade"), 2},
            {QStringLiteral("photos"), QVariantList{QVariantMap{{QStringLiteral("file"), address()},
                                                                {QStringLiteral("lines"), lines}}}}};
}

void goToSeam(WalkModel &walk)
{
    for (int row = 0; row < walk.count(); ++row) {
        if (walk.walk()->tape[static_cast<std::size_t>(row)].slug == "front-cap-seam")
            walk.goTo(row);
    }
}

// A walk with one finding and its photo; gives the photo's hash.
QString findSeam(AppFixture &app, const QVariantList &lines = {})
{
    app.open();
    app.start(QStringLiteral("full_round"));
    goToSeam(app.walk());
    app.walk().attention(seam(lines));
    app.settle();
    return Voice::text(blake2b(slurp(photoFile(photoName).toStdString())).text());
}

double metresOf(const QVariant &shape) { return shape.toMap().value(QStringLiteral("metres")).toDouble(); }

} // namespace

class TstDrawing : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void linesAreKeptBesideTheUntouchedPhoto();
    void aSecondRulerIsToldByRatio();
    void aRulerWithoutAnyLengthIsNotDrawn();
    void eraseAndUndoGoBackOneByOne();
    void whatIsDrawnBeforeTheMarkGoesWithIt();
};

void TstDrawing::linesAreKeptBesideTheUntouchedPhoto()
{
    AppFixture app;
    const QString hash = findSeam(app);
    DrawingModel &drawing = *app.session().drawing();
    drawing.open(hash);
    drawing.add(QStringLiteral("circle"), 0.5, 0.5, 0.6, 0.5, 1.0, {});
    drawing.add(QStringLiteral("arrow"), 0.1, 0.1, 0.4, 0.4, 1.0, {});
    QCOMPARE(drawing.drawn().value(hash).toList().size(), 2);
    app.open(); // another run of the program
    const QVariantList kept = app.session().drawing()->drawn().value(hash).toList();
    QCOMPARE(kept.size(), 2);
    QCOMPARE(kept[0].toMap().value(QStringLiteral("kind")).toString(), QStringLiteral("circle"));
    QCOMPARE(kept[1].toMap().value(QStringLiteral("x2")).toDouble(), 0.4);
    app.close();
    const PhotoStore store(app.book().photoFolder());
    const std::string bytes = slurp(photoFile(photoName).toStdString());
    const auto original = store.original(blake2b(bytes));
    QVERIFY(original.has_value() && *original == bytes);
}

void TstDrawing::aSecondRulerIsToldByRatio()
{
    AppFixture app;
    const QString hash = findSeam(app);
    DrawingModel &drawing = *app.session().drawing();
    drawing.open(hash);
    QVERIFY(!drawing.isScaled());
    drawing.add(QStringLiteral("ruler"), 0.1, 0.5, 0.5, 0.5, 1.0, QStringLiteral("4 3/4 in"));
    QVERIFY(drawing.isScaled());
    // NIST SP 811 appendix B.8: 1 in = 25.4 mm exactly
    QVERIFY(std::abs(metresOf(drawing.shapes()[0]) - 4.75 * 0.0254) < 1e-12);
    drawing.add(QStringLiteral("ruler"), 0.1, 0.2, 0.3, 0.2, 1.0, {});
    QVERIFY(std::abs(metresOf(drawing.shapes()[1]) - 4.75 * 0.0254 / 2) < 1e-9);
    // upright: as many shares of the height are shorter by the picture's own aspect, as Qt reads it
    QImageReader reader(photoFile(photoName));
    reader.setAutoTransform(true);
    const QSize size = reader.read().size();
    drawing.add(QStringLiteral("ruler"), 0.1, 0.2, 0.1, 0.6, 1.0, {});
    const double wanted = 4.75 * 0.0254 * size.height() / size.width();
    QVERIFY(std::abs(metresOf(drawing.shapes()[2]) - wanted) < 1e-9);
    QVERIFY(drawing.shapes()[1]
                .toMap()
                .value(QStringLiteral("text"))
                .toString()
                .startsWith(QStringLiteral("about ")));
    QVERIFY(!drawing.shapes()[0]
                 .toMap()
                 .value(QStringLiteral("text"))
                 .toString()
                 .startsWith(QStringLiteral("about ")));
}

void TstDrawing::aRulerWithoutAnyLengthIsNotDrawn()
{
    AppFixture app;
    DrawingModel &drawing = *((void)findSeam(app), app.session().drawing());
    drawing.open({}); // the newest photo of an open finding
    QVERIFY(!drawing.photo().isEmpty());
    for (const char *typed : {"", "long", "-3 mm", "0 mm"}) {
        drawing.add(QStringLiteral("ruler"), 0.1, 0.5, 0.5, 0.5, 1.0, QLatin1String(typed));
        QVERIFY2(!drawing.problem().isEmpty(), typed);
        QVERIFY(drawing.shapes().isEmpty());
    }
    drawing.add(QStringLiteral("ruler"), 0.1, 0.5, 0.5, 0.5, 1.0, QStringLiteral("120 mm"));
    QVERIFY(drawing.problem().isEmpty());
    QCOMPARE(drawing.shapes().size(), 1);
    app.settle();
}

void TstDrawing::eraseAndUndoGoBackOneByOne()
{
    AppFixture app;
    const QString hash = findSeam(app);
    DrawingModel &drawing = *app.session().drawing();
    drawing.open(hash);
    for (const double x : {0.2, 0.4, 0.6})
        drawing.add(QStringLiteral("circle"), x, 0.5, x + 0.1, 0.5, 1.0, {});
    drawing.eraseLast();
    QCOMPARE(drawing.shapes().size(), 2);
    drawing.eraseAll();
    QVERIFY(drawing.shapes().isEmpty());
    drawing.undo();
    QCOMPARE(drawing.shapes().size(), 2);
    drawing.undo();
    QCOMPARE(drawing.shapes().size(), 3);
    app.open();
    QCOMPARE(app.session().drawing()->drawn().value(hash).toList().size(), 3);
}

void TstDrawing::whatIsDrawnBeforeTheMarkGoesWithIt()
{
    AppFixture app;
    app.open();
    DrawingModel &drawing = *app.session().drawing();
    drawing.open(address()); // still a file
    drawing.add(QStringLiteral("circle"), 0.5, 0.5, 0.6, 0.5, 4.0 / 3.0, {});
    const QVariantList lines = drawing.linesOf(address());
    QCOMPARE(lines.size(), 1);
    const QString hash = findSeam(app, lines);
    QCOMPARE(app.session().drawing()->drawn().value(hash).toList().size(), 1);

    // one undo takes back the tap: the mark with its finding, and what was drawn
    app.walk().undo();
    app.settle();
    QTRY_COMPARE(app.session().rig()->findingCount(), 0);
    QVERIFY(!app.session().drawing()->drawn().contains(hash));
}

QTEST_MAIN(TstDrawing)
#include "tst_drawing.moc"

// SPDX-License-Identifier: Apache-2.0
// What the screen strokes is what the core says, and it is stroked once.
#include <QPainter>
#include <QQuickWindow>
#include <QtTest>

#include "base/units.hpp"
#include "drawn_rig.hpp"
#include "outline_item.hpp"
#include "outline_path.hpp"
#include "rig/names.hpp"
#include "rig/usual_measures.hpp"

using namespace snugwalk;

namespace {

constexpr Face faces[] = {Face::Top, Face::Left, Face::Right, Face::Front, Face::Rear, Face::Underside};

Rig someRig(RigKind kind)
{
    Rig rig = usualRig(kind, Practice::NorthAmerica);
    rig.openings = {{"door",
                     OpeningKind::Door,
                     Face::Right,
                     {rig.measures.length * 0.6, rig.measures.width / 2.0, metres(1.2)},
                     metres(0.6),
                     metres(1.1)}};
    return rig;
}

class Counted : public OutlineItem {
public:
    int painted = 0;
    void paint(QPainter *painter) override
    {
        ++painted;
        OutlineItem::paint(painter);
    }
};

} // namespace

class TestOutline : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase() { QQuickWindow::setGraphicsApi(QSGRendererInterface::Software); }

    void aDrawnRigIsTheSameRigToDraw()
    {
        for (const RigKind kind : {RigKind::TravelTrailer, RigKind::FifthWheel, RigKind::Van}) {
            const Rig rig = someRig(kind);
            const Rig again = rigOfDrawn(drawnRig(rig));
            QCOMPARE(drawnRig(again), drawnRig(rig));
            for (const Face face : faces) {
                const outline::Outline one = outline::outlineOf(rig, {face, true});
                const outline::Outline two = outline::outlineOf(again, {face, true});
                QVERIFY(one.strokes == two.strokes);
                QVERIFY(one.tanks == two.tanks);
            }
        }
    }

    void everyPathIsStrokedSpotBySpot()
    {
        using Kind = outline::Step::Kind;
        const Rig rig = someRig(RigKind::FifthWheel);
        for (const Face face : faces) {
            for (const outline::Stroke &stroke : outline::outlineOf(rig, {face, true}).strokes) {
                const QPainterPath path = painterPath(stroke);
                int at = 0;
                QPointF last;
                const auto is = [&](outline::PaperSpot spot) {
                    const QPainterPath::Element element = path.elementAt(at++);
                    return element.x == spot.x && element.y == spot.y;
                };
                for (const outline::Step &step : stroke.steps) {
                    if (step.kind == Kind::Close) { // Qt writes the way back as a line where there is one
                        const QPainterPath::Element first = path.elementAt(0);
                        if (at < path.elementCount() && !path.elementAt(at).isMoveTo())
                            QVERIFY(is({first.x, first.y}));
                        continue;
                    }
                    const QPointF to(step.to.x, step.to.y);
                    if (step.kind == Kind::Line && to == last) // Qt leaves out a line of no length
                        continue;
                    last = to;
                    if (step.kind == Kind::Cubic)
                        QVERIFY(is(step.first) && is(step.second));
                    QVERIFY(is(step.to));
                }
                QCOMPARE(at, path.elementCount());
            }
        }
    }

    void equalMapsChangeNothing()
    {
        RigSheet sheet;
        QSignalSpy changed(&sheet, &RigSheet::changed);
        sheet.setRig(drawnRig(someRig(RigKind::Van)));
        sheet.setRig(drawnRig(someRig(RigKind::Van)));
        QCOMPARE(changed.count(), 1);
        const void *lines = sheet.outline().strokes.data();
        QCOMPARE(static_cast<const void *>(sheet.outline().strokes.data()), lines); // made once
        sheet.setFace(QStringLiteral("top"));
        QCOMPARE(changed.count(), 2);
    }

    void aPageThatScrollsPaintsNothingAgain()
    {
        RigSheet sheet;
        sheet.setRig(drawnRig(someRig(RigKind::TravelTrailer)));
        QQuickWindow window;
        window.resize(400, 300);
        QQuickItem page(window.contentItem());
        page.setSize({400, 900});
        Counted item;
        item.setParentItem(&page);
        item.setSize({400, 160});
        item.setProperty("metre", 48.0);
        item.setSheet(&sheet);
        const QImage first = window.grabWindow();
        QVERIFY(!first.isNull());
        const int begun = item.painted;
        QVERIFY(begun >= 1);
        QVERIFY(first != QImage(first.size(), first.format()));
        int black = 0;
        for (int x = 0; x < first.width(); ++x)
            black += qGray(first.pixel(x, 80)) < 128 ? 1 : 0;
        QVERIFY(black > 2); // the body's walls at least
        for (int y = 0; y < 30; ++y) {
            page.setY(-y);
            QVERIFY(!window.grabWindow().isNull());
        }
        QCOMPARE(item.painted, begun);
        sheet.setFace(QStringLiteral("right"));
        QVERIFY(!window.grabWindow().isNull());
        QCOMPARE(item.painted, begun + 1);
    }
};

QTEST_MAIN(TestOutline)
#include "tst_outline.moc"

// SPDX-License-Identifier: Apache-2.0
// What two devices disagree about, what is set aside, and a stream that was left beside the taps.
#include <QtTest>

#include "logbook/acts.hpp"
#include "logbook/query.hpp"
#include "logbook/receive.hpp"
#include "sync_pair.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

class TstSettle : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void twoMarksMeetAndOneIsChosen();
    void whatARevokedDeviceWritesIsSetAside();
    void whatAViewerWritesCountsOnceAdopted();
    void tapsFollowAStreamBegunBeside();
};

void TstSettle::twoMarksMeetAndOneIsChosen()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    pair.owner.mark([](WalkModel &walk) { walk.pass(QStringLiteral("looked")); });
    pair.other.mark([](WalkModel &walk) { walk.couldNotLook(QStringLiteral("too_dark"), {}); });
    pair.everybody();

    for (Device *device : {&pair.owner, &pair.other}) {
        const QVariantList rows = device->conflicts().conflicts();
        QCOMPARE(rows.size(), 1);
        const QVariantList versions = row(rows, 0).value(QStringLiteral("versions")).toList();
        QCOMPARE(versions.size(), 2);
        QStringList who;
        for (const QVariant &version : versions) {
            who << text(version.toMap(), "who");
            // the worst of two marks is shown until a person chooses
            QCOMPARE(version.toMap().value(QStringLiteral("shown")).toBool(),
                     text(version.toMap(), "text").contains(QStringLiteral("could not look")));
        }
        who.sort();
        QCOMPARE(who, QStringList({QStringLiteral("other"), QStringLiteral("owner")}));
        QVERIFY(!device->sync().mark().isEmpty());
    }
    const QVariantMap conflict = row(pair.owner.conflicts().conflicts(), 0);
    const QVariantList versions = conflict.value(QStringLiteral("versions")).toList();
    const int pass = text(row(versions, 0), "who") == QStringLiteral("owner") ? 0 : 1;
    pair.owner.conflicts().choose(text(conflict, "key"), 7); // there is none
    pair.owner.conflicts().choose(text(conflict, "key"), pass);
    pair.owner.app.settle();
    QVERIFY(pair.owner.conflicts().conflicts().isEmpty());
    pair.everybody();
    QVERIFY(pair.other.conflicts().conflicts().isEmpty());

    pair.other.app.close();
    Logbook &book = pair.other.app.book();
    const Rig rig = allRigs(book)->front();
    const auto walks = walksOf(book, rig.id);
    const auto marks = marksOf(book, walks->front().id);
    const auto mark =
        std::find_if(marks->begin(), marks->end(), [](const Mark &m) { return m.point == contested; });
    QVERIFY(mark != marks->end());
    QCOMPARE(mark->state, MarkState::Pass);
    QCOMPARE(mark->reason, std::string()); // of the version that was not kept
    pair.other.app.closeBook();
    pair.other.app.open();
}

void TstSettle::whatARevokedDeviceWritesIsSetAside()
{
    Pair pair;
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    const QString device = text(row(pair.owner.sync().devices(), 0), "id");
    pair.owner.sync().revoke(device, QStringLiteral("left in a train"));
    pair.owner.app.settle();
    const QVariantMap last = row(pair.owner.sync().devices(), 1);
    QVERIFY(last.value(QStringLiteral("revoked")).toBool());
    QCOMPARE(text(last, "note"), QStringLiteral("left in a train"));

    // it does not know yet, and sends
    pair.other.mark([](WalkModel &walk) { walk.pass(QStringLiteral("glance")); });
    pair.other.exchange();
    QVERIFY(pair.other.sync().standing().contains(QStringLiteral("helper")));
    pair.owner.exchange();
    QCOMPARE(pair.owner.conflicts().aside().size(), 1);
    QCOMPARE(text(row(pair.owner.conflicts().aside(), 0), "reason"),
             QStringLiteral("written after its device was revoked"));
    // it learns of it, and what it writes stays with it
    pair.other.exchange();
    QVERIFY2(pair.other.sync().standing().contains(QStringLiteral("revoked")),
             qPrintable(pair.other.sync().standing()));
    pair.other.mark([](WalkModel &walk) { walk.couldNotLook(QStringLiteral("too_dark"), {}); });
    pair.other.exchange();
    pair.owner.exchange();
    QCOMPARE(pair.owner.conflicts().aside().size(), 1);
    pair.owner.conflicts().adopt({});
    pair.owner.app.settle();
    QVERIFY(pair.owner.conflicts().aside().isEmpty());
    QVERIFY(pair.owner.sync().fault().isEmpty());
}

void TstSettle::whatAViewerWritesCountsOnceAdopted()
{
    Pair pair("viewer");
    pair.owner.app.start(QStringLiteral("before_road"));
    pair.everybody();
    pair.other.mark([](WalkModel &walk) { walk.pass(QStringLiteral("glance")); });
    pair.other.exchange();
    pair.owner.exchange();
    const QVariantList aside = pair.owner.conflicts().aside();
    QCOMPARE(aside.size(), 1);
    QCOMPARE(text(row(aside, 0), "reason"), QStringLiteral("a viewer writes nothing"));
    QCOMPARE(text(row(aside, 0), "who"), QStringLiteral("other"));
    QVERIFY(!pair.owner.sync().mark().isEmpty());
    QVERIFY(!pair.other.conflicts().mayAdopt());
    pair.owner.conflicts().adopt(text(row(aside, 0), "key"));
    pair.owner.app.settle();
    QVERIFY(pair.owner.conflicts().aside().isEmpty());
    pair.owner.exchange();
    QVERIFY(pair.owner.sync().mark().isEmpty());
}

// A copy of the logbook went on elsewhere: the exchange begins another stream, and the connection that taps
// go through must follow, or two entries would have one number.
void TstSettle::tapsFollowAStreamBegunBeside()
{
    Pair pair;
    pair.owner.app.close();
    Logbook &taps = pair.owner.app.book();
    const StreamId before = taps.stream();
    CountingIds ids("beside");
    Result<Logbook> beside =
        Logbook::open(taps.file(), {taps.device(), "same", &pair.owner.app.clock(), &ids, false});
    QVERIFY(beside.has_value());
    QVERIFY(startIncarnation(*beside).has_value());
    Rig rig = allRigs(taps)->front();
    rig.name = "Tussock";
    QVERIFY(saveRig(taps, rig, {"owner", std::nullopt, std::nullopt}).has_value());
    QVERIFY(taps.stream() != before);
    QVERIFY(taps.stream() == beside->stream());
    pair.owner.app.closeBook();
    pair.owner.app.open();
    pair.everybody();
    QCOMPARE(pair.other.app.session().rig()->name(), QStringLiteral("Tussock"));
}

QTEST_MAIN(TstSettle)
#include "tst_settle.moc"

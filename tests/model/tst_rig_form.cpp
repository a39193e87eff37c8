// SPDX-License-Identifier: Apache-2.0
// A rig as people type it, and every fault at its field.
#include <QtTest>

#include "app_fixture.hpp"
#include "rig_form.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QVariantMap plain()
{
    return {{QStringLiteral("name"), QStringLiteral("Kea")},
            {QStringLiteral("kind"), QStringLiteral("travel_trailer")},
            {QStringLiteral("practice"), QStringLiteral("north_america")},
            {QStringLiteral("length"), QStringLiteral("21 ft")},
            {QStringLiteral("width"), QStringLiteral("2.4 m")},
            {QStringLiteral("height"), QStringLiteral("2.2")},
            {QStringLiteral("floor_height"), QStringLiteral("550 mm")},
            {QStringLiteral("hitch_length"), QStringLiteral("1.2 m")},
            {QStringLiteral("axles"), QStringList{QStringLiteral("3.5 m"), QStringLiteral("4.3 m")}},
            {QStringLiteral("roof_walk"), QStringLiteral("no")},
            {QStringLiteral("fittings"), QStringList{QStringLiteral("awning"), QStringLiteral("lp_gas")}}};
}

QStringList fieldsOf(const QVariantList &problems)
{
    QStringList fields;
    for (const QVariant &problem : problems)
        fields << problem.toMap().value(QStringLiteral("field")).toString();
    return fields;
}

} // namespace

class TstRigForm : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void mixedUnitsAreRead();
    void bareNumbersAreThePersonsUnits();
    void everyFaultIsTold();
    void theHitchFollowsTheKind();
    void aRigTypedIsTheRigShown();
    void faultsStayOnTheForm();
};

void TstRigForm::mixedUnitsAreRead()
{
    const RigForm form = readRigForm(plain(), UnitSystem::Si);
    QVERIFY(form.problems.isEmpty());
    // NIST SP 811 appendix B.8: 1 ft = 0.3048 m exactly
    QVERIFY(std::abs(form.rig.measures.length.si() - 21 * 0.3048) < 1e-9);
    QVERIFY(std::abs(form.rig.measures.floorHeight.si() - 0.55) < 1e-9);
    QCOMPARE(form.rig.measures.axles.size(), std::size_t{2});
    QCOMPARE(form.rig.fittings.count("awning"), std::size_t{1});
}

void TstRigForm::bareNumbersAreThePersonsUnits()
{
    QVariantMap map = plain();
    map[QStringLiteral("length")] = QStringLiteral("21");
    map[QStringLiteral("height")] = QStringLiteral("7");
    QVERIFY(std::abs(readRigForm(map, UnitSystem::Us).rig.measures.length.si() - 21 * 0.3048) < 1e-9);
    QVERIFY(!readRigForm(map, UnitSystem::Si).problems.isEmpty()); // 21 m is no trailer
}

void TstRigForm::everyFaultIsTold()
{
    QVariantMap map = plain();
    map[QStringLiteral("length")] = QStringLiteral("long");
    map[QStringLiteral("width")] = QStringLiteral("2.4 kg");
    map[QStringLiteral("kind")] = QStringLiteral("castle");
    QCOMPARE(fieldsOf(readRigForm(map, UnitSystem::Si).problems),
             (QStringList{QStringLiteral("kind"), QStringLiteral("length"), QStringLiteral("width")}));

    QVariantMap empty;
    const QStringList missing = fieldsOf(readRigForm(empty, UnitSystem::Si).problems);
    QCOMPARE(missing, (QStringList{QStringLiteral("kind"), QStringLiteral("practice")}));
    QVariantMap nameless = plain(); // a measure that is missing is the usual one; a name nobody can guess
    for (const char *field : {"name", "length", "width", "height", "floor_height", "axles"})
        nameless.remove(QLatin1String(field));
    QCOMPARE(fieldsOf(readRigForm(nameless, UnitSystem::Si).problems), QStringList{QStringLiteral("name")});
}

void TstRigForm::theHitchFollowsTheKind()
{
    QVariantMap map = plain();
    map[QStringLiteral("kind")] = QStringLiteral("fifth_wheel");
    QCOMPARE(readRigForm(map, UnitSystem::Si).rig.hitch, HitchType::FifthWheel);
    map[QStringLiteral("kind")] = QStringLiteral("motorhome");
    QCOMPARE(readRigForm(map, UnitSystem::Si).rig.hitch, HitchType::None);
}

void TstRigForm::aRigTypedIsTheRigShown()
{
    AppFixture app(AppFixture::Book::Empty);
    Session &session = app.open();
    QVERIFY(!session.hasRig());
    QSignalSpy added(&session, &Session::rigAdded);
    session.addRig(plain());
    QVERIFY(added.wait());
    app.settle();
    QVERIFY(session.hasRig());
    QCOMPARE(session.rig()->name(), QStringLiteral("Kea"));
    QCOMPARE(session.rig()->drawn().value(QStringLiteral("axles")).toList().size(), 2);
    QVERIFY(session.rig()->placeNames().contains(QStringLiteral("wheel 2R")));
    QVERIFY(session.rigProblems().isEmpty());
}

void TstRigForm::faultsStayOnTheForm()
{
    AppFixture app(AppFixture::Book::Empty);
    Session &session = app.open();
    QVariantMap map = plain();
    map[QStringLiteral("name")] = QString();
    session.addRig(map);
    QCOMPARE(fieldsOf(session.rigProblems()), QStringList{QStringLiteral("name")});
    for (const QVariant &problem : session.rigProblems())
        QVERIFY(!problem.toMap().value(QStringLiteral("act")).toString().isEmpty());
    QVERIFY(session.errorWhat().isEmpty());
}

QTEST_MAIN(TstRigForm)
#include "tst_rig_form.moc"

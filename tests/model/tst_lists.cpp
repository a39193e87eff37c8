// SPDX-License-Identifier: Apache-2.0
// Every list model keeps Qt's contract for models while it changes under its views.
#include <QAbstractItemModelTester>
#include <QtTest>

#include "app_fixture.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct NumberRow {
    QString key;
    int number = 0;
};

class Numbers : public RowModel<NumberRow> {
public:
    Numbers() : RowModel({{"number", [](const NumberRow &row) { return QVariant(row.number); }}}, nullptr) {}
};

std::vector<NumberRow> rowsOf(const QString &keys, int number)
{
    std::vector<NumberRow> rows;
    for (const QChar key : keys)
        rows.push_back({QString(key), number});
    return rows;
}

QString keysOf(const Numbers &numbers)
{
    QString keys;
    for (const NumberRow &row : numbers.rows())
        keys += row.key;
    return keys;
}

using Tester = QAbstractItemModelTester;
constexpr auto fatal = Tester::FailureReportingMode::Fatal;

} // namespace

class TstLists : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void anyOrderBecomesAnyOther_data();
    void anyOrderBecomesAnyOther();
    void onlyWhatChangedIsTold();
    void allListsOfTheDemoKeepTheContract();
    void rowsOfTheDemoAreThere();
};

void TstLists::anyOrderBecomesAnyOther_data()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("after");
    const QStringList orders = {QString(),
                                QStringLiteral("a"),
                                QStringLiteral("abcd"),
                                QStringLiteral("dcba"),
                                QStringLiteral("bd"),
                                QStringLiteral("xaybz"),
                                QStringLiteral("bcdea")};
    for (const QString &before : orders) {
        for (const QString &after : orders)
            QTest::addRow("%s to %s", qPrintable(before), qPrintable(after)) << before << after;
    }
}

void TstLists::anyOrderBecomesAnyOther()
{
    QFETCH(QString, before);
    QFETCH(QString, after);
    Numbers numbers;
    const Tester tester(&numbers, fatal);
    numbers.assign(rowsOf(before, 1));
    numbers.assign(rowsOf(after, 2));
    QCOMPARE(keysOf(numbers), after);
    for (int row = 0; row < numbers.rowCount(); ++row)
        QCOMPARE(cell(numbers, row, "number").toInt(), 2);
}

void TstLists::onlyWhatChangedIsTold()
{
    Numbers numbers;
    numbers.assign(rowsOf(QStringLiteral("abc"), 1));
    QSignalSpy reset(&numbers, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&numbers, &QAbstractItemModel::dataChanged);
    QSignalSpy removed(&numbers, &QAbstractItemModel::rowsRemoved);
    std::vector<NumberRow> rows = rowsOf(QStringLiteral("abc"), 1);
    rows[1].number = 7;
    numbers.assign(rows);
    QCOMPARE(changed.size(), 1);
    QCOMPARE(changed.first().first().toModelIndex().row(), 1);
    numbers.assign(rows);
    QCOMPARE(changed.size(), 1);
    rows.erase(rows.begin());
    numbers.assign(rows);
    QCOMPARE(removed.size(), 1);
    QCOMPARE(reset.size(), 0);
}

void TstLists::allListsOfTheDemoKeepTheContract()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    const QList<QAbstractItemModel *> models = {session.rig()->findings(),   session.walk()->tape(),
                                                session.due()->rows(),       session.book()->walks(),
                                                session.book()->trips(),     session.book()->mends(),
                                                session.book()->comparison()};
    std::vector<std::unique_ptr<Tester>> testers;
    for (QAbstractItemModel *model : models)
        testers.push_back(std::make_unique<Tester>(model, fatal));
    QSignalSpy compared(session.book(), &BookModel::compared);
    session.book()->compare({}, {});
    QVERIFY(compared.wait());
    if (session.walk()->walk() == nullptr)
        app.start(QStringLiteral("before_road"));
    session.walk()->pass(QStringLiteral("looked"));
    session.walk()->notFitted();
    session.walk()->undo();
    app.settle();
    session.setLanguage(QStringLiteral("es"));
    session.setUnits(QStringLiteral("us"));
    session.refresh();
    app.settle();
    session.walk()->finish();
    app.settle();
    QCOMPARE(session.walk()->tape()->rowCount(), 0);
}

void TstLists::rowsOfTheDemoAreThere()
{
    AppFixture app(AppFixture::Book::Demo);
    Session &session = app.open();
    QVERIFY(session.due()->rows()->rowCount() > 50);
    QVERIFY(session.book()->trips()->rowCount() > 10);
    QVERIFY(session.book()->photos().size() > 5);
    for (int row = 0; row < session.due()->rows()->rowCount(); ++row) {
        QVERIFY(!cell(*session.due()->rows(), row, "title").toString().isEmpty());
        QVERIFY(!cell(*session.due()->rows(), row, "when").toString().isEmpty());
        QVERIFY(!cell(*session.due()->rows(), row, "zone").toString().isEmpty());
    }
    const QString newest = cell(*session.book()->trips(), 0, "tripId").toString();
    QVERIFY(!newest.isEmpty());
}

QTEST_MAIN(TstLists)
#include "tst_lists.moc"

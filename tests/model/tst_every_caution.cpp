// SPDX-License-Identifier: Apache-2.0
// Every point of the catalogue that carries a caution says so on the walk: in full at the first of each day,
// person and stand, again after a rest, and in one short line on each point with the code.
#include <cstdio>
#include <set>

#include <QtTest>

#include "app_fixture.hpp"
#include "catalogue/pick.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

QStringList codesOf(const QVariantList &panel)
{
    QStringList codes;
    for (const QVariant &one : panel)
        codes << one.toMap().value(QStringLiteral("code")).toString();
    return codes;
}

} // namespace

class TstEveryCaution : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void everyPointWithACodeSaysItsLine();
    void theFullTextComesFirstAtEachStandAndAgain();
};

void TstEveryCaution::everyPointWithACodeSaysItsLine()
{
    AppFixture app;
    const Catalogue &catalogue = *app.parts.catalogue;
    app.open();
    std::set<std::string> seen;
    std::set<std::string> coded;
    for (const Point &point : catalogue.points()) {
        if (!point.cautions.empty())
            coded.insert(point.slug);
    }
    const Texts texts = app.parts.texts("en").value();
    for (const WalkKind &kind : catalogue.kinds()) {
        app.start(QString::fromStdString(kind.slug));
        WalkModel &walk = app.walk();
        if (walk.walk() == nullptr)
            continue; // nothing of this kind on this rig today
        for (int line = 0; line < walk.count(); ++line) {
            walk.goTo(line);
            QStringList wanted;
            for (const std::string &slug : walk.walk()->tape[static_cast<std::size_t>(line)].points) {
                const Point *point = catalogue.find(slug);
                QVERIFY(point != nullptr);
                for (const std::string &code : point->cautions) {
                    const QString words = QString::fromStdString(texts.cautionShort(code));
                    QVERIFY2(!words.isEmpty(), code.c_str());
                    QVERIFY2(!QString::fromStdString(texts.cautionFull(code)).isEmpty(), code.c_str());
                    if (!wanted.contains(words))
                        wanted << words;
                }
                if (!point->cautions.empty())
                    seen.insert(slug);
            }
            QVERIFY2(walk.cautions() == wanted, qPrintable(walk.title()));
        }
        walk.finish();
        app.settle();
    }
    int missed = 0;
    for (const std::string &slug : coded) {
        const bool isSeen = seen.count(slug) > 0;
        const bool isOnThisRig = isOnRig(*catalogue.find(slug), tandem());
        missed += !isSeen && isOnThisRig ? 1 : 0;
        if (!isSeen && isOnThisRig)
            qWarning("no walk led to %s", slug.c_str());
    }
    QCOMPARE(missed, 0);
    std::printf("%zu of %zu points with a code walked\n", seen.size(), coded.size());
}

void TstEveryCaution::theFullTextComesFirstAtEachStandAndAgain()
{
    AppFixture app;
    const Catalogue &catalogue = *app.parts.catalogue;
    app.open();
    app.start(QStringLiteral("full_round"));
    WalkModel &walk = app.walk();
    std::set<std::pair<std::string, std::string>> told; // stand, code
    int lines = 0;
    for (int line = 0; line < walk.count(); ++line) {
        walk.goTo(line);
        const TapeLine &tapeLine = walk.walk()->tape[static_cast<std::size_t>(line)];
        const std::string stand = standOf(catalogue, tapeLine);
        QStringList wanted;
        for (const std::string &slug : tapeLine.points) {
            for (const std::string &code : catalogue.find(slug)->cautions) {
                const QString name = QString::fromStdString(code);
                if (told.insert({stand, code}).second && !wanted.contains(name))
                    wanted << name;
            }
        }
        QVERIFY2(codesOf(walk.cautionPanel()) == wanted, qPrintable(walk.title()));
        walk.cautionsRead();
        QVERIFY(walk.cautionPanel().isEmpty());
        lines += wanted.isEmpty() ? 0 : 1;
    }
    QVERIFY(lines > 5);
    // after a rest the whole comes again, stand by stand
    walk.stop();
    walk.goOn();
    told.clear();
    for (int line = 0; line < walk.count(); ++line) {
        walk.goTo(line);
        const TapeLine &tapeLine = walk.walk()->tape[static_cast<std::size_t>(line)];
        bool isFirst = false;
        for (const std::string &slug : tapeLine.points) {
            for (const std::string &code : catalogue.find(slug)->cautions)
                isFirst = told.insert({standOf(catalogue, tapeLine), code}).second || isFirst;
        }
        QCOMPARE(!walk.cautionPanel().isEmpty(), isFirst);
        walk.cautionsRead();
    }
    // and to another person, and on another day
    app.session().setPerson(QStringLiteral("B"));
    QVERIFY(!told.empty());
    int again = 0;
    for (int line = 0; line < walk.count(); ++line) {
        walk.goTo(line);
        again += walk.cautionPanel().isEmpty() ? 0 : 1;
        walk.cautionsRead();
    }
    QCOMPARE(again, lines);
    app.clock().advance(std::chrono::hours(24));
    again = 0;
    for (int line = 0; line < walk.count(); ++line) {
        walk.goTo(line);
        again += walk.cautionPanel().isEmpty() ? 0 : 1;
        walk.cautionsRead();
    }
    QCOMPARE(again, lines);
}

QTEST_MAIN(TstEveryCaution)
#include "tst_every_caution.moc"

// SPDX-License-Identifier: Apache-2.0
// One tick when the disk has a mark, another when it has an undo, and nothing else.
#include <cstdlib>

#include <QtTest>

#include "app_fixture.hpp"
#include "feedback/tones.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

class RecordedFeedback final : public FeedbackSource {
public:
    explicit RecordedFeedback(bool there) : m_there(there) {}
    [[nodiscard]] bool canSound() const override { return m_there; }
    [[nodiscard]] bool canBuzz() const override { return m_there; }
    void sound(Cue cue) override { sounds << (cue == Cue::Written ? 'w' : 'u'); }
    void buzz(Cue cue) override { buzzes << (cue == Cue::Written ? 'w' : 'u'); }
    QList<char> sounds;
    QList<char> buzzes;

private:
    bool m_there;
};

} // namespace

class TstFeedback : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }
    void aMarkTicksOnceAndAnUndoOtherwise();
    void whatIsOffIsStill();
    void whereNothingIsThereNothingIsAsked();
    void tonesAreShortSoftAndWithoutAClick();
};

void TstFeedback::aMarkTicksOnceAndAnUndoOtherwise()
{
    AppFixture app;
    RecordedFeedback feedback(true);
    app.parts.feedback = &feedback;
    Session &session = app.open();
    QVERIFY(!session.sound()); // off until somebody wants it
    QVERIFY(session.buzz());
    session.setSound(true);
    feedback.sounds.clear();
    feedback.buzzes.clear();
    app.start(QStringLiteral("full_round"));
    app.walk().pass(QStringLiteral("looked"));
    QVERIFY(feedback.sounds.isEmpty()); // the disk does not have it yet
    app.settle();
    QCOMPARE(feedback.sounds, QList<char>{'w'});
    app.walk().later();
    app.walk().goTo(3);
    app.settle();
    QCOMPARE(feedback.sounds, QList<char>{'w'});
    app.walk().undo();
    app.settle();
    QCOMPARE(feedback.sounds, (QList<char>{'w', 'u'}));
    QCOMPARE(feedback.buzzes, feedback.sounds);
    app.walk().couldNotLook({}, {}); // refused: nothing was written
    app.settle();
    QCOMPARE(feedback.sounds, (QList<char>{'w', 'u'}));
}

void TstFeedback::whatIsOffIsStill()
{
    AppFixture app;
    RecordedFeedback feedback(true);
    app.parts.feedback = &feedback;
    Session &session = app.open();
    session.setBuzz(false);
    feedback.buzzes.clear();
    app.start(QStringLiteral("full_round"));
    app.walk().pass(QStringLiteral("looked"));
    app.settle();
    QVERIFY(feedback.sounds.isEmpty());
    QVERIFY(feedback.buzzes.isEmpty());
}

void TstFeedback::whereNothingIsThereNothingIsAsked()
{
    AppFixture app;
    RecordedFeedback feedback(false);
    app.parts.feedback = &feedback;
    Session &session = app.open();
    QVERIFY(!session.canSound());
    QVERIFY(!session.canBuzz());
    session.setSound(true);
    QVERIFY(feedback.sounds.isEmpty());
    QVERIFY(feedback.buzzes.isEmpty());
}

void TstFeedback::tonesAreShortSoftAndWithoutAClick()
{
    for (const Cue cue : {Cue::Written, Cue::Undone}) {
        const std::vector<std::int16_t> samples = tone(cue);
        QVERIFY(samples.size() > toneRate / 100);
        QVERIFY(samples.size() < toneRate / 5);
        QCOMPARE(samples.front(), std::int16_t{0});
        QCOMPARE(samples.back(), std::int16_t{0});
        int loudest = 0;
        int steepest = 0;
        for (std::size_t i = 0; i < samples.size(); ++i) {
            loudest = std::max(loudest, std::abs(int{samples[i]}));
            if (i > 0)
                steepest = std::max(steepest, std::abs(samples[i] - samples[i - 1]));
        }
        QVERIFY(loudest > 1000);
        QVERIFY(loudest < 32768 / 4);
        QVERIFY(steepest < loudest / 4); // 1320 Hz at 48 kHz moves by 2 pi 1320 / 48000 = 0.17 of its height
    }
    QVERIFY(tone(Cue::Written) != tone(Cue::Undone));
}

QTEST_MAIN(TstFeedback)
#include "tst_feedback.moc"

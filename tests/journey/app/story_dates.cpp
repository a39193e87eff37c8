// SPDX-License-Identifier: Apache-2.0
// When something is due and why, its readings over the years, and what would move its date.
#include <QQuickItem>

#include "app_steps.hpp"
#include "due_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

// A reading taken on a walk, by the keypad, is on its plot at once.
void readOn(Life &life)
{
    const QString line = life.given(QStringLiteral("line"));
    const QString field = life.given(QStringLiteral("field"));
    startWalk(life, QStringLiteral("Full round."));
    goToLine(life, line);
    Finger &finger = life.finger();
    finger.touchField(field);
    for (const QChar key : life.given(QStringLiteral("figure")))
        finger.tap(key == QLatin1Char('.') ? QStringLiteral("decimal point") : QString(key));
    life.shot(QStringLiteral("dates-1-keypad"));
    finger.tap(QStringLiteral("done with the readings"));
    writeDown(life, QStringLiteral("Pass"));
    finishWalk(life);
    life.settle();
}

void whyAndTrend(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("Due"));
    life.shot(QStringLiteral("dates-2-due"));
    finger.tapStarting(life.given(QStringLiteral("line")));
    life.arrive(QStringLiteral("why"));
    life.shot(QStringLiteral("dates-3-why"));
    const WhyModel &why = *life.session().why();
    expect(!why.property("sentence").toString().isEmpty(), QStringLiteral("no reason is told"));
    expect(finger.itemOfType(QStringLiteral("WhyPicture")) != nullptr,
           QStringLiteral("no picture of the reasons"));
    finger.tap(QStringLiteral("its readings over time"));
    life.arrive(QStringLiteral("trend"));
    life.settle();
    expect(finger.itemOfType(QStringLiteral("PlotBoard")) != nullptr,
           QStringLiteral("no plot of the readings"));
    life.shot(QStringLiteral("dates-4-trend"));
    for (const QVariant &row : life.session().trends()->property("rows").toList()) {
        const QVariantMap one = row.toMap();
        const QVariantList points = one.value(QStringLiteral("points")).toList();
        expect(!points.isEmpty(), QStringLiteral("a plot without a reading"));
        say(QStringLiteral("trend %1 | %2 | %3")
                .arg(one.value(QStringLiteral("title")).toString())
                .arg(points.size())
                .arg(points.last().toMap().value(QStringLiteral("text")).toString()));
    }
    finger.tap(QStringLiteral("back"));
}

void whatIf(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("what if it goes elsewhere"));
    life.arrive(QStringLiteral("what_if"));
    life.shot(QStringLiteral("dates-5-what-if"));
    const QString somewhere = QStringLiteral("Where it stands: somewhere else");
    if (finger.sees(somewhere))
        finger.tap(somewhere);
    finger.type(QStringLiteral("Latitude, longitude in degrees"), QStringLiteral("21.3 N, 157.9 W"));
    finger.type(QStringLiteral("Driven in that time; empty for none"), QStringLiteral("4000 km"));
    finger.tapStarting(QStringLiteral("On which road: "));
    finger.tap(QStringLiteral("Work it out"));
    const WhatIfModel &model = *life.session().whatIf();
    finger.waitFor([&] { return !model.property("rows").toList().isEmpty(); },
                   QStringLiteral("dates that move"));
    life.shot(QStringLiteral("dates-6-moved"));
    say(QStringLiteral("what if: ") + model.property("sentence").toString());
}

void ask(Life &life)
{
    whyAndTrend(life);
    whatIf(life);
}

} // namespace

Stories datesStories() { return {{QStringLiteral("read"), readOn}, {QStringLiteral("ask"), ask}}; }

} // namespace snugwalk::journey

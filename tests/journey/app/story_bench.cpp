// SPDX-License-Identifier: Apache-2.0
// A number worked out on the spot: figures typed into the bench, the answer read.
#include "app_steps.hpp"
#include "bench_model.hpp"
#include "stories.hpp"

namespace snugwalk::journey {
namespace {

void wire(Life &life)
{
    Finger &finger = life.finger();
    finger.tap(QStringLiteral("Bench"));
    life.shot(QStringLiteral("bench-1-questions"));
    finger.tapStarting(QStringLiteral("to the questions on 12 V"));
    finger.tapStarting(QStringLiteral("Drop along a wire"));
    life.arrive(QStringLiteral("bench_question"));
    finger.type(QStringLiteral("Size"), QStringLiteral("12"));
    finger.type(QStringLiteral("Length one way"), QStringLiteral("25 ft"));
    life.shot(QStringLiteral("bench-2-half-typed"));
    finger.type(QStringLiteral("Current of the load"), QStringLiteral("13 A"));
    const BenchModel &bench = *life.session().bench();
    finger.waitFor([&] { return !bench.property("figures").toList().isEmpty(); },
                   QStringLiteral("the answer"));
    life.shot(QStringLiteral("bench-3-answer"));
    for (const QVariant &figure : bench.property("figures").toList()) {
        const QVariantMap one = figure.toMap();
        expect(finger.reads(one.value(QStringLiteral("value")).toString()),
               QStringLiteral("a figure that the page does not show"));
        say(QStringLiteral("figure %1: %2")
                .arg(one.value(QStringLiteral("label")).toString(),
                     one.value(QStringLiteral("value")).toString()));
    }
}

} // namespace

Stories benchStories() { return {{QStringLiteral("wire"), wire}}; }

} // namespace snugwalk::journey

// SPDX-License-Identifier: Apache-2.0
// Laws of the time budget over random rigs, histories and tapes.
#include <doctest/doctest.h>

#include <random>

#include "round/budget.hpp"
#include "support/actions.hpp"
#include "support/five_rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2026-11-24T12:00:00Z");

Standing randomStanding(std::mt19937 &random)
{
    RigHistory history;
    history.rig = fiveRigs()[random() % fiveRigs().size()].rig;
    for (int i = 0; i < 3; ++i) {
        WalkRecord record;
        record.walk.id = Id::fromBytes(std::string(16, static_cast<char>('a' + i)));
        record.walk.started = now;
        record.walk.started.instant -= std::chrono::days(random() % 800);
        for (const std::string &slug : pointsFor(realCatalogue(), history.rig)) {
            if (random() % 2 == 0)
                continue;
            Mark mark;
            mark.id = record.walk.id;
            mark.walk = record.walk.id;
            mark.point = slug;
            mark.state = random() % 8 == 0 ? MarkState::CouldNotLook : MarkState::Pass;
            mark.at = record.walk.started;
            record.marks.push_back(mark);
        }
        history.walks.push_back(record);
    }
    if (random() % 2 == 0)
        history.happenings.push_back({Id::fromBytes(std::string(16, 'h')), history.rig.id, "kerb_strike",
                                      timeAt("2026-11-20T12:00:00Z"), ""});
    return standingOf(realCatalogue(), std::move(history), now);
}

} // namespace

TEST_CASE("more minutes never pick a set with less harm, and all of the time is never overrun")
{
    std::mt19937 random(20261124);
    for (int round = 0; round < 40; ++round) {
        const Standing standing = randomStanding(random);
        const char *kind = round % 2 == 0 ? "full_round" : "before_road";
        const auto tape = tapeFor(realCatalogue(), standing.history.rig, kind, {}, {}).value();
        double before = -1.0;
        for (double minutes = 0.0; minutes < 120.0; minutes += 0.1 * static_cast<double>(1 + random() % 90)) {
            const BudgetedTape fitted = fitBudget(realCatalogue(), standing, kind, tape, minutes);
            CHECK(fitted.harm >= before);
            CHECK(fitted.minutes <= minutes + 1e-9);
            before = fitted.harm;
        }
    }
}

TEST_CASE("nothing better fits: no line left out can join, none can be put in a kept one's place")
{
    std::mt19937 random(7);
    for (int round = 0; round < 40; ++round) {
        const Standing standing = randomStanding(random);
        const auto tape = tapeFor(realCatalogue(), standing.history.rig, "full_round", {}, {}).value();
        const double minutes = 1.0 + static_cast<double>(random() % 600) / 10.0;
        const BudgetedTape fitted = fitBudget(realCatalogue(), standing, "full_round", tape, minutes);
        // a full round has one point a line; times in the catalogue are whole tenths of a minute
        for (const LeftOut &left : fitted.leftOut) {
            CHECK(fitted.minutes + left.minutes > minutes - 1e-6);
            for (const TapeLine &line : fitted.tape) {
                const Point &kept = *realCatalogue().find(line.points.front());
                const double harm = harmOf(realCatalogue(), standing, kept).harm;
                const bool better = left.harm > harm + 1e-9;
                CHECK_FALSE((better && fitted.minutes - kept.minutes + left.minutes <= minutes - 1e-6));
            }
        }
    }
}

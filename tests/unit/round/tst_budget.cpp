// SPDX-License-Identifier: Apache-2.0
// What a time budget keeps and what it names as left out.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "round/budget.hpp"
#include "round/tape.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

RigHistory untouched()
{
    RigHistory history;
    history.rig = tandem();
    return history;
}

// One full round on which every point passed, `days` before `now`.
RigHistory looked(int days)
{
    RigHistory history = untouched();
    LocalTime then = timeAt("2026-11-24T12:00:00Z");
    then.instant -= std::chrono::days(days);
    WalkRecord record;
    record.walk.id = Id::fromBytes(std::string(16, 'w'));
    record.walk.kind = "full_round";
    record.walk.started = then;
    for (const std::string &slug : pointsFor(realCatalogue(), history.rig)) {
        Mark mark;
        mark.id = Id::fromBytes(std::string(16, 'm'));
        mark.walk = record.walk.id;
        mark.point = slug;
        mark.state = MarkState::Pass;
        mark.at = then;
        record.marks.push_back(mark);
    }
    history.walks.push_back(record);
    return history;
}

Standing standingAt(RigHistory history)
{
    return standingOf(realCatalogue(), std::move(history), timeAt("2026-11-24T12:00:00Z"));
}

double harm(const Standing &standing, const char *slug)
{
    return harmOf(realCatalogue(), standing, *realCatalogue().find(slug)).harm;
}

std::vector<TapeLine> tape(const Standing &standing, const char *kind)
{
    return tapeForWalk(realCatalogue(), standing.history, kind, {}, {}, standing.now).value();
}

BudgetedTape fit(const Standing &standing, const char *kind, double minutes)
{
    return fitBudget(realCatalogue(), standing, kind, tape(standing, kind), minutes);
}

} // namespace

// F(t) = 1 - (1 - p*)^((t/T)^1.5), F(T) = p*: the project's prior, decisions of the due bands.
// Tread: severity I, p* .01, T = 3 months; no trip is logged, so a trip is 3 days (common practice).
TEST_CASE("the chance is the prior's at the age since the last look plus one trip")
{
    const double interval = 3 * 365.25 / 12.0;
    const double age = (30.0 + 3.0) / interval;
    const Standing standing = standingAt(looked(30));
    const PointHarm tread = harmOf(realCatalogue(), standing, *realCatalogue().find("tread-depth"));
    CHECK(tread.consequence == 100.0);
    CHECK(tread.chance == doctest::Approx(1.0 - std::pow(0.99, std::pow(age, 1.5))));
    CHECK(tread.harm == doctest::Approx(100.0 * tread.chance));
    // at the nominal interval less the trip it is p* itself
    const Standing later = standingAt(looked(88));
    CHECK(harmOf(realCatalogue(), later, *realCatalogue().find("tread-depth")).chance ==
          doctest::Approx(0.01).epsilon(0.01));
}

TEST_CASE("older looks, open findings and events raise the harm; each move's points keep p*")
{
    CHECK(harm(standingAt(looked(60)), "tread-depth") > harm(standingAt(looked(30)), "tread-depth"));
    CHECK(harm(standingAt(untouched()), "tread-depth") > harm(standingAt(looked(60)), "tread-depth"));
    CHECK(harm(standingAt(looked(1)), "pull-away-lap") == doctest::Approx(1.0)); // 100 times .01
    RigHistory struck = looked(1);
    struck.happenings.push_back({Id::fromBytes(std::string(16, 'h')), struck.rig.id, "kerb_strike",
                                 timeAt("2026-11-24T11:00:00Z"), ""});
    CHECK(harm(standingAt(struck), "spring-hangers") > 2.0 * harm(standingAt(looked(1)), "spring-hangers"));
    RigHistory cracked = looked(1);
    FindingHistory f;
    f.finding = {Id::fromBytes(std::string(16, 'f')),
                 cracked.rig.id,
                 "roof-membrane",
                 "crack",
                 {},
                 cracked.walks.front().walk.id,
                 timeAt("2026-11-23T12:00:00Z")};
    f.looks.push_back({Id::fromBytes(std::string(16, 'l')),
                       f.finding.id,
                       f.finding.openedOn,
                       timeAt("2026-11-23T12:00:00Z"),
                       "",
                       3,
                       {},
                       "",
                       {}});
    cracked.findings.push_back(f);
    const Standing standing = standingAt(cracked);
    REQUIRE(standing.state.open.size() == 1);
    CHECK(harm(standing, "roof-membrane") >= 10.0 * standing.state.open.front().concern.chance);
}

TEST_CASE("a budget that holds all leaves nothing out")
{
    const Standing standing = standingAt(untouched());
    for (const char *kind : {"full_round", "before_road", "buying"}) {
        const BudgetedTape all = fit(standing, kind, 24 * 60);
        CHECK(all.leftOut.empty());
        CHECK(all.tape.size() == tape(standing, kind).size());
        const BudgetedTape exact =
            fit(standing, kind, all.minutes + 0.1 * static_cast<double>(all.tape.size()));
        CHECK(exact.leftOut.empty());
    }
}

TEST_CASE("10, 25 and 60 minutes: kept within the time, in walking order, the rest named with its harm")
{
    const Standing standing = standingAt(looked(40));
    const auto whole = tape(standing, "full_round");
    double before = 0.0;
    for (const double minutes : {10.0, 25.0, 60.0}) {
        const BudgetedTape fitted = fit(standing, "full_round", minutes);
        MESSAGE(minutes << " minutes: " << fitted.tape.size() << " of " << whole.size() << " lines, harm "
                        << fitted.harm << ", left out " << fitted.leftOut.size());
        CHECK(fitted.minutes <= minutes + 1e-9); // a sum of tenths
        CHECK(fitted.harm > before);
        before = fitted.harm;
        CHECK(fitted.tape.size() + fitted.leftOut.size() ==
              whole.size()); // a full round has one point a line
        auto at = whole.begin();
        for (const TapeLine &line : fitted.tape) {
            at = std::find_if(at, whole.end(), [&](const TapeLine &l) { return l.slug == line.slug; });
            REQUIRE(at != whole.end());
        }
        for (const LeftOut &left : fitted.leftOut)
            CHECK(left.harm > 0.0);
    }
}

TEST_CASE("the hold list's points of the walk's own set are named first")
{
    const Standing standing = standingAt(untouched());
    const BudgetedTape fitted = fit(standing, "before_road", 2.0);
    REQUIRE_FALSE(fitted.leftOut.empty());
    CHECK(fitted.leftOut.front().ownHoldList);
    CHECK(std::is_partitioned(fitted.leftOut.begin(), fitted.leftOut.end(),
                              [](const LeftOut &left) { return left.ownHoldList; }));
    std::size_t kept = 0;
    for (const TapeLine &line : fitted.tape)
        kept += line.points.size();
    std::size_t whole = 0;
    for (const TapeLine &line : tape(standing, "before_road"))
        whole += line.points.size();
    CHECK(kept + fitted.leftOut.size() == whole); // nothing is left out without a word
    CHECK(fit(standing, "before_road", 0.0).tape.empty());
    CHECK(fit(standing, "before_road", -5.0).tape.empty());
}

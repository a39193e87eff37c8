// SPDX-License-Identifier: Apache-2.0
// Acts that are refused leave no entry behind.
#include <doctest/doctest.h>

#include <functional>
#include <limits>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Runs an act, wants `code`, and wants the log to be as it was.
template <typename Run>
void wantRefused(Logbook &book, Errc code, Run run)
{
    const auto before = entryCount(book);
    const auto result = run();
    REQUIRE_FALSE(result);
    CHECK(result.error().code == code);
    CHECK_FALSE(result.error().what.empty());
    CHECK_FALSE(result.error().act.empty());
    CHECK(entryCount(book) == before);
}

Result<Walk> start(Walker &walker)
{
    return startWalk(walker.book(), realCatalogue(), walker.rig, "before_road", {}, {}, walker.doer);
}

Mend mendOf(Walker &walker)
{
    Mend mend;
    mend.rig = walker.rig.id;
    mend.at = walker.home.clock.now();
    mend.action = "clean";
    mend.points = {"chains-run"};
    return mend;
}

} // namespace

TEST_CASE("no second walk while one is open; after finishing there may be")
{
    Walker walker;
    wantRefused(walker.book(), Errc::Conflict, [&] { return start(walker); });
    REQUIRE(walker.finish());
    CHECK(start(walker));
}

TEST_CASE("a finished walk takes no marks, also from someone who has not heard of it")
{
    Walker walker;
    const Walk stale = walker.walk;
    REQUIRE(walker.finish());
    const Walk finished = walkOf(walker.book(), walker.walk.id).value();
    REQUIRE(finished.finished);
    for (const Walk &walk : {stale, finished}) {
        wantRefused(walker.book(), Errc::Conflict, [&] {
            return markPoint(walker.book(), realCatalogue(), walker.rig, walk, passOf("chains-run"),
                             walker.doer);
        });
        wantRefused(walker.book(), Errc::Conflict, [&] {
            return markLine(walker.book(), walk, walk.tape.front(), MarkState::Pass, LookedHow::Glance, "",
                            walker.doer);
        });
        wantRefused(walker.book(), Errc::Conflict,
                    [&] { return finishWalk(walker.book(), walk, walker.doer); });
    }
    wantRefused(walker.book(), Errc::Conflict, [&] { return walker.book().undo(stale.id, "W. Tester"); });
}

TEST_CASE("points that are not on the walk")
{
    Walker walker;
    wantRefused(walker.book(), Errc::NotFound, [&] { return walker.mark(passOf("no-such-point")); });
    wantRefused(walker.book(), Errc::NotFound, [&] { return walker.mark(passOf("thirteen-pin-plug")); });
    walker.walk.id = walker.home.ids.next();
    wantRefused(walker.book(), Errc::NotFound, [&] { return walker.mark(passOf("chains-run")); });
}

TEST_CASE("a draft that makes no sense")
{
    Walker walker;
    wantRefused(walker.book(), Errc::OutOfRange, [&] { return walker.mark(attentionOn("chains-run", 9)); });
    wantRefused(walker.book(), Errc::InvalidInput,
                [&] { return walker.mark(couldNotLook("chains-run", "")); });
    wantRefused(walker.book(), Errc::NotFound,
                [&] { return walker.mark(lookAgain("chains-run", walker.home.ids.next(), 2)); });
    const Id other = walker.mark(attentionOn("chains-condition", 2))->findings.front();
    wantRefused(walker.book(), Errc::InvalidInput,
                [&] { return walker.mark(lookAgain("chains-run", other, 2)); });
}

TEST_CASE("a line may not be marked attention, nor unseen without a reason: each needs its own words")
{
    Walker walker;
    const TapeLine line = walker.walk.tape.front();
    const auto mark = [&](MarkState state, const std::string &reason) {
        return markLine(walker.book(), walker.walk, line, state, LookedHow::Looked, reason, walker.doer);
    };
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return mark(MarkState::Attention, ""); });
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return mark(MarkState::NotLooked, ""); });
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return mark(MarkState::CouldNotLook, ""); });
    wantRefused(walker.book(), Errc::NotFound, [&] {
        return markLine(walker.book(), walker.walk, {"x", {"no-such-point"}}, MarkState::Pass,
                        LookedHow::Looked, "", walker.doer);
    });
    CHECK(mark(MarkState::CouldNotLook, "too_dark"));
}

TEST_CASE("rigs and mends")
{
    Walker walker;
    Rig bad = tandem();
    bad.measures.length = metres(-1);
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return saveRig(walker.book(), bad, walker.doer); });
    const auto with = [&](const std::function<void(Mend &)> &change) {
        Mend mend = mendOf(walker);
        change(mend);
        return addMend(walker.book(), mend, walker.doer);
    };
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return with([](Mend &m) { m.action = "pray"; }); });
    wantRefused(walker.book(), Errc::InvalidInput, [&] { return with([](Mend &m) { m.points.clear(); }); });
    wantRefused(walker.book(), Errc::NotFound,
                [&] { return with([&](Mend &m) { m.findings = {walker.home.ids.next()}; }); });
    wantRefused(walker.book(), Errc::InvalidInput,
                [&] { return with([](Mend &m) { m.minutes = std::numeric_limits<double>::quiet_NaN(); }); });
    const Id finding = walker.mark(attentionOn("chains-condition", 2))->findings.front();
    wantRefused(walker.book(), Errc::InvalidInput, [&] {
        return with([&](Mend &m) { m.findings = {finding}, m.rig = walker.home.ids.next(); });
    });
    CHECK(with([&](Mend &m) { m.findings = {finding}; }));
}

TEST_CASE("a stay off the globe or back in time; a trip that is there already")
{
    Walker walker;
    Stay stay;
    stay.rig = walker.rig.id;
    stay.from = walker.home.clock.now();
    stay.place = {95, 0, std::nullopt, std::nullopt};
    wantRefused(walker.book(), Errc::OutOfRange, [&] { return addStay(walker.book(), stay, walker.doer); });
    stay.place = {45, 0, std::nullopt, std::nullopt};
    stay.to = timeAt("2020-01-01T00:00:00Z");
    wantRefused(walker.book(), Errc::OutOfRange, [&] { return addStay(walker.book(), stay, walker.doer); });
    Trip trip;
    trip.rig = walker.rig.id;
    trip.start = walker.home.clock.now();
    REQUIRE(addTrip(walker.book(), trip, walker.doer));
    wantRefused(walker.book(), Errc::Conflict, [&] { return addTrip(walker.book(), trip, walker.doer); });
}

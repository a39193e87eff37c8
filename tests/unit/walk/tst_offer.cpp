// SPDX-License-Identifier: Apache-2.0
// Which finding a new attention may be: those near come first, and none is merged by itself.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "keys/hash.hpp"
#include "support/book.hpp"
#include "support/rigs.hpp"
#include "walk/offer.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

RigPlace under(double aft, double right, double up = 0.5)
{
    return {"", Face::Underside, RigPosition{metres(aft), metres(right), metres(up)}};
}

FindingHistory found(const char *name, const RigPlace &place, const char *looked, int grade = 2,
                     const std::string &point = "belly-pan-sheet")
{
    FindingHistory h;
    h.finding.id = derivedId("test", "finding", name);
    h.finding.point = point;
    h.finding.place = place;
    h.finding.opened = timeAt("2026-01-01T08:00:00Z");
    Look look;
    look.at = timeAt(looked);
    look.grade = grade;
    h.looks = {look};
    return h;
}

std::vector<Id> ids(const std::vector<OfferedFinding> &offers)
{
    std::vector<Id> out;
    for (const OfferedFinding &offer : offers)
        out.push_back(offer.finding);
    return out;
}

Id named(const char *name) { return derivedId("test", "finding", name); }

} // namespace

TEST_CASE("within 0.3 m first, then by distance, then those without a coordinate, latest look first")
{
    const Rig rig = tandem();
    std::vector<FindingHistory> histories = {
        found("nowhere, old", {}, "2026-02-01T08:00:00Z"),
        found("far", under(2.0, 0.0), "2026-06-01T08:00:00Z"),
        found("nowhere, new", {}, "2026-05-01T08:00:00Z"),
        found("near", under(4.4, -0.6), "2026-02-01T08:00:00Z"),
        found("nearest", under(4.5, -0.55), "2026-02-01T08:00:00Z"),
        found("just out", under(4.5, -0.2), "2026-02-01T08:00:00Z"),
    };
    const std::vector<Id> wanted = {named("nearest"), named("near"),         named("just out"),
                                    named("far"),     named("nowhere, new"), named("nowhere, old")};
    std::mt19937 rng(7);
    for (int i = 0; i < 50; ++i) { // the order of entry never matters
        std::shuffle(histories.begin(), histories.end(), rng);
        const auto offers = offerFor(histories, "belly-pan-sheet", rig, under(4.5, -0.6, 0.0));
        CHECK(ids(offers) == wanted);
        CHECK(offers[1].near);
        CHECK_FALSE(offers[2].near);
        CHECK(offers[2].away->si() == doctest::Approx(0.4));
    }
}

TEST_CASE("only findings of the point, open or waiting for a pass, are offered")
{
    const Rig rig = tandem();
    FindingHistory waits = found("waits", {}, "2026-02-01T08:00:00Z");
    Mend mend;
    mend.at = timeAt("2026-03-01T08:00:00Z");
    waits.mends = {mend};
    FindingHistory confirmed = waits;
    confirmed.finding.id = named("confirmed");
    Mark pass;
    pass.state = MarkState::Pass;
    pass.at = timeAt("2026-03-02T08:00:00Z");
    confirmed.pointPasses = {pass};
    const auto offers = offerFor({waits, confirmed, found("gone", {}, "2026-04-01T08:00:00Z", 0),
                                  found("other", {}, "2026-04-01T08:00:00Z", 2, "main-rails")},
                                 "belly-pan-sheet", rig, {});
    REQUIRE(offers.size() == 1);
    CHECK(offers[0].finding == named("waits"));
    CHECK(offers[0].status == FindingStatus::Mended);
}

TEST_CASE("a wheel is one spot by its name; two findings on one spot are two")
{
    const Rig rig = tandem();
    const RigPlace wheel{"wheel 2R", std::nullopt, std::nullopt};
    const RigPlace other{"wheel 1L", std::nullopt, std::nullopt};
    const auto offers =
        offerFor({found("elsewhere", other, "2026-04-01T08:00:00Z"),
                  found("a", wheel, "2026-02-01T08:00:00Z"), found("b", wheel, "2026-03-01T08:00:00Z")},
                 "belly-pan-sheet", rig, wheel);
    CHECK(ids(offers) == std::vector<Id>{named("b"), named("a"), named("elsewhere")});
    CHECK(offers[0].away == Length());
    CHECK(offers[2].away->si() > 1.0);
}

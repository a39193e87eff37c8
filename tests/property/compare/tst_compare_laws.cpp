// SPDX-License-Identifier: Apache-2.0
// Laws of a comparison over 2,000 random histories.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "../random_story.hpp"
#include "compare/compare.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr unsigned histories = 2000;

Comparison lastTwo(RandomStory &random, const RigHistory &history)
{
    return compareWalks(smallCatalogue(), history, random.walks()[random.walks().size() - 2],
                        random.walks().back());
}

} // namespace

TEST_CASE("the order of the history never changes the comparison")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        RigHistory history = random.history();
        const Comparison once = lastTwo(random, history);
        shuffleAll(history, random.rng());
        CAPTURE(seed);
        REQUIRE(lastTwo(random, history) == once);
    }
}

TEST_CASE("a point not looked at now is told so, and no finding hides")
{
    int told = 0;
    int open = 0;
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        const RigHistory history = random.history();
        const Comparison c = lastTwo(random, history);
        CAPTURE(seed);
        std::set<Id> listed;
        for (const PointChange &p : c.points) {
            const bool looked = p.now == MarkState::Pass || p.now == MarkState::Attention;
            if (!looked && p.now != MarkState::NotFitted) {
                REQUIRE(p.change == Change::NotLooked);
                ++told;
            }
            for (const FindingChange &f : p.findings)
                listed.insert(f.finding);
        }
        for (const FindingHistory &f : history.findings) {
            const auto asked = std::any_of(c.points.begin(), c.points.end(),
                                           [&](const PointChange &p) { return p.point == f.finding.point; });
            // open at the end of the later walk, which nothing followed but mends
            const bool mended =
                std::any_of(f.mends.begin(), f.mends.end(), [&](const Mend &) { return true; });
            if (asked && !mended && statusOf(f) == FindingStatus::Open) {
                REQUIRE(listed.count(f.finding.id) == 1);
                ++open;
            }
        }
    }
    CHECK(told > 1000); // the histories do hold such cases
    CHECK(open > 1000);
}

TEST_CASE("a walk against itself: nothing new, worse, better, mended or gone")
{
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        const Id walk = random.walks().back();
        const Comparison c = compareWalks(smallCatalogue(), random.history(), walk, walk);
        CAPTURE(seed);
        for (const Change change :
             {Change::New, Change::Worse, Change::Better, Change::Mended, Change::FirstLook})
            REQUIRE(c.pointCounts.of(change) == 0);
        for (const Change change : {Change::New, Change::Worse, Change::Better, Change::Mended, Change::Gone})
            REQUIRE(c.findingCounts.of(change) == 0);
        REQUIRE(c.onlyThen.empty());
        REQUIRE(c.onlyNow.empty());
    }
}

TEST_CASE("every change is reached by some history")
{
    std::set<Change> points;
    std::set<Change> findings;
    for (unsigned seed = 0; seed < histories; ++seed) {
        RandomStory random(seed);
        for (const PointChange &p : lastTwo(random, random.history()).points) {
            points.insert(p.change);
            for (const FindingChange &f : p.findings)
                findings.insert(f.change);
        }
    }
    CHECK(points.size() == allChanges.size());
    CHECK(findings.size() == allChanges.size() - 2); // a finding has no first look and is always fitted
}

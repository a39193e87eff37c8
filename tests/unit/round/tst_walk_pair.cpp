// SPDX-License-Identifier: Apache-2.0
// Which walk another is held against.
#include <doctest/doctest.h>

#include <algorithm>

#include "../due/story.hpp"
#include "round/compare.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

struct Walks {
    Story story;
    Id add(std::string_view date, const std::string &kind, const std::vector<std::string> &looked)
    {
        const Id walk = story.walk(at(date), kind, looked);
        for (const std::string &point : looked)
            story.mark(walk, point, MarkState::Pass, at(date, 5));
        return walk;
    }
};

} // namespace

TEST_CASE("the last of its kind, past others that came between")
{
    Walks w;
    w.add("2025-01-01", "full_round", {"seam", "latch", "tread"});
    const Id then = w.add("2025-06-01", "full_round", {"seam"});
    w.add("2025-07-01", "before_road", {"seam", "latch", "tread"});
    const Id now = w.add("2026-01-01", "full_round", {"seam", "latch", "tread"});
    const WalkPair pair = lastTwo(w.story.history()).value();
    CHECK(pair.then == then); // the kind decides, even where it looked at less
    CHECK(pair.now == now);
    CHECK(pair.by == PairedBy::SameKind);
    CHECK(lastOfKind(w.story.history(), now)->then == then);
}

TEST_CASE("none of its kind: the last that looked at half of its points; else the one before")
{
    Walks w;
    const Id wide = w.add("2025-01-01", "full_round", {"seam", "latch", "tread"});
    const Id stop = w.add("2025-06-01", "at_stop", {"grease"});
    const Id now = w.add("2026-01-01", "laying_up", {"seam", "latch"});
    WalkPair pair = lastTwo(w.story.history()).value();
    CHECK(pair.then == wide);
    CHECK(pair.by == PairedBy::SamePoints);
    const Id other = w.add("2026-02-01", "after_road", {"frost"});
    pair = lastTwo(w.story.history()).value();
    CHECK(pair.then == now);
    CHECK(pair.now == other);
    CHECK(pair.by == PairedBy::JustBefore);
    CHECK(lastOfKind(w.story.history(), stop)->then == wide);
}

TEST_CASE("of a kind that is asked for")
{
    Walks w;
    const Id first = w.add("2025-01-01", "full_round", {"seam"});
    const Id second = w.add("2025-06-01", "full_round", {"seam"});
    w.add("2026-01-01", "before_road", {"seam"});
    const WalkPair pair = lastTwo(w.story.history(), "full_round").value();
    CHECK(pair.then == first);
    CHECK(pair.now == second);
    CHECK(lastTwo(w.story.history(), "buying").error().code == Errc::NotFound);
}

TEST_CASE("a walk only begun is no walk to compare; the first has nothing before it")
{
    Walks w;
    CHECK(lastTwo(w.story.history()).error().code == Errc::NotFound);
    const Id first = w.add("2025-01-01", "full_round", {"seam"});
    CHECK(lastTwo(w.story.history()).error().code == Errc::NotFound);
    w.add("2025-03-01", "full_round", {});
    CHECK(lastTwo(w.story.history()).error().code == Errc::NotFound);
    CHECK(lastOfKind(w.story.history(), first).error().code == Errc::NotFound);
    CHECK(lastOfKind(w.story.history(), Id{}).error().code == Errc::NotFound);
    const Id now = w.add("2025-06-01", "full_round", {"seam"});
    RigHistory history = w.story.history();
    std::reverse(history.walks.begin(), history.walks.end()); // order never matters
    CHECK(lastTwo(history)->then == first);
    CHECK(lastTwo(history)->now == now);
}

// SPDX-License-Identifier: Apache-2.0
// What the bench says beside its figures for wheel nuts, hubs and the entry door: common practice, no source,
// each of them; the re-check of 50 to 100 miles stands in US Army manuals of trailers, as restated.
#include "../bench_words.hpp"
#include "../sourced.hpp"

#include <algorithm>

#include "bench/ask/ask.hpp"

using namespace snugwalk;
using snugwalk::test::has;
using snugwalk::test::words;

namespace {

double figure(const BenchAnswer &answer, std::string_view name)
{
    const auto found = std::find_if(answer.figures.begin(), answer.figures.end(),
                                    [&](const BenchFigure &f) { return f.name == name; });
    REQUIRE(found != answer.figures.end());
    return found->estimate.value;
}

bool cautions(const char *question, std::string_view slug)
{
    const std::string_view all = findBenchQuestion(question)->cautions;
    return all.find(slug) != std::string_view::npos;
}

} // namespace

// common practice, no source; stages of 20, then ten more, to 90 lb·ft and 30, 60, 100 % go about, too
TEST_CASE("a third of the final torque off the ground, in a star, and all of it with the tire on the ground")
{
    const BenchQuestion &question = *findBenchQuestion("torque");
    const CivilDate today{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(24)};
    const auto answer = askBench(question, exampleOf(question), UnitSystem::Si, today).value();
    const double full = figure(answer, "stage-on-ground");
    SOURCED("computed", full, 140.0, 1e-9); // the figure typed in, unchanged
    SOURCED("CP", figure(answer, "stage-off-ground") / full, 1.0 / 3.0, 1e-12);
    CHECK(figure(answer, "stage-middle") < full);
    const Value &text = words("bench/en/wheels")["cautions"]["wheel_on_ground"];
    SOURCED("CP", has(text, "star order to about a third off the ground"), true, 0);
    SOURCED("CP", has(text, "finish in star order with the tire on the ground"), true, 0);
    CHECK(has(words("bench/es/wheels")["cautions"]["wheel_on_ground"], "un tercio"));
    CHECK((cautions("torque", "wheel_on_ground") && cautions("star", "wheel_on_ground")));
}

// common practice, no source, for 10 and 25 miles
TEST_CASE("nuts are looked at again after 50 to 100 miles, and at 10 and 25 on the way")
{
    const Value &text = words("bench/en/wheels")["cautions"]["recheck_nuts"];
    SOURCED("CP", has(text, "50 to 100 miles"), true, 0);
    SOURCED("CP", has(text, "10 and 25"), true, 0);
    CHECK(has(text, "too loose, never too tight"));
    CHECK((cautions("torque", "recheck_nuts") && cautions("star", "recheck_nuts")));
}

// common practice, no source
TEST_CASE("sealed hubs are inspected all the same")
{
    SOURCED("CP", has(words("bench/en/hubs")["cautions"]["sealed_hubs_too"], "looked at all the same"), true,
            0);
    CHECK(has(words("bench/es/hubs")["cautions"]["sealed_hubs_too"], "se miran igual"));
    CHECK(cautions("bearing-service", "sealed_hubs_too"));
    const Value &point = words("en/tires-and-wheels")["points"]["sealed-hubs"];
    SOURCED("CP", has(point["look"], "rock it top and bottom, spin it"), true, 0);
}

// common practice, no source
TEST_CASE("the entry door's catch goes in fully and its bolt all the way home")
{
    const Value &door = words("en/latches-and-doors")["points"]["entry-door-latch"];
    SOURCED("CP", has(door["pass"], "the bolt goes all the way home"), true, 0);
    SOURCED("CP", has(door["look"], "With the rig on its wheels, close the door, pull on it"), true, 0);
}

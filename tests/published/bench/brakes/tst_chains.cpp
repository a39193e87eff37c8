// SPDX-License-Identifier: Apache-2.0
// Chains: classes of [SAE-J684] as restated, working loads of [CFR49-393-108] as restated, breaking at three
// or four times those from memory. Wear and stretch are common practice, no source.
#include "../sourced.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/brakes/chains.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double pound = 0.45359237;
Mass pounds(double v) { return kilograms(v * pound); }
Length inches(double v) { return metres(v * 0.0254); }
double breaking(ChainGrade grade, double size)
{
    return chainStrength({grade, inches(size), {}, pounds(7400)}).value().breaking.value / pound;
}
bool warns(const SafetyChains &c, const char *slug)
{
    const auto w = chainStrength(c).value().breaking.warnings;
    return std::find(w.begin(), w.end(), slug) != w.end();
}

} // namespace

TEST_CASE("the trade's example at 7,400 lb: 1/4 in grade 30 breaks at 5,200 lb, 43 at 7,800, 70 at 12,600")
{
    SOURCED("computed", breaking(ChainGrade::G30, 0.25), 5200, half(1));
    SOURCED("computed", breaking(ChainGrade::G43, 0.25), 7800, half(1));
    SOURCED("computed", breaking(ChainGrade::G70, 0.25), 12600, half(1));
    CHECK(warns({ChainGrade::G30, inches(0.25), {}, pounds(7400)}, "chain_weak"));
    CHECK_FALSE(warns({ChainGrade::G43, inches(0.25), {}, pounds(7400)}, "chain_weak"));
    CHECK_FALSE(warns({ChainGrade::G70, inches(0.25), {}, pounds(7400)}, "chain_weak"));
}

TEST_CASE("working loads in pounds by grade and size")
{
    const struct {
        ChainGrade grade;
        double quarter, fiveSixteenths, threeEighths;
    } rows[] = {{ChainGrade::G30, 1300, 1900, 2650},
                {ChainGrade::G43, 2600, 3900, 5400},
                {ChainGrade::G70, 3150, 4700, 6600}};
    for (const auto &row : rows) {
        const auto load = [&](double size) { return workingLoad(row.grade, inches(size))->si() / pound; };
        SOURCED("CFR49-393-108", load(0.25), row.quarter, half(1));
        SOURCED("CFR49-393-108", load(0.3125), row.fiveSixteenths, half(1));
        SOURCED("CFR49-393-108", load(0.375), row.threeEighths, half(1));
    }
    CHECK(workingLoad(ChainGrade::G30, millimetres(8)).has_value()); // 5/16 in by its metric name
    CHECK_FALSE(workingLoad(ChainGrade::G30, inches(0.5)).has_value());
}

TEST_CASE("classes: to 2,000, 3,500 and 5,000 lb that much a chain, above that the gross rating")
{
    SOURCED("SAE-J684", chainWanted(pounds(1500)).si() / pound, 2000, half(1));
    SOURCED("SAE-J684", chainWanted(pounds(2000)).si() / pound, 2000, half(1));
    SOURCED("SAE-J684", chainWanted(pounds(2001)).si() / pound, 3500, half(1));
    SOURCED("SAE-J684", chainWanted(pounds(3500)).si() / pound, 3500, half(1));
    SOURCED("SAE-J684", chainWanted(pounds(5000)).si() / pound, 5000, half(1));
    SOURCED("SAE-J684", chainWanted(pounds(7400)).si() / pound, 7400, half(1));
}

TEST_CASE("the tag wins over the table; wear over 10 %, stretch over 3 %, a weld and a single chain are told")
{
    SafetyChains c{ChainGrade::G30, inches(0.25), pounds(8000), pounds(7400)};
    CHECK(chainStrength(c).value().breaking.basis == "maker");
    CHECK_FALSE(warns(c, "chain_weak"));
    c.wear = 0.10;
    c.stretch = 0.03;
    CHECK_FALSE(warns(c, "chain_worn"));
    CHECK_FALSE(warns(c, "chain_stretched"));
    c.wear = 0.11;
    c.stretch = 0.04;
    c.welded = true;
    c.chains = 1;
    for (const char *slug : {"chain_worn", "chain_stretched", "chain_welded", "one_chain"})
        CHECK(warns(c, slug));
}

TEST_CASE("a chain nobody can rate is refused by what is missing")
{
    CHECK(chainStrength({{}, inches(0.25), {}, pounds(7400)}).error().where == "grade");
    CHECK(chainStrength({ChainGrade::G30, {}, {}, pounds(7400)}).error().where == "size");
    CHECK(chainStrength({ChainGrade::G30, inches(0.5), {}, pounds(7400)}).error().code == Errc::Unsupported);
    CHECK(chainStrength({ChainGrade::G30, inches(0.25), {}, Mass()}).error().where == "gvwr");
    CHECK(parseChainGrade("G43") == ChainGrade::G43);
    CHECK(parseChainGrade("70") == ChainGrade::G70);
    CHECK_FALSE(parseChainGrade("80").has_value());
}

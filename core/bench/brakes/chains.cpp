// SPDX-License-Identifier: Apache-2.0
// Tables of chain, and the class of a rig.
#include "bench/brakes/chains.hpp"

#include <array>
#include <cmath>

#include "base/text.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr double pound = 0.45359237;
constexpr double inch = 0.0254;
constexpr double sizeSlack = 0.3e-3; // m: 6 and 7 mm stay apart, 8 mm meets 5/16 in
constexpr auto sizes = std::to_array<double>({0.25, 0.3125, 0.375}); // in

struct Grade {
    std::string_view slug;
    std::array<double, 3> workingPounds; // by size
    double factor;                       // breaking over working load
};
constexpr std::array grades = {Grade{"30", {1300.0, 1900.0, 2650.0}, 4.0},
                               Grade{"43", {2600.0, 3900.0, 5400.0}, 3.0},
                               Grade{"70", {3150.0, 4700.0, 6600.0}, 4.0}};

struct Class {
    double upTo; // lb of gross rating
    double wanted;
};
constexpr std::array classes = {Class{2000.0, 2000.0}, Class{3500.0, 3500.0}, Class{5000.0, 5000.0}};
constexpr double mostWear = 0.10;    // common practice, no source
constexpr double mostStretch = 0.03; // common practice, no source
constexpr double rounding = 1e-9;

Status checkShare(const std::optional<double> &share, const char *where)
{
    return within(0.0, share.value_or(0.0), 1.0,
                  {Errc::OutOfRange, "a share lies between 0 and 100 %", where, "such as 5 %"});
}

Status checkChains(const SafetyChains &c)
{
    SNUG_TRY(within(50.0, c.gvwr.si(), 20'000.0,
                    {Errc::OutOfRange, "no rig is rated for that", "gvwr",
                     "give the gross rating of its label, such as 7,400 lb"}));
    SNUG_TRY(within(1, c.chains, 4, {Errc::OutOfRange, "one to 4 chains", "chains", "count them"}));
    if (c.tagged)
        SNUG_TRY(within(50.0, c.tagged->si(), 50'000.0,
                        {Errc::OutOfRange, "no chain is tagged like that", "tag",
                         "give the breaking strength on its tag, such as 7,800 lb"}));
    SNUG_TRY(checkShare(c.wear, "wear"));
    return checkShare(c.stretch, "stretch");
}

Result<Estimate> breakingOf(const SafetyChains &c)
{
    if (c.tagged)
        return around(c.tagged->si(), 0.0, {"kg", "maker", "chain's tag"});
    if (!c.grade)
        return Error{Errc::InvalidInput, "a chain without grade or tag shows no strength", "grade",
                     "read the mark on the links, 30, 43 or 70; a chain without one counts as none"};
    if (!c.size)
        return Error{Errc::InvalidInput, "the size of the links is missing", "size",
                     "measure the bar of a link, such as 5/16 in"};
    const auto working = workingLoad(*c.grade, *c.size);
    if (!working)
        return Error{Errc::Unsupported, "the table has 1/4, 5/16 and 3/8 in", "size",
                     "give the breaking strength of its tag instead"};
    const double factor = grades.at(static_cast<std::size_t>(*c.grade)).factor;
    return around(working->si() * factor, 0.0, {"kg", "published", "CFR49-393-108"});
}

} // namespace

std::optional<ChainGrade> parseChainGrade(std::string_view text)
{
    const std::string lower = lowerAscii(text);
    const std::string_view digits = lower.starts_with('g') ? std::string_view(lower).substr(1) : lower;
    for (std::size_t i = 0; i < grades.size(); ++i) {
        if (grades[i].slug == digits)
            return static_cast<ChainGrade>(i);
    }
    return std::nullopt;
}

std::optional<Mass> workingLoad(ChainGrade grade, Length size)
{
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        if (std::fabs(sizes.at(i) * inch - size.si()) <= sizeSlack)
            return Mass::fromSi(grades.at(static_cast<std::size_t>(grade)).workingPounds.at(i) * pound);
    }
    return std::nullopt;
}

Mass chainWanted(Mass gvwr)
{
    for (const Class &c : classes) {
        if (gvwr.si() <= c.upTo * pound + rounding)
            return Mass::fromSi(c.wanted * pound);
    }
    return gvwr;
}

Result<ChainStrength> chainStrength(const SafetyChains &c)
{
    SNUG_TRY(checkChains(c));
    const Result<Estimate> breaking = breakingOf(c);
    if (!breaking)
        return breaking.error();
    ChainStrength out;
    out.breaking = *breaking;
    out.wanted = around(chainWanted(c.gvwr).si(), 0.0, {"kg", "published", "SAE-J684"});
    const double margin = out.breaking.value / out.wanted.value - 1.0;
    out.margin = around(margin, 0.0, {"1", "computed", "SAE-J684"});
    auto &warnings = out.breaking.warnings;
    if (margin < -rounding)
        warnings.emplace_back("chain_weak");
    if (c.chains < 2)
        warnings.emplace_back("one_chain");
    if (c.wear && *c.wear > mostWear)
        warnings.emplace_back("chain_worn");
    if (c.stretch && *c.stretch > mostStretch)
        warnings.emplace_back("chain_stretched");
    if (c.welded)
        warnings.emplace_back("chain_welded");
    return out;
}

} // namespace snugwalk

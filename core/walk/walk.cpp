// SPDX-License-Identifier: Apache-2.0
// Slugs of what is written on a walk.
#include "walk/walk.hpp"

#include <array>

namespace snugwalk {
namespace {

constexpr auto stateSlugs =
    std::to_array<std::string_view>({"not_looked", "pass", "attention", "not_fitted", "could_not_look"});
constexpr auto howSlugs = std::to_array<std::string_view>({"glance", "looked", "measured"});

template <typename Choice, typename Table>
std::optional<Choice> parse(const Table &table, std::string_view text)
{
    for (std::size_t i = 0; i < table.size(); ++i) {
        if (table[i] == text)
            return static_cast<Choice>(i);
    }
    return std::nullopt;
}

} // namespace

std::string_view slug(MarkState state) { return stateSlugs.at(static_cast<std::size_t>(state)); }
std::string_view slug(LookedHow how) { return howSlugs.at(static_cast<std::size_t>(how)); }
std::optional<MarkState> parseMarkState(std::string_view text) { return parse<MarkState>(stateSlugs, text); }
std::optional<LookedHow> parseLookedHow(std::string_view text) { return parse<LookedHow>(howSlugs, text); }

const std::vector<std::string> &mendActions()
{
    static const std::vector<std::string> actions = {"replace",   "reseal", "retorque", "clean",
                                                     "lubricate", "adjust", "other"};
    return actions;
}

} // namespace snugwalk

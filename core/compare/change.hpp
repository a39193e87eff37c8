// SPDX-License-Identifier: Apache-2.0
// What became of something between two looks, in the words people see.
#pragma once

#include <array>
#include <string_view>

namespace snugwalk {

enum class Change { New, Worse, Same, Better, Mended, Gone, NotLooked, FirstLook, NotFitted };
inline constexpr std::array allChanges = {Change::New,       Change::Worse,     Change::Same,
                                          Change::Better,    Change::Mended,    Change::Gone,
                                          Change::NotLooked, Change::FirstLook, Change::NotFitted};

/// new, worse, same, better, mended, gone, not_looked, first_look, not_fitted.
[[nodiscard]] std::string_view slug(Change change);

/// How many of each.
class ChangeCounts {
public:
    void add(Change change) { ++m_counts[static_cast<std::size_t>(change)]; }
    [[nodiscard]] int of(Change change) const { return m_counts[static_cast<std::size_t>(change)]; }
    [[nodiscard]] int total() const;
    friend bool operator==(const ChangeCounts &, const ChangeCounts &) = default;

private:
    std::array<int, allChanges.size()> m_counts{};
};

} // namespace snugwalk

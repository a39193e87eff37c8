// SPDX-License-Identifier: Apache-2.0
// Which fixes of a track are believed.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "base/geo.hpp"

namespace snugwalk {

/// 68 % radius in metres: the receiver's own, else 5 m times HDOP (the ranging error of a plain
/// receiver; common practice, no source), else nothing.
[[nodiscard]] std::optional<double> accuracyOf(const Fix &fix);

/// True when more than 10 minutes or 2 km lie between two fixes.
[[nodiscard]] bool isGap(const Fix &a, const Fix &b);

/// Looks at fixes in order; holds the last one it let through.
class FixFilter {
public:
    explicit FixFilter(std::span<const Fix> fixes) : m_fixes(fixes) {}

    /// \returns the reason for leaving fix `index` out (see `Drop`), or nothing to keep it.
    [[nodiscard]] std::optional<std::string_view> judge(std::size_t index);

private:
    [[nodiscard]] std::optional<std::string_view> disputed(std::size_t index) const;

    std::span<const Fix> m_fixes;
    std::optional<Fix> m_last;
};

} // namespace snugwalk

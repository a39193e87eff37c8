// SPDX-License-Identifier: Apache-2.0
// The slug of every choice a rig has, as stored and as typed.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "rig/rig.hpp"

namespace snugwalk {

[[nodiscard]] std::string_view slug(RigKind v);
[[nodiscard]] std::string_view slug(Practice v);
[[nodiscard]] std::string_view slug(HitchType v);
[[nodiscard]] std::string_view slug(RoofWalk v);
[[nodiscard]] std::string_view slug(RoofKind v);
[[nodiscard]] std::string_view slug(BearingKind v);
[[nodiscard]] std::string_view slug(Face v);
[[nodiscard]] std::string_view slug(OpeningKind v);

/// The choice written `text`, or nothing. `Choice` is one of the enums above.
template <typename Choice>
[[nodiscard]] std::optional<Choice> parseChoice(std::string_view text);
/// "ball, friction_ball, …": all slugs of a choice, for messages.
template <typename Choice>
[[nodiscard]] std::string choiceList();

} // namespace snugwalk

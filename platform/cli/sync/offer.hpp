// SPDX-License-Identifier: Apache-2.0
// Making an offer, which `share` and `device offer` do alike.
#pragma once

#include "cli/commands.hpp"

namespace snugwalk::cli {

struct OfferTyped {
    std::string role;
    std::string until;
    std::string qr;
};

/// `Usage` for what is no date; empty is fine.
[[nodiscard]] Status checkUntil(const std::string &until);

void addOfferOptions(CLI::App &command, OfferTyped &into);

/// Shows an offer for a shared rig and keeps its secret for the answer.
[[nodiscard]] Result<Answer> offer(Session &session, const Id &rig, const OfferTyped &typed);

} // namespace snugwalk::cli

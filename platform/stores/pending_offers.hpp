// SPDX-License-Identifier: Apache-2.0
// Offers that wait for an answer: the command line is another process by the time it comes.
#pragma once

#include <filesystem>
#include <vector>

#include "stores/secret_keeper.hpp"
#include "sync/enroll.hpp"

namespace snugwalk {

struct PendingOffer {
    Offer offer;
    Id rig;
    std::optional<SyncRole> role; ///< if the owner chose it with the offer
    std::string until;            ///< a date, a hint only
    LocalTime made;
};

/// Kept under the hash of its bytes, its secret with the keeper.
[[nodiscard]] Status keepOffer(const std::filesystem::path &folder, SecretKeeper &keeper,
                               const PendingOffer &pending);
/// Those that still stand; the others are dropped with their secrets.
[[nodiscard]] Result<std::vector<PendingOffer>> pendingOffers(const std::filesystem::path &folder,
                                                              SecretKeeper &keeper, const LocalTime &now);
[[nodiscard]] Status dropOffer(const std::filesystem::path &folder, SecretKeeper &keeper,
                               const PendingOffer &pending);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Meeting of two devices: an offer shown by the owner, an answer by the new one, six digits on both. Each is
// bytes that a QR code or typed words (sync/words.hpp) carry; no network is needed.
#pragma once

#include "sync/share.hpp"

namespace snugwalk {

/// What the owner's device keeps while the offer stands; `bytes` is what it shows.
struct Offer {
    std::string bytes;
    Secret secret;
};

/// Good for ten minutes. `NotFound` when the rig is not shared, `Unsupported` when this is no owner's device.
[[nodiscard]] Result<Offer> makeOffer(Logbook &book, const Keys &keys, const Id &rig);

/// On the new device: takes the rig as shared from there on, and gives the answer to show.
/// \returns `InvalidInput` for what is no offer, `OutOfRange` for one that is over, `Conflict` when this
/// logbook shares the rig with others already.
[[nodiscard]] Result<std::string> answerOffer(Logbook &book, const Keys &keys, std::string_view offer,
                                              SyncRole wanted);

/// Six digits from both; made slow (Argon2id), so that nobody finds another answer with the same ones in
/// time.
[[nodiscard]] std::string confirmCode(std::string_view offer, std::string_view answer);

/// What the answer says, once it is known to be one to this offer. People compare the code before the device
/// is enrolled (`enrollDevice`) with the role the owner chooses.
[[nodiscard]] Result<NewDevice> readAnswer(const Offer &offer, std::string_view answer, const LocalTime &now);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Sharing and exchanging in words.
#pragma once

#include <QStringList>
#include <QVariantMap>

#include "sync_state.hpp"
#include "voice.hpp"

namespace snugwalk {

[[nodiscard]] QString roleText(SyncRole role);
/// [{slug, name, about}] of all four, the owner's first.
[[nodiscard]] QVariantList roleChoices();

/// {what, act}: what went wrong, what to do now.
[[nodiscard]] QVariantMap syncFault(const Error &error);

/// What waits, a sentence each; empty when nothing does.
[[nodiscard]] QStringList waitingLines(const SyncState &state);
/// The same for the mark beside a word: "12 wait"; empty when nothing needs anyone.
[[nodiscard]] QString waitingMark(const SyncState &state);

/// What came of an exchange, a sentence each; the first sums it up.
[[nodiscard]] QStringList exchangeOutcome(const ExchangeSummary &summary);
/// That originals come with the next exchange.
[[nodiscard]] QString askedText(std::int64_t count);
[[nodiscard]] QString exchangeProgress(const std::string &what, std::int64_t done, std::int64_t of);

/// {name, where, kind, last, waits, usable}
[[nodiscard]] QVariantMap storeRow(const Voice &voice, const KnownStore &store, bool shared);
/// {id, name, role, since, until, revoked, note, self, revocable}
[[nodiscard]] QVariantMap deviceRow(const Voice &voice, const SyncState &state, const Member &member);
/// What this device is to the rig, in one sentence.
[[nodiscard]] QString standingText(const SyncState &state);

} // namespace snugwalk

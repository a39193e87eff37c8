// SPDX-License-Identifier: Apache-2.0
// What the commands around sync share: keys, places of secrets, words in and out.
#pragma once

#include "cli/session.hpp"
#include "stores/secret_keeper.hpp"
#include "sync/share.hpp"

namespace snugwalk::cli {

/// This device's keys, with the logbook opened.
[[nodiscard]] Result<Keys> keysOf(Session &session, bool create = false);

/// Where passwords and open offers lie.
[[nodiscard]] std::unique_ptr<SecretKeeper> keeper();

/// The rig of the options; where it has not come yet, the only one that this logbook shares.
[[nodiscard]] Result<Id> sharedRig(Session &session);

/// Bytes as typed words, or from a file ("-" is standard input) that has words or the bytes themselves, as a
/// reader of QR codes gives them.
[[nodiscard]] Result<std::string> bytesTyped(const std::vector<std::string> &words, const std::string &from);

/// Six words a line, with the number of each line's first.
[[nodiscard]] std::string wordLines(const std::string &words);

/// What another device reads: words, a QR code drawn below, and as a picture when `qrFile` is not empty.
struct Shown {
    std::string words;
    std::string text;
};
[[nodiscard]] Result<Shown> shown(const std::string &bytes, const std::string &qrFile);

/// A name of an entry that is short enough to type.
[[nodiscard]] std::string entryName(const EntryId &id);

/// "1 photo", "3 photos".
[[nodiscard]] std::string counted(std::int64_t count, const std::string &one, const std::string &many);

} // namespace snugwalk::cli

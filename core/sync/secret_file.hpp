// SPDX-License-Identifier: Apache-2.0
// A secret in a file: for its owner alone, and if wanted locked by a passphrase. Said plainly: without one,
// whoever can read the file has the secret.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "sync/seal.hpp"

namespace snugwalk {

/// Replaces what is there, whole or not at all; mode 0600. With a passphrase: Argon2id (libsodium's
/// interactive limits: 2 passes over 64 MiB) and XChaCha20-Poly1305. Source [RFC9106].
[[nodiscard]] Status writeSecretFile(const std::filesystem::path &file, const Secret &secret,
                                     const std::optional<std::string> &passphrase);

/// \returns `NotFound`; `Io` when other users of the machine may read it; `InvalidInput` for a wrong or
/// missing passphrase; `Corrupt`.
[[nodiscard]] Result<Secret> readSecretFile(const std::filesystem::path &file,
                                            const std::optional<std::string> &passphrase);

/// Whether a passphrase is needed to read it.
[[nodiscard]] Result<bool> isLocked(const std::filesystem::path &file);

} // namespace snugwalk

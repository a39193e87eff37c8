// SPDX-License-Identifier: Apache-2.0
// Secrets where the system keeps those of its user, and in files where it has no such place.
#pragma once

#include <filesystem>
#include <memory>

#include "stores/secret_keeper.hpp"

namespace snugwalk {

/// The system's key store (the Secret Service of a desktop, by libsecret). Null when there is none that
/// answers, or the program was built without it. Secrets are told apart by `folder`.
[[nodiscard]] std::unique_ptr<SecretKeeper> systemKeeper(const std::filesystem::path &folder);

/// The system's key store where there is one, files in `folder` otherwise. A secret that lies in a file from
/// before moves to the key store when it is next needed.
[[nodiscard]] std::unique_ptr<SecretKeeper> bestKeeper(const std::filesystem::path &folder);

} // namespace snugwalk

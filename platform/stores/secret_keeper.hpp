// SPDX-License-Identifier: Apache-2.0
// Where this machine keeps secrets of 32 bytes, by name.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "sync/seal.hpp"

namespace snugwalk {

class SecretKeeper {
public:
    SecretKeeper() = default;
    SecretKeeper(const SecretKeeper &) = delete;
    SecretKeeper &operator=(const SecretKeeper &) = delete;
    virtual ~SecretKeeper() = default;

    /// Nothing when there is none of that name. \returns `Io` when other users of the machine may read it,
    /// `Corrupt`.
    [[nodiscard]] virtual Result<std::optional<Secret>> find(const std::string &name) = 0;
    /// Takes the place of the one before.
    [[nodiscard]] virtual Status keep(const std::string &name, const Secret &secret) = 0;
    /// One that is not there is fine.
    [[nodiscard]] virtual Status forget(const std::string &name) = 0;
    /// For people: who can read what is kept here.
    [[nodiscard]] virtual std::string says() const = 0;
};

/// One file a secret, `<folder>/<name>.key`, for this user alone (mode 0600) and not locked: whoever can read
/// this user's files has them.
[[nodiscard]] std::unique_ptr<SecretKeeper> fileKeeper(const std::filesystem::path &folder);

/// The secret of that name, made at random when there is none.
[[nodiscard]] Result<Secret> secretOf(SecretKeeper &keeper, const std::string &name);

} // namespace snugwalk

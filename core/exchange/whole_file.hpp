// SPDX-License-Identifier: Apache-2.0
// A checksum over every byte of an export, kept in the ZIP's comment, its last bytes.
#pragma once

#include <optional>
#include <string>

#include "base/result.hpp"

namespace snugwalk {

/// What the comment holds until the file is there to be hashed; as long as the one that replaces it.
[[nodiscard]] std::string emptySeal();

/// Hashes all bytes before the comment and writes the comment, which must be `emptySeal`.
[[nodiscard]] Status sealFile(const std::string &file);

/// What is wrong with the file as a whole, or nothing. \returns `NotFound` or `Io` when it cannot be read.
[[nodiscard]] Result<std::optional<std::string>> sealFault(const std::string &file);

} // namespace snugwalk

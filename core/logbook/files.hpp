// SPDX-License-Identifier: Apache-2.0
// Files that are either wholly there or not there at all, also when the power fails.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk {

/// What the system said about `path`, in words that tell people what to do now.
/// \param number the `errno` of the call that failed.
/// \returns `NotFound` for a missing file or folder, else `Io`.
[[nodiscard]] Error systemError(int number, const std::filesystem::path &path);

/// The whole content of a plain file.
/// \returns `NotFound`, `Io`, or `OutOfRange` when it holds more than `maxBytes`; never more is read.
[[nodiscard]] Result<std::string> readFile(const std::filesystem::path &path, std::size_t maxBytes);

/// Makes a folder and the folders above it; one that is there already is fine.
[[nodiscard]] Status makeFolder(const std::filesystem::path &folder);

/// Writes a file that must not be there yet: to `<path>.part-<random>`, then to the disk, then renamed,
/// then the folder to the disk. A file of the same bytes is fine.
/// \returns `Conflict` when another file has the name, `NotFound` without the folder, `Io` for the rest;
/// the part file is gone in every case.
[[nodiscard]] Status writeNewFile(const std::filesystem::path &path, std::string_view bytes);

/// The same, but takes the place of a file that is there; a reader sees the old or the new one, whole.
[[nodiscard]] Status replaceFile(const std::filesystem::path &path, std::string_view bytes);

/// Gives a file that another library wrote its name: to the disk, renamed, then the folder to the disk.
/// \returns `Conflict` when the name is taken, `NotFound` or `Io` for the rest; `part` stays in those cases.
[[nodiscard]] Status publishFile(const std::filesystem::path &part, const std::filesystem::path &path);

/// The same, but takes the place of a file that is there; a reader sees the old or the new one, whole.
[[nodiscard]] Status publishFileOver(const std::filesystem::path &part, const std::filesystem::path &path);

/// What every part file has in its name, see `writeNewFile`.
inline constexpr std::string_view partMark = ".part-";

} // namespace snugwalk

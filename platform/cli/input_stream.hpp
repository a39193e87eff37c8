// SPDX-License-Identifier: Apache-2.0
// Reading files of any size portion by portion, and naming the file in what goes wrong.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace snugwalk::cli {

/// Adds the file's name before the place in it.
[[nodiscard]] Error inFile(Error error, const std::string &file);

/// Gives a file, or standard input for "-", a megabyte at a time. Errors of `take` come back with the
/// file's name. \returns `NotFound` or `Io` when it cannot be read.
[[nodiscard]] Status readThrough(const std::string &file,
                                 const std::function<Status(std::string_view)> &take);

} // namespace snugwalk::cli

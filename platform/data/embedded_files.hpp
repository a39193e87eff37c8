// SPDX-License-Identifier: Apache-2.0
// Bytes compiled into the program, by their path under core/catalogue/data.
#pragma once

#include <map>
#include <string_view>

namespace snugwalk {

[[nodiscard]] const std::map<std::string_view, std::string_view> &embeddedFiles();

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The demo's bytes compiled into the program, by their path under demo-rig.
#pragma once

#include <map>
#include <string_view>

namespace snugwalk {

[[nodiscard]] const std::map<std::string_view, std::string_view> &embeddedDemoFiles();

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A build without libsecret.
#include "stores/system_keeper.hpp"

namespace snugwalk {

std::unique_ptr<SecretKeeper> systemKeeper(const std::filesystem::path & /*folder*/) { return nullptr; }

} // namespace snugwalk

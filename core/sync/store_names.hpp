// SPDX-License-Identifier: Apache-2.0
// How files at a store are called: `<counter of 12 digits>-<first 20 digits of the hash>`.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "keys/hash.hpp"

namespace snugwalk {

inline constexpr std::size_t shortHash = 20; ///< digits of a hash in a name

[[nodiscard]] inline std::string counterName(std::int64_t counter, const Hash &hash)
{
    const std::string digits = std::to_string(counter);
    return std::string(digits.size() < 12 ? 12 - digits.size() : 0, '0') + digits + "-" +
           hash.text().substr(0, shortHash);
}

/// The hash a name claims: what is known already need not be read. A piece of a photo is named by it alone.
[[nodiscard]] inline std::string claimedHash(const std::string &what)
{
    const std::size_t dash = what.find('-');
    return dash == std::string::npos ? what : what.substr(dash + 1);
}

} // namespace snugwalk

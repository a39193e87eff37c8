// SPDX-License-Identifier: Apache-2.0
// Signed bytes: COSE_Sign1 with EdDSA, in the one shape that we write.
#pragma once

#include <string>
#include <string_view>

#include "keys/device_key.hpp"

namespace snugwalk {

/// Views into the signed bytes.
struct Envelope {
    std::string_view payload;
    std::string_view signature;
};

/// Tag 18, protected {1: -8}, no unprotected members, payload, signature over Sig_structure with `purpose`
/// as external data, so that a signature made for one purpose says nothing elsewhere.
/// Source [RFC9052] sections 4.2 and 4.4; [RFC9053] section 2.2.
[[nodiscard]] std::string signed1(const DeviceKey &key, std::string_view purpose, std::string_view payload);

/// The outer shape alone, byte for byte as `signed1` makes it; no signature is looked at.
[[nodiscard]] Result<Envelope> parseSigned1(std::string_view bytes);

[[nodiscard]] bool isSignedBy(const Envelope &envelope, std::string_view publicKey, std::string_view purpose);

} // namespace snugwalk

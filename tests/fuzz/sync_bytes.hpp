// SPDX-License-Identifier: Apache-2.0
// Keys that the fuzz programs and their corpus share, and segments signed and sealed rightly around anything:
// what a member who means harm can do, and a fuzzer that knows no key could not.
#pragma once

#include <string>
#include <string_view>

#include "base/value.hpp"
#include "keys/device_key.hpp"
#include "sync/envelope.hpp"
#include "sync/seal.hpp"
#include "sync/segment.hpp"

namespace snugwalk::fuzz {

inline DeviceKey keyOf(char which) { return DeviceKey::fromSeed(std::string(32, which)); }
inline Secret epochKey() { return Secret::fromBytes(std::string(32, 'e')).value(); }
inline Id rigId() { return Id::fromBytes(std::string(16, 'r')); }

inline StreamId streamOf(const DeviceKey &device)
{
    StreamId stream;
    stream.device = device.deviceId();
    return stream;
}

inline std::string signedPayload(std::string_view payload)
{
    return signed1(keyOf('k'), "snugwalk segment 1", payload);
}

/// \param plainSize what the head says of the size once inflated
inline std::string segmentAround(std::string_view squeezed, std::int64_t plainSize, std::int64_t count)
{
    const DeviceKey key = keyOf('k');
    Value::Map members{{"v", 1},
                       {"reader", 1},
                       {"space", Bytes{std::string(rigId().view())}},
                       {"stream", Bytes{streamOf(key).bytes()}},
                       {"key", Bytes{key.publicKey()}},
                       {"counter", 1},
                       {"count", count},
                       {"prev", Bytes{std::string(32, '\0')}},
                       {"at", "2026-03-14T09:00:00+13:00"},
                       {"epoch", Bytes{epochName(epochKey())}},
                       {"nonce", Bytes{std::string(24, 'n')}},
                       {"plain", plainSize}};
    members["cipher"] = Bytes{seal(epochKey(), std::string(24, 'n'), squeezed, encodeCbor(Value(members)))};
    return signedPayload(encodeCbor(Value(members)));
}

} // namespace snugwalk::fuzz

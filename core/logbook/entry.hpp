// SPDX-License-Identifier: Apache-2.0
// One immutable record of the logbook and its canonical bytes.
#pragma once

#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "base/geo.hpp"
#include "base/value.hpp"
#include "keys/device_key.hpp"
#include "keys/hash.hpp"

namespace snugwalk {

/// Which entry: (stream, seq) is its id everywhere, for ever.
struct EntryId {
    StreamId stream;
    std::int64_t seq = 0;
    friend constexpr auto operator<=>(const EntryId &, const EntryId &) = default;
};

/// A stamp beyond this (the year 6429) would leave our own clock no room to go on; none of others is taken.
inline constexpr std::int64_t lastHlc = std::numeric_limits<std::int64_t>::max() - (std::int64_t{1} << 32);

/// Sets fields of one entity. A null value takes the field away. `prev` names the entries whose
/// values this one has seen and replaces: a later writer with a wrong clock cannot overrule it.
struct Entry {
    EntryId id;
    std::int64_t hlc = 0; ///< hybrid logical clock: 48 bits of milliseconds, 16 of counter
    Id act;               ///< all entries of what a person did in one go
    Id scope;             ///< the walk it was done on, null outside a walk
    Id undoes;            ///< the act taken back, null otherwise
    Id entity;
    std::string type; ///< rig walk mark finding look mend photo trip stay happening drawing stock
    Value::Map fields;
    std::vector<EntryId> prev;
    std::string by;
    LocalTime at;
    std::optional<GeoPoint> where;
};

/// Deterministic CBOR of everything above, see core/logbook/FORMAT.md.
[[nodiscard]] std::string canonicalBytes(const Entry &entry);
/// Strict inverse; `Corrupt` when a member is missing or of another type.
[[nodiscard]] Result<Entry> entryFromBytes(std::string_view bytes);
/// The name of an act, from its first entry: stream, number, clock, entity and fields. Two copies of a
/// logbook that go on apart name their acts apart, and a file of entries need not carry what follows from
/// them.
[[nodiscard]] Id actIdOf(const Entry &first);
/// BLAKE2b-256(previous hash, canonical bytes); the first of a stream has 32 zero bytes before it.
[[nodiscard]] Hash chainHash(const Hash &previous, std::string_view bytes);

} // namespace snugwalk

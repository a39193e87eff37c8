// SPDX-License-Identifier: Apache-2.0
// Any bytes as one entry of the logbook: refused, or written again as entries are, judged, packed and
// unpacked.
#include "fuzz.hpp"
#include "logbook/entry.hpp"
#include "sync/columns.hpp"
#include "sync/roles.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    using namespace snugwalk;
    const auto entry = entryFromBytes(asText(data, size));
    if (!entry) {
        SNUG_ASSERT(entry.error().code == Errc::Corrupt || entry.error().code == Errc::Unsupported);
        return 0;
    }
    const std::string bytes = canonicalBytes(*entry);
    const auto again = entryFromBytes(bytes);
    SNUG_ASSERT(again && canonicalBytes(*again) == bytes);
    const Id rig = Id::fromBytes(std::string(16, 'r'));
    for (const SyncRole role : {SyncRole::Owner, SyncRole::Helper, SyncRole::Technician, SyncRole::Viewer}) {
        const auto why = outOfRole(role, rig, *entry);
        SNUG_ASSERT(!why || !why->empty());
        SNUG_ASSERT(role != SyncRole::Viewer || why);
    }
    const auto packed = packEntries({{*again, bytes}});
    if (!packed)
        return 0;
    const auto back = unpackEntries(*packed);
    SNUG_ASSERT(back && back->size() == 1 && back->front().bytes == bytes);
    return 0;
}

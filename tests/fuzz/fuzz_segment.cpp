// SPDX-License-Identifier: Apache-2.0
// A file of entries, at five depths; the first byte says which: 0 as it lies at a store, 1 the payload under
// a right signature, 2 what the cipher holds, 3 the columns, 4 a Zstandard frame.
#include "fuzz.hpp"
#include "sync/columns.hpp"
#include "sync/squeeze.hpp"
#include "sync_bytes.hpp"

namespace {

using namespace snugwalk;

constexpr std::size_t frameLimit = 100'000;

void openAll(std::string_view bytes)
{
    const auto head = readSegmentHead(bytes);
    const auto entries = openSegment(bytes, fuzz::epochKey());
    if (!head)
        return;
    SNUG_ASSERT(head->facts.counter >= 1 && head->count >= 1 &&
                head->count <= static_cast<std::int64_t>(maxSegmentEntries));
    SNUG_ASSERT(head->facts.hash == blake2b(bytes));
    SNUG_ASSERT(!entries || static_cast<std::int64_t>(entries->size()) == head->count);
}

// Every entry given can be read again, and packed again into what gives the same ones.
void unpack(std::string_view packed)
{
    const auto entries = unpackEntries(packed);
    if (!entries) {
        SNUG_ASSERT(entries.error().code == Errc::Corrupt);
        return;
    }
    for (const IncomingEntry &incoming : *entries) {
        const auto entry = entryFromBytes(incoming.bytes);
        SNUG_ASSERT(entry && canonicalBytes(*entry) == incoming.bytes && entry->id == incoming.entry.id);
        SNUG_ASSERT(entry->hlc >= 0 && entry->hlc <= lastHlc && entry->prev.size() <= maxPrev);
    }
    const auto again = packEntries(*entries);
    SNUG_ASSERT(again && unpackEntries(*again)->size() == entries->size());
}

void inflate(std::string_view frame)
{
    const auto plain = unsqueeze(frame, frameLimit);
    if (!plain) {
        SNUG_ASSERT(plain.error().code == Errc::Corrupt || plain.error().code == Errc::OutOfRange);
        return;
    }
    SNUG_ASSERT(plain->size() <= frameLimit);
    SNUG_ASSERT(unsqueeze(squeeze(*plain), frameLimit).value() == *plain);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    if (size == 0)
        return 0;
    const std::string_view rest = asText(data, size).substr(1);
    switch (data[0] % 5) {
    case 0:
        openAll(rest);
        break;
    case 1:
        openAll(fuzz::signedPayload(rest));
        break;
    case 2:
        openAll(fuzz::segmentAround(rest, 200, 1));
        openAll(fuzz::segmentAround(squeeze(rest), static_cast<std::int64_t>(rest.size()), 1));
        break;
    case 3:
        unpack(rest);
        break;
    default:
        inflate(rest);
    }
    return 0;
}

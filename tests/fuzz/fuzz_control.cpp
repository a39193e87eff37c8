// SPDX-License-Identifier: Apache-2.0
// Control records; the first byte says how: 0 as they lie at a store, 1 the payload under a right signature,
// 2 several bodies, signed by three devices that know of each other's records, and what follows of them all.
#include <algorithm>
#include <array>

#include "fuzz.hpp"
#include "sync/members.hpp"
#include "sync_bytes.hpp"

namespace {

using namespace snugwalk;

constexpr const char *actions[] = {"found", "enroll", "revoke", "epoch", "adopt", "of tomorrow"};
constexpr std::size_t maxRecords = 12;

const DeviceKey &signerOf(std::size_t which)
{
    static const std::array keys{fuzz::keyOf('k'), fuzz::keyOf('a'), fuzz::keyOf('b')};
    return keys.at(which % keys.size());
}

SignedControl founded()
{
    ControlRecord root;
    root.space = fuzz::rigId();
    root.counter = 1;
    root.action = "found";
    root.body = Value::Map{{"seal", Bytes{std::string(32, 's')}},
                           {"name", "first"},
                           {"epoch", Bytes{std::string(8, '1')}},
                           {"sealed", Value::List{}}};
    return signControl(signerOf(0), root);
}

void readOne(std::string_view bytes)
{
    const auto record = readControl(bytes);
    const auto kept = readKeptControl(bytes);
    if (!record)
        return;
    SNUG_ASSERT(kept && kept->hash == record->hash && record->hash == blake2b(bytes));
    SNUG_ASSERT(record->counter >= 1 && record->seen.size() <= maxSeen);
    const RigMembers members = membersFrom(record->space, record->hash, {*record});
    SNUG_ASSERT(members.effective.size() + members.idle.size() == 1);
}

std::string told(const RigMembers &members)
{
    std::string text;
    for (const auto &[device, member] : members.members) {
        text += device.text() + member.name + member.reason;
        for (const RoleSpan &span : member.standings)
            text += span.role ? slugOf(*span.role) : "revoked";
    }
    for (const ControlRecord &record : members.effective)
        text += record.hash.text();
    return text + std::to_string(members.adopted.size()) + std::to_string(members.epochs.size());
}

// A record: signer, action, how many of the latest it has not seen, size of the body, body.
void readSeveral(std::string_view rest)
{
    static const SignedControl root = founded();
    std::vector<ControlRecord> records{root.record};
    while (rest.size() >= 4 && records.size() < maxRecords) {
        const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(rest[at]); };
        const std::size_t size = std::min<std::size_t>(byte(3), rest.size() - 4);
        const auto body = decodeCbor(rest.substr(4, size));
        ControlRecord record;
        record.space = fuzz::rigId();
        record.action = actions[byte(1) % std::size(actions)];
        record.body = body && body->isMap() ? *body : Value(Value::Map{});
        const DeviceKey &signer = signerOf(byte(0));
        record.counter = 1;
        for (const ControlRecord &known : records) {
            if (known.signer == signer.deviceId()) {
                record.counter = known.counter + 1;
                record.prev = known.hash;
            }
        }
        const std::size_t unseen = byte(2) % records.size();
        for (std::size_t i = 0; i + unseen < records.size(); ++i)
            record.seen.push_back(records[i].hash);
        const SignedControl made = signControl(signer, record);
        const auto back = readControl(made.bytes);
        SNUG_ASSERT(back && back->hash == made.record.hash);
        if (std::none_of(records.begin(), records.end(),
                         [&](const ControlRecord &known) { return known.hash == back->hash; }))
            records.push_back(*back);
        rest.remove_prefix(4 + size);
    }
    const RigMembers members = membersFrom(fuzz::rigId(), root.record.hash, records);
    SNUG_ASSERT(members.owners() >= 1);
    SNUG_ASSERT(members.effective.size() + members.idle.size() == records.size());
    std::reverse(records.begin(), records.end());
    SNUG_ASSERT(told(membersFrom(fuzz::rigId(), root.record.hash, records)) == told(members));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    if (size == 0)
        return 0;
    const std::string_view rest = asText(data, size).substr(1);
    switch (data[0] % 3) {
    case 0:
        readOne(rest);
        break;
    case 1:
        readOne(signed1(signerOf(0), "snugwalk control 1", rest));
        break;
    default:
        readSeveral(rest);
    }
    return 0;
}

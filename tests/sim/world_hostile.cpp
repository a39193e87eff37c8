// SPDX-License-Identifier: Apache-2.0
// Who is not let in, a member who means harm, and a program that is newer than the others.
#include "base/text.hpp"
#include "sync/envelope.hpp"
#include "sync/segment.hpp"
#include "world.hpp"

namespace snugwalk::sim {
namespace {

constexpr std::int64_t start = 1'773'000'000'000; // 2026

Entry made(const EntryId &id, const Id &entity, const std::string &token)
{
    Entry entry;
    entry.id = id;
    entry.hlc = start << 16;
    entry.act = Id::fromBytes(std::string(16, 'a'));
    entry.entity = entity;
    entry.type = "mark";
    entry.fields = {{"token", token}, {"state", "pass"}};
    entry.at = {fromMillis(start), ZoneOffset{0}};
    return entry;
}

} // namespace

void World::leave(const std::string &kind, const std::string &folder, const Hash &hash,
                  const std::string &bytes)
{
    static_cast<void>(m_stores[m_dice.below(2)].publish(
        rigFolder(m_rig) + "/" + folder + "/000000000001-" + hash.text().substr(0, 20) + "." + kind, bytes));
}

// Nobody enrolled it: it signs rightly, with its own key, into this rig's folder.
void World::stranger()
{
    ++counts.strangers;
    const Keys keys(DeviceKey::fromSeed(blake2b("stranger " + std::to_string(m_dice.below(3))).view()));
    const Secret key = Secret::random();
    StreamId stream;
    stream.device = keys.device.deviceId();
    const Entry entry = made({stream, 1}, m_things[0], "stranger");
    const auto sealed = sealSegment(keys.device, key, {{}, m_rig, stream, 1, {}},
                                    {{entry, canonicalBytes(entry)}}, {fromMillis(start), ZoneOffset{0}});
    MemoryStore &store = m_stores[m_dice.below(2)];
    const std::string folder = rigFolder(m_rig) + "/s/" + toHex(stream.bytes());
    static_cast<void>(store.publish(
        folder + "/000000000001-" + sealed->facts.hash.text().substr(0, 20) + ".seg", sealed->bytes));
    // it enrolls itself as an owner, and pretends to be the root
    ControlRecord record;
    record.space = m_rig;
    record.counter = 1;
    record.at = {fromMillis(start), ZoneOffset{0}};
    record.action = m_dice.oneIn(2) ? "found" : "enroll";
    record.body = Value::Map{{"key", Bytes{keys.device.publicKey()}},
                             {"seal", Bytes{keys.pair.publicKey()}},
                             {"name", "stranger"},
                             {"role", "owner"},
                             {"epoch", Bytes{epochName(key)}}};
    const SignedControl made = signControl(keys.device, record);
    static_cast<void>(store.publish(rigFolder(m_rig) + "/c/" + made.record.signer.text() + "/000000000001-" +
                                        made.record.hash.text().substr(0, 20) + ".ctl",
                                    made.bytes));
}

// A member signs, in a stream of its own, entries under the names of what another device wrote or will write.
void World::forge(std::size_t who)
{
    for (std::size_t i = 0; i < m_people.size(); ++i, who = (who + 1) % m_people.size()) { // the next who can
        if (m_people[who].enrolled && m_people[who].role != SyncRole::Owner)
            break;
    }
    Device &device = *m_people[who].device;
    if (m_people[who].enrolled && m_people[who].role != SyncRole::Owner) { // keys come by meeting
        meet(0, 0, false);
        meet(who, 0, false);
    }
    const auto members = membersOf(device.book(), m_rig);
    const RigKeys open = members ? openKeys(*members, device.keys) : RigKeys{};
    if (open.latest.empty() || m_people[who].role == SyncRole::Owner)
        return;
    const std::size_t victim = (who + 1 + m_dice.below(m_people.size() - 1)) % m_people.size();
    StreamId stream;
    stream.device = device.keys.device.deviceId();
    const Id fresh = device.ids.next();
    std::copy_n(fresh.bytes.begin(), stream.incarnation.size(), stream.incarnation.begin());
    std::vector<IncomingEntry> entries;
    for (std::int64_t seq = 1; seq <= 12; ++seq) {
        Entry entry = made({m_people[victim].device->book().stream(), seq},
                           m_things[m_dice.below(m_things.size())], "forged");
        entry.hlc += static_cast<std::int64_t>(m_dice.below(1000)); // other bytes, another hash
        entries.push_back({entry, canonicalBytes(entry)});
    }
    const auto sealed = sealSegment(device.keys.device, open.all.at(open.latest), {{}, m_rig, stream, 1, {}},
                                    entries, {fromMillis(start), ZoneOffset{0}});
    leave("seg", "s/" + toHex(stream.bytes()), sealed->facts.hash, sealed->bytes);
    ++counts.forged;
}

// What only a newer program can open: the others keep it, and carry it on byte for byte.
void World::tomorrow(std::size_t who)
{
    Person &person = m_people[who];
    if (!person.enrolled)
        return;
    Device &device = *person.device;
    StreamId stream;
    stream.device = device.keys.device.deviceId();
    const Id fresh = device.ids.next();
    std::copy_n(fresh.bytes.begin(), stream.incarnation.size(), stream.incarnation.begin());
    const std::string bytes = signed1(device.keys.device, "snugwalk segment 1",
                                      encodeCbor(Value::Map{{"v", 2},
                                                            {"reader", 2},
                                                            {"space", Bytes{std::string(m_rig.view())}},
                                                            {"stream", Bytes{stream.bytes()}},
                                                            {"key", Bytes{device.keys.device.publicKey()}},
                                                            {"counter", 1},
                                                            {"count", 1},
                                                            {"prev", Bytes{std::string(32, '\0')}},
                                                            {"at", "2036-03-14T09:00:00+13:00"},
                                                            {"epoch", Bytes{std::string(8, 't')}},
                                                            {"nonce", Bytes{std::string(24, 'n')}},
                                                            {"plain", 10},
                                                            {"cipher", Bytes{"something of tomorrow"}},
                                                            {"unknown", Value::List{1, 2.5, "three"}}}));
    const Hash hash = blake2b(bytes);
    leave("seg", "s/" + toHex(stream.bytes()), hash, bytes);
    m_tomorrows.insert(hash);
    ControlRecord record;
    record.space = m_rig;
    record.counter = 1;
    record.at = {fromMillis(start), ZoneOffset{0}};
    record.action = "action of tomorrow " + std::to_string(m_dice.below(1000));
    record.body = Value::Map{{"whom", "anybody"}};
    const SignedControl control = signControl(device.keys.device, record);
    leave("ctl", "c/" + control.record.signer.text(), control.record.hash, control.bytes);
    m_tomorrows.insert(control.record.hash);
    ++counts.tomorrows;
}

// Where one device has it, all have it, with the very same bytes.
void World::judgeTomorrows()
{
    std::map<Hash, std::size_t> holders;
    std::size_t devices = 0;
    for (Person &person : m_people) {
        if (!person.enrolled)
            continue;
        ++devices;
        for (const char *sql : {"SELECT bytes FROM segment", "SELECT bytes FROM control"}) {
            sqlite::Statement rows = person.device->book().db().prepare(sql).value();
            while (rows.step().value()) {
                const Hash hash = blake2b(rows.bytes(0));
                if (m_tomorrows.count(hash) > 0)
                    ++holders[hash];
            }
        }
    }
    for (const auto &[hash, count] : holders) {
        if (count != devices)
            wrong("what a newer program wrote is on " + std::to_string(count) + " of " +
                  std::to_string(devices) + " devices");
    }
}

} // namespace snugwalk::sim

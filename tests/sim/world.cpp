// SPDX-License-Identifier: Apache-2.0
// What people and machines do in a schedule.
#include "world.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "logbook/acts.hpp"
#include "logbook/conflicts.hpp"
#include "sync/blob.hpp"

namespace snugwalk::sim {
namespace {

constexpr std::int64_t year = 31'557'600'000;
constexpr std::int64_t start = 1'773'000'000'000; // 2026
constexpr const char *types[] = {"mark", "mark", "finding", "trip", "acceptance", "gizmo_of_tomorrow"};
constexpr const char *states[] = {"pass", "attention", "could_not_look", "not_fitted", "state of tomorrow"};

} // namespace

void Counts::add(const Counts &o)
{
    acts += o.acts, exchanges += o.exchanges, cutOff += o.cutOff, crashes += o.crashes;
    revocations += o.revocations, forks += o.forks, aside += o.aside, photos += o.photos;
    conflicts += o.conflicts, adopted += o.adopted, damaged += o.damaged, strangers += o.strangers,
        forged += o.forged, tomorrows += o.tomorrows;
}

World::World(const std::string &folder, const std::string &empty, std::uint64_t seed)
    : m_folder(folder), m_empty(empty), m_seed(seed), m_dice(seed)
{}

void World::begin()
{
    // mostly few devices: 3 to 8
    const std::size_t count = 3 + (m_dice.oneIn(3) ? m_dice.below(6) : m_dice.below(2));
    for (std::size_t i = 0; i < count; ++i) {
        const std::int64_t skew =
            m_dice.oneIn(3) ? m_dice.between(-30, 80) * year : m_dice.between(0, 7200'000);
        Person person;
        person.device = std::make_unique<Device>(
            m_folder, m_empty, std::to_string(m_seed) + "-" + std::to_string(i), start + skew);
        m_people.push_back(std::move(person));
    }
    CountingIds ids("things " + std::to_string(m_seed));
    m_rig = ids.next();
    for (int i = 0; i < 5; ++i)
        m_things.push_back(ids.next());
    Device &founder = *m_people[0].device;
    Act act;
    act.by = "founder";
    act.changes = {{m_rig, "rig", {{"name", "rig"}}}};
    for (const Id &thing : m_things)
        act.changes.push_back(
            {thing, types[static_cast<std::size_t>(&thing - m_things.data()) % 3], {{"rig", m_rig.text()}}});
    SNUG_ASSERT(founder.book().record(act).has_value());
    SNUG_ASSERT(shareRig(founder.book(), founder.keys, m_rig).has_value());
    m_people[0].enrolled = true;
    m_people[0].role = SyncRole::Owner;
    for (std::size_t i = 1; i < count; ++i) {
        if (!m_dice.oneIn(4))
            enroll(i);
    }
}

void World::write(std::size_t who)
{
    Person &person = m_people[who];
    Device &device = *person.device;
    device.clock.advance(std::chrono::milliseconds(m_dice.oneIn(10) ? m_dice.between(-year, year)
                                                                    : m_dice.between(0, 100'000)));
    const std::string token = "token " + std::to_string(++m_tokens);
    const std::string type = types[m_dice.below(std::size(types))];
    // what everybody writes over, or a thing of one's own; the type of what is there stays
    const bool isShared = m_dice.oneIn(2) && type != "acceptance";
    const std::size_t place = m_dice.below(m_things.size());
    Act act;
    act.by = "person " + std::to_string(who);
    EntityChange change;
    change.entity = isShared ? m_things[place] : device.book().newId();
    change.type = isShared ? types[place % 3] : type;
    change.fields = {{"token", token}};
    if (!isShared || m_dice.oneIn(4))
        change.fields["rig"] = m_rig.text();
    if (m_dice.oneIn(2))
        change.fields["state"] = m_dice.oneIn(6) ? Value() : Value(states[m_dice.below(std::size(states))]);
    if (m_dice.oneIn(3))
        change.fields["note"] = "note " + std::to_string(m_dice.below(5));
    act.changes = {change};
    if (m_dice.oneIn(6)) // what is of another rig, in the same stream: gaps
        act.changes.insert(act.changes.begin(),
                           {device.book().newId(), "trip", {{"rig", device.book().newId().text()}}});
    const auto receipt = device.book().record(act);
    if (!receipt)
        return; // a crash was due at this commit: not acknowledged
    ++counts.acts;
    Written written{who, change.type, true, false, person.revoked};
    written.mustBeAside = person.revoked;
    m_written[token] = written;
}

void World::writePhoto(std::size_t who)
{
    Person &person = m_people[who];
    Device &device = *person.device;
    if (person.revoked)
        return;
    const std::string token = "token " + std::to_string(++m_tokens);
    const std::string bytes = smallPhoto(m_dice, m_dice.oneIn(40) ? chunkBytes + 5000 : 300);
    PhotoStore store(device.book().photoFolder());
    Photo photo;
    photo.rig = m_rig;
    photo.hash = blake2b(bytes).text();
    photo.mime = "image/jpeg";
    photo.caption = token;
    photo.added = device.clock.now();
    SNUG_ASSERT(store.keepOriginal(blake2b(bytes), bytes).has_value());
    SNUG_ASSERT(store.keepThumbnail(blake2b(bytes), smallPhoto(m_dice, 50)).has_value());
    if (!addPhoto(device.book(), photo, {"person", std::nullopt, std::nullopt}))
        return;
    ++counts.photos;
    m_written[token] = {who, "photo", true, false, false};
    m_photos[token] = blake2b(bytes);
}

void World::meet(std::size_t who, std::size_t store, bool faults, bool mend)
{
    Device &device = *m_people[who].device;
    const std::size_t fault = faults && m_dice.oneIn(2) ? 3 + m_dice.below(40) : 0;
    const std::size_t dies = faults && m_dice.oneIn(5) ? 1 + m_dice.below(40) : 0;
    if (faults && m_dice.oneIn(4))
        device.failCommitAfter(1 + static_cast<int>(m_dice.below(8)));
    FaultyStore place(m_stores[store], m_dice, fault, dies);
    ExchangeOptions options;
    options.originals = faults ? Originals::Wanted : Originals::All;
    options.mend = mend;
    const auto summary = exchange(device.book(), device.keys, place, options);
    ++counts.exchanges;
    if (!summary) {
        ++counts.cutOff;
        if (!faults)
            wrong("an exchange without faults failed: " + summary.error().what + ", " +
                  summary.error().where);
        if (m_dice.oneIn(2)) {
            device.reopen();
            ++counts.crashes;
        }
    } else {
        counts.damaged += summary->damaged;
        counts.forks += summary->forked ? 1 : 0;
    }
    device.failCommitAfter(0);
}

// A person copies some files from one store to the other.
void World::carry()
{
    MemoryStore &from = m_stores[m_dice.below(2)];
    MemoryStore &to = &from == &m_stores[0] ? m_stores[1] : m_stores[0];
    for (const auto &[name, bytes] : from.files) {
        if (m_dice.oneIn(3))
            static_cast<void>(
                to.publish(name, m_dice.oneIn(20) ? bytes.substr(0, m_dice.below(bytes.size())) : bytes));
    }
}

void World::enroll(std::size_t who)
{
    Person &person = m_people[who];
    if (person.enrolled || person.revoked)
        return;
    Device &owner = *m_people[0].device;
    Device &device = *person.device;
    person.role = static_cast<SyncRole>(m_dice.below(4));
    Hash root = sharedRigs(owner.book()).value().front().second;
    SNUG_ASSERT(joinRig(device.book(), m_rig, root).has_value());
    SNUG_ASSERT(enrollDevice(owner.book(), owner.keys, m_rig,
                             {device.keys.device.publicKey(), device.keys.pair.publicKey(), device.name,
                              person.role, ""})
                    .has_value());
    person.enrolled = true;
}

void World::revoke(std::size_t who)
{
    Person &person = m_people[who];
    if (!person.enrolled || person.revoked || who == 0)
        return;
    Device &owner = *m_people[0].device;
    const std::set<std::string> arrived = tokensIn(owner, false);
    SNUG_ASSERT(revokeDevice(owner.book(), owner.keys, m_rig, person.device->keys.device.deviceId(), "lost")
                    .has_value());
    person.revoked = true;
    ++counts.revocations;
    for (auto &[token, written] : m_written) {
        if (written.device != who || arrived.count(token) > 0)
            continue;
        written.mustBeAside = true; // it may still arrive, and be shown; it never counts
        written.required = false;
        m_photos.erase(token);
    }
    // a file after a gap is beyond the cut although it arrived
    for (const SetAside &aside : asideOf(owner.book(), m_rig).value()) {
        const auto found = m_written.find(tokenOf(aside.entry));
        if (found != m_written.end() && found->second.device == who)
            found->second.maybeAside = true;
    }
}

void World::adopt()
{
    Device &owner = *m_people[0].device;
    const auto aside = asideOf(owner.book(), m_rig).value();
    if (aside.empty())
        return;
    const Entry &entry = aside[m_dice.below(aside.size())].entry;
    SNUG_ASSERT(adoptEntries(owner.book(), owner.keys, m_rig, {entry.id}).has_value());
    const auto found = m_written.find(tokenOf(entry));
    if (found != m_written.end())
        found->second.maybeAside = true;
    ++counts.adopted;
}

// What was in the copy or lies in a store is not lost; the rest a restored backup never had.
void World::restore(std::size_t who)
{
    Person &person = m_people[who];
    Device &device = *person.device;
    if (who == 0 || !device.hasCopy()) {
        if (who != 0)
            device.keepCopy();
        return;
    }
    const std::set<std::string> before = tokensIn(device, false);
    std::set<std::string> elsewhere;
    for (std::size_t i = 0; i < m_people.size(); ++i) {
        if (i != who)
            elsewhere.merge(tokensIn(*m_people[i].device, false));
    }
    device.restoreCopy();
    if (person.enrolled) // the copy may be from before: whoever restores shows the code again
        SNUG_ASSERT(
            joinRig(device.book(), m_rig, sharedRigs(m_people[0].device->book()).value().front().second)
                .has_value());
    const std::set<std::string> after = tokensIn(device, false);
    for (const std::string &token : before) {
        const auto found = m_written.find(token);
        if (found != m_written.end() && found->second.device == who && after.count(token) == 0 &&
            elsewhere.count(token) == 0)
            found->second.required = false;
    }
    person.restored = true;
}

void World::step()
{
    const std::size_t who = m_dice.below(m_people.size());
    // each schedule has its own temper: one rare thing is common in it
    const std::size_t temper = m_seed % 5;
    const std::size_t what = m_dice.below(100);
    if (what < 15) {
        if (temper == 0)
            revoke(who);
        else if (temper == 1)
            restore(who);
        else if (temper == 2)
            adopt();
        else if (temper == 3)
            m_dice.oneIn(2) ? stranger() : forge(who);
        else
            m_dice.oneIn(2) ? tomorrow(who) : carry();
    } else if (what < 50)
        write(who);
    else if (what < 80)
        meet(who, m_dice.below(2), true);
    else if (what < 83)
        carry();
    else if (what < 90)
        enroll(who);
    else if (what < 93)
        writePhoto(who);
    else if (what < 95)
        revoke(who);
    else if (what < 97)
        adopt();
    else if (what < 98)
        restore(who);
    else if (what < 99)
        m_dice.oneIn(2) ? forge(who) : tomorrow(who);
    else
        stranger();
}

std::vector<std::string> World::run()
{
    begin();
    const std::size_t steps = 15 + m_dice.below(25);
    for (std::size_t i = 0; i < steps; ++i)
        step();
    settle();
    judge();
    return m_wrong;
}

} // namespace snugwalk::sim

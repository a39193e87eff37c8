// SPDX-License-Identifier: Apache-2.0
// Everybody meets, and what must hold is asked of each.
#include <algorithm>

#include "logbook/check.hpp"
#include "logbook/conflicts.hpp"
#include "logbook/entry_rows.hpp"
#include "world.hpp"

namespace snugwalk::sim {
using sqlite::Statement;

std::string tokenOf(const Entry &entry)
{
    const Value fields(entry.fields);
    return fields[entry.type == "photo" ? "caption" : "token"].asString().value_or("");
}

std::set<std::string> World::tokensIn(Device &device, bool standing)
{
    std::set<std::string> tokens;
    const std::string sql =
        std::string("SELECT bytes FROM entry") +
        (standing ? " WHERE NOT EXISTS(SELECT 1 FROM aside WHERE aside.stream = entry.stream "
                    "AND aside.seq = entry.seq)"
                  : "");
    Statement rows = device.book().db().prepare(sql).value();
    while (rows.step().value())
        tokens.insert(tokenOf(entryFromBytes(rows.bytes(0)).value()));
    Statement twins = device.book().db().prepare("SELECT bytes FROM twin").value();
    while (!standing && twins.step().value())
        tokens.insert(tokenOf(entryFromBytes(twins.bytes(0)).value()));
    tokens.erase("");
    return tokens;
}

// The projection of what is shared; what else a device keeps is its own.
std::string World::sharedProjection(Device &device)
{
    Hasher hasher;
    const std::string shared = "IN (SELECT entity FROM entry WHERE segment IS NOT NULL) ";
    for (const std::string &sql :
         {"SELECT entity, field, name, seq, hlc, value, type FROM head JOIN stream ON stream.id = stream "
          "WHERE "
          "entity " +
              shared + "ORDER BY entity, field, name, seq",
          "SELECT entity, field, name, seq FROM dead JOIN stream ON stream.id = stream WHERE entity " +
              shared + "ORDER BY entity, field, name, seq",
          "SELECT id, type, rig, parent, key, sort, doc FROM thing WHERE id " + shared + "ORDER BY id"}) {
        Statement rows = device.book().db().prepare(sql).value();
        SNUG_ASSERT(hashRows(rows, hasher).has_value());
    }
    return hasher.finish().text();
}

void World::settle()
{
    // somebody carries all of one store to the other; from now on all meet there
    for (const auto &[name, bytes] : m_stores[1].files)
        static_cast<void>(m_stores[0].publish(name, bytes));
    std::vector<std::string> before;
    for (int round = 0; round < 8; ++round) {
        std::vector<std::string> now;
        for (std::size_t i = 0; i < m_people.size(); ++i) {
            if (!m_people[i].enrolled)
                continue;
            meet(i, 0, false, round == 0);
            now.push_back(sharedProjection(*m_people[i].device));
        }
        now.push_back(std::to_string(m_stores[0].files.size()));
        if (now == before)
            return;
        before = now;
    }
    wrong("eight rounds without faults, and still something new");
}

void World::judge()
{
    judgeTomorrows();
    const std::string wanted = sharedProjection(*m_people[0].device);
    for (std::size_t i = 0; i < m_people.size(); ++i) {
        Person &person = m_people[i];
        if (!person.enrolled)
            continue;
        Device &device = *person.device;
        const std::string who = "device " + std::to_string(i) + ": ";
        const auto report = checkLogbook(device.book(), false).value();
        for (const std::string &fault : report.faults)
            wrong(who + fault);
        if (person.revoked)
            continue;
        if (sharedProjection(device) != wanted)
            wrong(who + "another projection");
        const std::set<std::string> all = tokensIn(device, false);
        const std::set<std::string> standing = tokensIn(device, true);
        for (const char *token : {"stranger", "forged"}) {
            if (standing.count(token) > 0)
                wrong(who + "an entry stands that is " + token);
        }
        for (const auto &[token, written] : m_written) {
            const Person &writer = m_people[written.device];
            if (!writer.enrolled)
                continue; // never belonged: its own logbook keeps it
            if (written.required && !writer.revoked && all.count(token) == 0)
                wrong(who + token + " by " + std::to_string(written.device) + " is missing");
            const bool owners = written.type == "acceptance";
            const bool aside = written.mustBeAside || writer.role == SyncRole::Viewer ||
                               (owners && writer.role != SyncRole::Owner);
            if (written.maybeAside || (writer.revoked && writer.restored))
                continue;
            if (aside && standing.count(token) > 0)
                wrong(who + token + " of a " + std::string(slugOf(writer.role)) + " stands");
            if (!aside && written.required && standing.count(token) == 0)
                wrong(who + token + " by " + std::to_string(written.device) + " was set aside");
        }
        const PhotoStore photos(device.book().photoFolder());
        for (const auto &[token, hash] : m_photos) {
            const Written &written = m_written.at(token);
            const Person &writer = m_people[written.device];
            if (writer.enrolled && !writer.revoked && writer.role != SyncRole::Viewer && written.required &&
                !photos.verify(hash))
                wrong(who + "the photo of " + token + " is missing");
        }
    }
    counts.aside += static_cast<std::int64_t>(asideOf(m_people[0].device->book(), m_rig).value().size());
    counts.conflicts +=
        static_cast<std::int64_t>(conflictsOf(m_people[0].device->book(), m_rig).value().size());
}

} // namespace snugwalk::sim

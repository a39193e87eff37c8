// SPDX-License-Identifier: Apache-2.0
// What stands of a thing, in memory between reading and writing it.
#include "logbook/projector.hpp"

#include <algorithm>
#include <tuple>

#include "base/cbor.hpp"

namespace snugwalk {

using sqlite::Statement;

namespace {

// A state of a newer version ranks worst: it is shown as needing a person.
int markRank(std::string_view value)
{
    if (value == cborNull)
        return 0;
    const std::string_view state = cborText(value).value_or("");
    if (state == "attention")
        return 4;
    if (state == "could_not_look")
        return 3;
    if (state == "pass")
        return 2;
    return state == "not_fitted" ? 1 : 5;
}

} // namespace

int rankOf(std::string_view value, bool isWorst)
{
    return isWorst ? markRank(value) : value == cborNull ? 0 : 1;
}

Status Projector::prepare()
{
    const auto keep = [this](std::optional<Statement> &slot, const char *sql) -> Status {
        if (slot)
            return done();
        Result<Statement> statement = m_db.prepare(sql);
        if (!statement)
            return statement.error();
        slot.emplace(std::move(*statement));
        return done();
    };
    SNUG_TRY(keep(m_readHeads, "SELECT field, stream, seq, hlc, value, type FROM head WHERE entity = ?"));
    SNUG_TRY(keep(m_readDead, "SELECT field, stream, seq FROM dead WHERE entity = ?"));
    SNUG_TRY(keep(m_dropHead, "DELETE FROM head WHERE entity = ? AND field = ? AND stream = ? AND seq = ?"));
    return keep(m_putDead, "INSERT OR IGNORE INTO dead VALUES(?, ?, ?, ?)");
}

Status Projector::apply(const std::vector<const StoredEntry *> &entries)
{
    SNUG_TRY(prepare());
    // in the order of the tables' keys, which lie together then
    std::vector<const StoredEntry *> ordered = entries;
    std::stable_sort(ordered.begin(), ordered.end(), [](const StoredEntry *a, const StoredEntry *b) {
        return a->entry.entity < b->entry.entity;
    });
    for (std::size_t i = 0; i < ordered.size();) {
        const Id &entity = ordered[i]->entry.entity;
        SNUG_TRY(load(entity));
        for (; i < ordered.size() && ordered[i]->entry.entity == entity; ++i)
            SNUG_TRY(add(*ordered[i]));
        SNUG_TRY(write(entity));
    }
    return done();
}

Status Projector::load(const Id &entity)
{
    m_heads.clear();
    m_dead.clear();
    m_gone.clear();
    m_freshDead.clear();
    m_readHeads->bindKeptBytes(1, entity.view());
    SNUG_TRY(m_readHeads->each([&] {
        m_heads.emplace_hint(
            m_heads.end(), Key{m_readHeads->text(0), m_readHeads->integer(1), m_readHeads->integer(2)},
            Standing{m_readHeads->integer(3), m_readHeads->bytes(4), m_readHeads->text(5), true});
        return done();
    }));
    m_readHeads->reset();
    m_readDead->bindKeptBytes(1, entity.view());
    SNUG_TRY(m_readDead->each([&] {
        m_dead.emplace_hint(m_dead.end(),
                            Key{m_readDead->text(0), m_readDead->integer(1), m_readDead->integer(2)});
        return done();
    }));
    m_readDead->reset();
    return done();
}

// A predecessor may arrive after its successor: it is remembered as dead either way.
Status Projector::add(const StoredEntry &stored)
{
    const Entry &entry = stored.entry;
    for (const EntryId &prev : entry.prev) {
        const auto row = rowOf(prev.stream);
        if (!row)
            return row.error();
        for (const auto &[field, value] : entry.fields) {
            Key key{field, *row, prev.seq};
            const auto head = m_heads.find(key);
            if (head != m_heads.end()) {
                if (head->second.isStored)
                    m_gone.push_back(key);
                m_heads.erase(head);
            }
            if (m_dead.insert(key).second)
                m_freshDead.push_back(std::move(key));
        }
    }
    for (const auto &[field, value] : entry.fields) {
        Key key{field, stored.streamRow, entry.id.seq};
        if (!m_dead.empty() && m_dead.count(key) > 0)
            continue; // its successor came first
        m_heads.insert_or_assign(std::move(key), Standing{entry.hlc, encodeCbor(value), entry.type, false});
    }
    return done();
}

Status Projector::write(const Id &entity)
{
    for (const Key &key : m_gone)
        SNUG_TRY(remove(*m_dropHead, entity, key));
    for (const Key &key : m_freshDead)
        SNUG_TRY(remove(*m_putDead, entity, key));
    SNUG_TRY(writeHeads(entity));
    return show(entity);
}

Status Projector::remove(Statement &statement, const Id &entity, const Key &key)
{
    statement.bindKeptBytes(1, entity.view());
    statement.bindKept(2, key.field);
    statement.bind(3, key.stream);
    statement.bind(4, key.seq);
    return statement.run();
}

// Several rows in one statement: it takes a third of the time of one each.
Status Projector::writeHeads(const Id &entity)
{
    std::vector<Standings::const_iterator> fresh;
    for (auto at = m_heads.cbegin(); at != m_heads.cend(); ++at) {
        if (!at->second.isStored)
            fresh.push_back(at);
    }
    for (std::size_t from = 0; from < fresh.size();) {
        const std::size_t count = std::min(fresh.size() - from, m_putHeads.size() - 1);
        std::optional<Statement> &slot = m_putHeads.at(count);
        if (!slot) {
            std::string sql = "INSERT OR REPLACE INTO head VALUES";
            for (std::size_t i = 0, at = 2; i < count; ++i, at += 6) {
                sql += i == 0 ? "(?1" : ",(?1";
                for (std::size_t column = 0; column < 6; ++column)
                    sql += ", ?" + std::to_string(at + column);
                sql += ')';
            }
            Result<Statement> statement = m_db.prepare(sql);
            if (!statement)
                return statement.error();
            slot.emplace(std::move(*statement));
        }
        slot->bindKeptBytes(1, entity.view());
        int at = 1;
        for (std::size_t i = 0; i < count; ++i, ++from) {
            const auto &[key, standing] = *fresh[from];
            slot->bindKept(++at, key.field);
            slot->bind(++at, key.stream);
            slot->bind(++at, key.seq);
            slot->bind(++at, standing.hlc);
            slot->bindKeptBytes(++at, standing.value);
            slot->bindKept(++at, standing.type);
        }
        SNUG_TRY(slot->run());
    }
    return done();
}

Result<Projector::Standings::const_iterator> Projector::shownOf(Standings::const_iterator from,
                                                                Standings::const_iterator to)
{
    if (std::next(from) == to)
        return from;
    const bool isWorst = from->first.field == "state" &&
                         std::any_of(from, to, [](const auto &item) { return item.second.type == "mark"; });
    auto best = from;
    StreamId bestName;
    for (auto at = from; at != to; ++at) {
        const auto name = nameOf(at->first.stream);
        if (!name)
            return name.error();
        const auto orderOf = [&](Standings::const_iterator head, const StreamId &stream) {
            return std::make_tuple(rankOf(head->second.value, isWorst), head->second.hlc, stream,
                                   head->first.seq);
        };
        if (at == from || orderOf(best, bestName) < orderOf(at, *name)) {
            best = at;
            bestName = *name;
        }
    }
    return best;
}

// The type is that of the latest entry whose value is shown, so that it too is the same in any order.
Status Projector::show(const Id &entity)
{
    std::vector<ShownField> fields;
    fields.reserve(m_heads.size());
    auto latest = m_heads.cend();
    for (auto from = m_heads.cbegin(); from != m_heads.cend();) {
        auto to = std::next(from);
        while (to != m_heads.cend() && to->first.field == from->first.field)
            ++to;
        const auto shown = shownOf(from, to);
        if (!shown)
            return shown.error();
        from = to;
        const auto &[key, standing] = **shown;
        if (standing.value == cborNull)
            continue;
        fields.push_back({key.field, standing.value});
        if (latest == m_heads.cend() || latest->second.hlc < standing.hlc) {
            latest = *shown;
        } else if (latest->second.hlc == standing.hlc) {
            const auto mine = nameOf(key.stream);
            const auto its = nameOf(latest->first.stream);
            if (!mine || !its)
                return mine ? its.error() : mine.error();
            if (std::tie(*its, latest->first.seq) < std::tie(*mine, key.seq))
                latest = *shown;
        }
    }
    return m_things.put(entity, latest == m_heads.cend() ? "" : latest->second.type, fields);
}

Result<std::int64_t> Projector::rowOf(const StreamId &stream)
{
    if (const auto known = m_rows.find(stream); known != m_rows.end())
        return known->second;
    const auto row = streamRowOrNew(m_db, stream);
    if (row)
        m_rows.emplace(stream, *row);
    return row;
}

Result<StreamId> Projector::nameOf(std::int64_t row)
{
    if (const auto known = m_names.find(row); known != m_names.end())
        return known->second;
    Result<Statement> find = m_db.prepare("SELECT name FROM stream WHERE id = ?");
    if (!find)
        return find.error();
    find->bind(1, row);
    const Result<bool> found = find->step();
    if (!found)
        return found.error();
    auto name = *found ? streamFromBytes(find->view(0))
                       : Result<StreamId>(Error{Errc::Corrupt, "a projected value of no stream", m_db.file(),
                                                "run `snugwalk check`"});
    if (name)
        m_names.emplace(row, *name);
    return name;
}

} // namespace snugwalk

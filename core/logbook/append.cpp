// SPDX-License-Identifier: Apache-2.0
// Appending: sequence number, clock, predecessors, chain hash, row, projection.
#include "logbook/append.hpp"

#include <algorithm>

namespace snugwalk {

using sqlite::Statement;

std::int64_t nextHlc(Instant physical, std::int64_t last)
{
    const std::int64_t wall = std::max<std::int64_t>(toMillis(physical), 0) << 16;
    return std::max(wall, last + 1);
}

Status Appender::readTail(Instant physical)
{
    Result<Statement> tail =
        m_db.prepare("SELECT seq, hash, hlc FROM entry WHERE stream = ? ORDER BY seq DESC LIMIT 1");
    if (!tail)
        return tail.error();
    tail->bind(1, m_row);
    const Result<bool> row = tail->step();
    if (!row)
        return row.error();
    if (*row) {
        m_seq = tail->integer(0);
        m_hash = Hash::fromBytes(tail->bytes(1)).value_or(Hash{});
        m_hlc = tail->integer(2);
    }
    // Another device's clock that is years ahead must not take ours along.
    Result<Statement> latest = m_db.prepare("SELECT max(hlc) FROM entry WHERE hlc <= ?");
    if (!latest)
        return latest.error();
    latest->bind(1, nextHlc(physical + believedAhead, 0));
    const Result<bool> any = latest->step();
    if (!any)
        return any.error();
    if (*any)
        m_hlc = std::max(m_hlc, latest->integer(0));
    return done();
}

Status Appender::store(const StoredEntry &stored) { return insertEntry(m_db, stored, std::nullopt); }

Result<bool> EntryInsert::putIfAbsent(const StoredEntry &stored, std::optional<std::int64_t> segment)
{
    if (!m_insert) {
        Result<Statement> insert = m_db.prepare(
            "INSERT INTO entry(stream, seq, hlc, entity, act, scope, undoes, bytes, hash, segment) "
            "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT(stream, seq) DO NOTHING");
        if (!insert)
            return insert.error();
        m_insert.emplace(std::move(*insert));
    }
    const Entry &entry = stored.entry;
    const auto bindId = [this](int at, const Id &id) {
        if (id.isNull())
            m_insert->bindNull(at);
        else
            m_insert->bindKeptBytes(at, id.view());
    };
    m_insert->bind(1, stored.streamRow);
    m_insert->bind(2, entry.id.seq);
    m_insert->bind(3, entry.hlc);
    bindId(4, entry.entity);
    bindId(5, entry.act);
    bindId(6, entry.scope);
    bindId(7, entry.undoes);
    m_insert->bindKeptBytes(8, stored.bytes);
    m_insert->bindKeptBytes(9, stored.hash.view());
    if (segment)
        m_insert->bind(10, *segment);
    else
        m_insert->bindNull(10);
    SNUG_TRY(m_insert->run());
    return m_db.changes() > 0;
}

Status insertEntry(sqlite::Connection &db, const StoredEntry &stored, std::optional<std::int64_t> segment)
{
    const Result<bool> isPut = EntryInsert(db).putIfAbsent(stored, segment);
    if (isPut && !*isPut)
        return Error{Errc::Conflict, "there is an entry of this number already",
                     stored.entry.id.stream.text(), "run `snugwalk check`"};
    return isPut ? done() : Status(isPut.error());
}

namespace {

void addOnce(std::vector<EntryId> &list, const EntryId &id)
{
    if (std::find(list.begin(), list.end(), id) == list.end())
        list.push_back(id);
}

bool isNews(const std::vector<Head> &heads, const Value &value)
{
    return heads.size() == 1 ? heads.front().value != value : !heads.empty() || !value.isNull();
}

// Sets the entry's fields and predecessors. An undo is written also when it changes nothing, since it
// says that its act is taken back.
void fill(Entry &entry, const EntityChange &change, const HeadsByField &standing)
{
    static const std::vector<Head> none;
    for (const auto &[field, value] : change.fields) {
        const auto found = standing.find(field);
        const std::vector<Head> &heads = found == standing.end() ? none : found->second;
        if (entry.undoes.isNull() && !isNews(heads, value))
            continue;
        entry.fields[field] = value;
        if (change.replaces)
            continue;
        for (const Head &head : heads)
            addOnce(entry.prev, head.id);
    }
    if (change.replaces)
        entry.prev = *change.replaces;
    std::sort(entry.prev.begin(), entry.prev.end());
}

// What cannot be read back is never written: one such entry would stop every reader after it.
Status checkReadable(const Entry &entry, const std::string &bytes)
{
    SNUG_TRY(checkEncodable(Value(entry.fields)));
    const Result<Entry> back = entryFromBytes(bytes);
    if (back && back->where == entry.where && back->at == entry.at)
        return done();
    return Error{Errc::InvalidInput, "this cannot be kept: " + (back ? "time or place" : back.error().what),
                 entry.type, "check text, time and place"};
}

} // namespace

Result<bool> Appender::appendChange(const Act &act, const EntityChange &change, Entry entry)
{
    SNUG_ASSERT(!change.entity.isNull() && !change.type.empty());
    const auto heads = headsOf(m_db, change.entity);
    if (!heads)
        return heads.error();
    entry.entity = change.entity;
    entry.type = change.type;
    entry.scope = act.scope;
    entry.undoes = act.undoes;
    entry.by = act.by;
    entry.where = act.where;
    fill(entry, change, *heads);
    if (entry.fields.empty() && entry.undoes.isNull())
        return false;

    if (m_act.isNull())
        m_act = actIdOf(entry);
    entry.act = m_act;
    StoredEntry stored{m_row, std::move(entry), {}, {}};
    stored.bytes = canonicalBytes(stored.entry);
    stored.hash = chainHash(m_hash, stored.bytes);
    SNUG_TRY(checkReadable(stored.entry, stored.bytes));
    SNUG_TRY(store(stored));
    SNUG_TRY(project(m_db, stored));
    m_seq = stored.entry.id.seq;
    m_hlc = stored.entry.hlc;
    m_hash = stored.hash;
    return true;
}

Result<Receipt> Appender::append(const Act &act, const LocalTime &at, Instant physical)
{
    SNUG_TRY(readTail(physical));
    m_act = Id{};
    Receipt receipt;
    for (const EntityChange &change : act.changes) {
        Entry entry;
        entry.id = {m_stream, m_seq + 1};
        entry.hlc = nextHlc(physical, m_hlc);
        entry.at = at;
        const Result<bool> written = appendChange(act, change, std::move(entry));
        if (!written)
            return written.error();
        receipt.entries += *written ? 1 : 0;
    }
    receipt.act = m_act;
    return receipt;
}

} // namespace snugwalk

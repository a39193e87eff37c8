// SPDX-License-Identifier: Apache-2.0
// Columns back to entries: what was not carried is made again, and every entry is one that can be read.
#include "sync/columns.hpp"

#include <algorithm>

#include "base/cbor.hpp"
#include "logbook/thing.hpp"
#include "sync/column_layout.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxGrown =
    std::size_t{64} * 1024 * 1024; // entries that share a long text may not grow beyond

Error broken(const char *what) { return {Errc::Corrupt, std::string("entries whose ") + what, "", ""}; }

class Unpacker {
public:
    Unpacker(const Value &v, bool &fine)
        : m_streams(cut(v["streams"], 24, fine)),
          m_texts(textsIn(v["texts"], fine)),
          m_ids(v["ids"].asBytes().value_or(""), fine)
    {
        m_shapes = TableReader<ReadShape>(shapesIn(v["shapes"], fine));
        fine = fine && v["ids"].asBytes().has_value() && v["values"].isList();
        for (const Value &values : v["values"].list()) {
            const auto *bytes = std::get_if<Bytes>(&values.variant());
            fine = fine && bytes != nullptr;
            m_values.emplace_back(bytes == nullptr ? std::string_view() : std::string_view(bytes->data));
        }
        for (const char *name : columnNames) {
            const auto *bytes = std::get_if<Bytes>(&v["columns"][name].variant());
            fine = fine && bytes != nullptr;
            m_columns.emplace_back(bytes == nullptr ? std::string_view() : std::string_view(bytes->data));
        }
    }

    Result<IncomingEntry> next()
    {
        IncomingEntry incoming;
        Entry &entry = incoming.entry;
        const std::string *stream = m_streams.get(m_columns[StreamColumn].next());
        if (stream == nullptr)
            return broken("streams cannot be told");
        entry.id.stream = streamFromBytes(*stream).value();
        std::int64_t &lastSeq = m_last.seq[*stream];
        entry.id.seq = lastSeq = plus(lastSeq, m_columns[SeqColumn].nextSigned());
        m_last.millis = plus(m_last.millis, m_columns[HlcColumn].nextSigned());
        const std::uint64_t tick = m_columns[TickColumn].next();
        if (m_last.millis !=
                millisOf(static_cast<std::int64_t>(static_cast<std::uint64_t>(m_last.millis) << 16U)) ||
            tick > static_cast<std::uint64_t>(tickMask) || entry.id.seq < 1)
            return broken("numbers cannot be");
        entry.hlc = static_cast<std::int64_t>(static_cast<std::uint64_t>(m_last.millis) << 16U | tick);
        SNUG_TRY(readTexts(entry));
        if (!readId(ScopeColumn, entry.scope) || !readId(UndoesColumn, entry.undoes))
            return broken("ids cannot be told");
        SNUG_TRY(readFields(entry));
        if (!readEntity(entry) || !readAct(entry))
            return broken("ids cannot be told");
        SNUG_TRY(readPrev(entry));
        incoming.bytes = canonicalBytes(entry);
        m_grown += incoming.bytes.size();
        if (m_grown > maxGrown)
            return broken("texts are repeated beyond the limit");
        if (!entry.where)
            return incoming;
        const Result<Entry> back = entryFromBytes(incoming.bytes);
        if (!back || back->where != entry.where)
            return broken("place could not be read again");
        return incoming;
    }

    [[nodiscard]] bool isDone() const
    {
        return m_streams.isDone() && m_ids.isDone() && m_texts.isDone() && m_shapes.isDone() &&
               m_placed == m_values.size() &&
               std::all_of(m_values.begin(), m_values.end(),
                           [](std::string_view rest) { return rest.empty(); }) &&
               std::all_of(m_columns.begin(), m_columns.end(),
                           [](const VarintReader &column) { return column.isDone(); });
    }

private:
    Status readTexts(Entry &entry)
    {
        const std::string *type = m_texts.get(m_columns[TypeColumn].next());
        const std::string *by = m_texts.get(m_columns[ByColumn].next());
        const std::int64_t at = plus(m_last.millis, m_columns[AtColumn].nextSigned());
        const std::int64_t offset = m_columns[AtColumn].nextSigned();
        // the years 0000 to 9999, which RFC 3339 can write
        if (entry.hlc < 0 || entry.hlc > lastHlc || type == nullptr || by == nullptr ||
            at < -62'167'132'800'000 || at > 253'402'214'400'000 || offset < -840 || offset > 840)
            return broken("texts or times cannot be");
        entry.type = *type;
        entry.by = *by;
        entry.at = {fromMillis(at), ZoneOffset{static_cast<int>(offset)}};
        return done();
    }

    bool readId(Column column, Id &id)
    {
        switch (m_columns[column].next()) {
        case NoId:
            break;
        case AsBefore:
            id = m_last.ids[column];
            if (id.isNull())
                return false;
            break;
        case Listed: {
            const auto listed = m_ids.get(m_columns[column].next());
            if (!listed || listed->isNull())
                return false;
            id = *listed;
            break;
        }
        default:
            return false;
        }
        m_last.ids[column] = id;
        return true;
    }

    Status readFields(Entry &entry)
    {
        ReadShape *shape = m_shapes.get(m_columns[ShapeColumn].next());
        if (shape == nullptr)
            return broken("fields cannot be told");
        std::string at;
        for (ReadField &item : *shape) {
            if (item.form != ValueForm::Carried) {
                if (at.empty())
                    at = formatLocal(entry.at);
                entry.fields.emplace_hint(entry.fields.end(), item.name, valueText(item.form, entry, at));
                continue;
            }
            // one deeper than in the entry, where the value stands within fields
            Result<Value> value = takeFrom(item);
            if (!value)
                return broken("values do not fit their fields");
            entry.fields.emplace_hint(entry.fields.end(), item.name, std::move(*value));
        }
        const std::uint64_t hasWhere = m_columns[WhereColumn].next();
        if (hasWhere == 0)
            return done();
        const Result<Value> where = takeFrom(m_where);
        if (hasWhere > 1 || !where || !readWhere(*where, entry.where))
            return broken("place is none");
        return done();
    }

    Result<Value> takeFrom(ReadField &item)
    {
        if (!item.place) {
            const auto [at, isNew] = m_places.emplace(item.name, m_placed);
            m_placed += isNew ? 1 : 0;
            item.place = at->second;
        }
        if (*item.place >= m_values.size())
            return broken("values are missing");
        return takeCbor(m_values[*item.place], 2);
    }

    bool readEntity(Entry &entry)
    {
        switch (m_columns[EntityColumn].next()) {
        case AsBefore:
            entry.entity = m_last.ids[EntityColumn];
            break;
        case Listed:
            entry.entity = m_ids.get(m_columns[EntityColumn].next()).value_or(Id{});
            break;
        case Derived:
            entry.entity = markOfFields(entry);
            break;
        case DerivedByText:
            if (const std::string *point = m_texts.get(m_columns[EntityColumn].next()))
                entry.entity = markId(entry.scope, *point);
            break;
        default:
            return false;
        }
        m_last.ids[EntityColumn] = entry.entity;
        return !entry.entity.isNull();
    }

    bool readAct(Entry &entry)
    {
        switch (m_columns[ActColumn].next()) {
        case AsBefore:
            entry.act = m_last.ids[ActColumn];
            break;
        case Listed:
            entry.act = m_ids.get(m_columns[ActColumn].next()).value_or(Id{});
            break;
        case Derived:
            entry.act = actIdOf(entry);
            break;
        default:
            return false;
        }
        m_last.ids[ActColumn] = entry.act;
        return !entry.act.isNull();
    }

    Status readPrev(Entry &entry)
    {
        const std::uint64_t count = m_columns[PrevColumn].next();
        if (count > maxPrev)
            return broken("predecessors are too many");
        for (std::uint64_t i = 0; i < count; ++i) {
            const std::string *stream = m_streams.get(m_columns[PrevColumn].next());
            const std::int64_t seq = minus(entry.id.seq, m_columns[PrevColumn].nextSigned());
            if (stream == nullptr || seq < 1)
                return broken("predecessors cannot be told");
            entry.prev.push_back({streamFromBytes(*stream).value(), seq});
        }
        return done();
    }

    TableReader<std::string> m_streams;
    TableReader<std::string> m_texts;
    TableReader<ReadShape> m_shapes{{}};
    IdReader m_ids;
    std::vector<std::string_view> m_values;
    std::map<std::string, std::size_t> m_places;
    std::size_t m_placed = 0;
    ReadField m_where{std::string(whereName), ValueForm::Carried, std::nullopt};
    std::vector<VarintReader> m_columns;
    std::size_t m_grown = 0;
    Last m_last;
};

} // namespace

Result<std::vector<IncomingEntry>> unpackEntries(std::string_view packed)
{
    const Result<Value> v = decodeCbor(packed);
    if (!v)
        return v.error();
    const auto count = (*v)["count"].asInt();
    if ((*v)["v"].asInt() != columnsVersion || !count || *count < 1 ||
        *count > static_cast<std::int64_t>(maxSegmentEntries))
        return broken("number or version cannot be");
    bool fine = true;
    Unpacker unpacker(*v, fine);
    if (!fine)
        return broken("tables cannot be read");
    std::vector<IncomingEntry> entries;
    for (std::int64_t i = 0; i < *count; ++i) {
        Result<IncomingEntry> entry = unpacker.next();
        if (!entry)
            return entry.error();
        entries.push_back(std::move(*entry));
    }
    if (!unpacker.isDone())
        return broken("columns are longer than their number");
    return entries;
}

} // namespace snugwalk

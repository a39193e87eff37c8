// SPDX-License-Identifier: Apache-2.0
// Entries to columns and back; what comes back is checked entry by entry.
#include "sync/columns.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "sync/varint.hpp"

namespace snugwalk {
namespace {

constexpr std::int64_t columnsVersion = 1;
constexpr std::size_t maxFields = 512;

using Shape = std::vector<std::string>; ///< field names of one entry

Value whereValue(const std::optional<GeoPoint> &where)
{
    if (!where)
        return {};
    return Value::List{where->latitude, where->longitude, where->altitude,
                       where->accuracy ? Value(where->accuracy->si()) : Value()};
}

bool readWhere(const Value &value, std::optional<GeoPoint> &where)
{
    if (value.isNull())
        return true;
    const Value::List &list = value.list();
    if (list.size() != 4 || !list[0].asDouble() || !list[1].asDouble())
        return false;
    where = GeoPoint{*list[0].asDouble(), *list[1].asDouble(), list[2].asDouble(), std::nullopt};
    if (const auto accuracy = list[3].asDouble())
        where->accuracy = Length::fromSi(*accuracy);
    return isValid(*where);
}

// Every column is a row of numbers; texts, ids and values stand beside them.
struct Columns {
    std::string numbers[12];
    std::string values;
    Table<std::string> streams;
    Table<std::string> ids;
    Table<std::string> texts;
    Table<Shape> shapes;
};
enum Column { Seq, Hlc, Stream, Act, Scope, Undoes, Entity, Text, At, ShapeOf, Prev, Sizes };
constexpr const char *columnNames[] = {"seq",    "hlc",  "stream", "act",   "scope", "undoes",
                                       "entity", "text", "at",     "shape", "prev",  "size"};

void putId(Columns &c, Column column, const Id &id)
{
    putVarint(c.numbers[column], id.isNull() ? 0 : 1);
    if (!id.isNull())
        c.ids.put(c.numbers[column], std::string(id.view()));
}

// The clock's own milliseconds, from which what the person's clock showed is a few away.
std::int64_t millisOf(std::int64_t hlc) { return hlc >> 16; }

struct Last {
    std::map<std::string, std::int64_t> seq; // by stream
    std::int64_t hlc = 0;
};

std::int64_t minus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) - static_cast<std::uint64_t>(b));
}

std::int64_t plus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
}

void put(Columns &c, const Entry &entry, Last &last)
{
    const std::string stream = entry.id.stream.bytes();
    c.streams.put(c.numbers[Stream], stream);
    putSigned(c.numbers[Seq], minus(entry.id.seq, last.seq[stream]));
    putSigned(c.numbers[Hlc], minus(entry.hlc, last.hlc));
    last.seq[stream] = entry.id.seq;
    last.hlc = entry.hlc;
    putId(c, Act, entry.act);
    putId(c, Scope, entry.scope);
    putId(c, Undoes, entry.undoes);
    putId(c, Entity, entry.entity);
    c.texts.put(c.numbers[Text], entry.type);
    c.texts.put(c.numbers[Text], entry.by);
    putSigned(c.numbers[At], minus(toMillis(entry.at.instant), millisOf(entry.hlc)));
    putSigned(c.numbers[At], entry.at.offset.minutes);
    Shape shape;
    Value::List values;
    for (const auto &[field, value] : entry.fields) {
        shape.push_back(field);
        values.push_back(value);
    }
    c.shapes.put(c.numbers[ShapeOf], shape);
    if (entry.where)
        values.push_back(whereValue(entry.where));
    const std::string encoded = encodeCbor(Value(values));
    putVarint(c.numbers[Sizes], encoded.size() * 2 + (entry.where ? 1 : 0));
    c.values += encoded;
    putVarint(c.numbers[Prev], entry.prev.size());
    for (const EntryId &prev : entry.prev) {
        c.streams.put(c.numbers[Prev], prev.stream.bytes());
        putSigned(c.numbers[Prev], minus(entry.id.seq, prev.seq));
    }
}

std::string joined(const std::vector<std::string> &parts)
{
    std::string all;
    for (const std::string &part : parts)
        all += part;
    return all;
}

Error broken(const char *what) { return {Errc::Corrupt, std::string("entries whose ") + what, "", ""}; }

std::vector<std::string> cut(const Value &value, std::size_t size, bool &fine)
{
    const std::string bytes = value.asBytes().value_or("");
    fine = fine && value.asBytes() && bytes.size() % size == 0;
    std::vector<std::string> parts;
    for (std::size_t at = 0; fine && at < bytes.size(); at += size)
        parts.push_back(bytes.substr(at, size));
    return parts;
}

std::vector<std::string> textsIn(const Value &value, bool &fine)
{
    std::vector<std::string> texts;
    fine = fine && value.isList();
    for (const Value &item : value.list()) {
        fine = fine && item.isString();
        texts.push_back(item.asString().value_or(""));
    }
    return texts;
}

std::vector<Shape> shapesIn(const Value &value, bool &fine)
{
    std::vector<Shape> shapes;
    fine = fine && value.isList();
    for (const Value &item : value.list()) {
        shapes.push_back(textsIn(item, fine));
        const Shape &shape = shapes.back();
        fine = fine && shape.size() <= maxFields &&
               std::adjacent_find(shape.begin(), shape.end(), std::greater_equal<>()) == shape.end();
    }
    return shapes;
}

class Unpacker {
public:
    Unpacker(const Value &v, bool &fine)
        : m_streams(cut(v["streams"], 24, fine)),
          m_ids(cut(v["ids"], 16, fine)),
          m_texts(textsIn(v["texts"], fine)),
          m_shapes(shapesIn(v["shapes"], fine)),
          m_values(v["values"].asBytes().value_or(""))
    {
        for (const char *name : columnNames) {
            const auto bytes = v["columns"][name].asBytes();
            fine = fine && bytes.has_value();
            m_bytes.push_back(bytes.value_or(""));
        }
        for (const std::string &bytes : m_bytes)
            m_columns.emplace_back(bytes);
        fine = fine && v["values"].asBytes().has_value();
    }

    Result<IncomingEntry> next()
    {
        Entry entry;
        const std::string *stream = m_streams.get(m_columns[Stream].next());
        if (stream == nullptr)
            return broken("streams cannot be told");
        entry.id.stream = streamFromBytes(*stream).value();
        entry.id.seq = plus(m_last.seq[*stream], m_columns[Seq].nextSigned());
        entry.hlc = plus(m_last.hlc, m_columns[Hlc].nextSigned());
        m_last.seq[*stream] = entry.id.seq;
        m_last.hlc = entry.hlc;
        if (!readId(Act, entry.act) || !readId(Scope, entry.scope) || !readId(Undoes, entry.undoes) ||
            !readId(Entity, entry.entity))
            return broken("ids cannot be told");
        const std::string *type = m_texts.get(m_columns[Text].next());
        const std::string *by = m_texts.get(m_columns[Text].next());
        const std::int64_t at = plus(millisOf(entry.hlc), m_columns[At].nextSigned());
        const std::int64_t offset = m_columns[At].nextSigned();
        // the years 0000 to 9999, which RFC 3339 can write
        if (entry.hlc < 0 || entry.hlc > lastHlc || type == nullptr || by == nullptr ||
            at < -62'167'132'800'000 || at > 253'402'214'400'000 || offset < -840 || offset > 840)
            return broken("texts or times cannot be");
        entry.type = *type;
        entry.by = *by;
        entry.at = {fromMillis(at), ZoneOffset{static_cast<int>(offset)}};
        SNUG_TRY(readFields(entry));
        SNUG_TRY(readPrev(entry));
        IncomingEntry incoming{std::move(entry), {}};
        incoming.bytes = canonicalBytes(incoming.entry);
        const Result<Entry> back = entryFromBytes(incoming.bytes);
        if (!back || back->at != incoming.entry.at || back->where != incoming.entry.where)
            return broken("bytes could not be read again");
        return incoming;
    }

    [[nodiscard]] bool isDone() const
    {
        return m_valueAt == m_values.size() && m_streams.isDone() && m_ids.isDone() && m_texts.isDone() &&
               m_shapes.isDone() &&
               std::all_of(m_columns.begin(), m_columns.end(),
                           [](const VarintReader &column) { return column.isDone(); });
    }

private:
    bool readId(Column column, Id &id)
    {
        const std::uint64_t there = m_columns[column].next();
        if (there == 0)
            return true;
        const std::string *bytes = there == 1 ? m_ids.get(m_columns[column].next()) : nullptr;
        if (bytes == nullptr)
            return false;
        id = Id::fromBytes(*bytes);
        return !id.isNull();
    }

    Status readFields(Entry &entry)
    {
        const Shape *shape = m_shapes.get(m_columns[ShapeOf].next());
        const std::uint64_t size = m_columns[Sizes].next();
        if (shape == nullptr || size / 2 > m_values.size() - m_valueAt)
            return broken("fields cannot be told");
        const Result<Value> decoded = decodeCbor(std::string_view(m_values).substr(m_valueAt, size / 2));
        m_valueAt += size / 2;
        const bool hasWhere = size % 2 == 1;
        if (!decoded || decoded->list().size() != shape->size() + (hasWhere ? 1 : 0))
            return broken("values do not fit their fields");
        for (std::size_t i = 0; i < shape->size(); ++i)
            entry.fields[(*shape)[i]] = decoded->list()[i];
        if (hasWhere && (!readWhere(decoded->list().back(), entry.where) || !entry.where))
            return broken("place is none");
        return done();
    }

    Status readPrev(Entry &entry)
    {
        const std::uint64_t count = m_columns[Prev].next();
        if (count > maxPrev)
            return broken("predecessors are too many");
        for (std::uint64_t i = 0; i < count; ++i) {
            const std::string *stream = m_streams.get(m_columns[Prev].next());
            if (stream == nullptr)
                return broken("predecessors cannot be told");
            const std::int64_t seq = minus(entry.id.seq, m_columns[Prev].nextSigned());
            entry.prev.push_back({streamFromBytes(*stream).value(), seq});
        }
        return done();
    }

    TableReader<std::string> m_streams;
    TableReader<std::string> m_ids;
    TableReader<std::string> m_texts;
    TableReader<Shape> m_shapes;
    std::string m_values;
    std::size_t m_valueAt = 0;
    std::vector<std::string> m_bytes;
    std::vector<VarintReader> m_columns;
    Last m_last;
};

} // namespace

Result<std::string> packEntries(const std::vector<IncomingEntry> &entries)
{
    Columns c;
    Last last;
    for (const IncomingEntry &item : entries) {
        if (item.entry.prev.size() > maxPrev || item.entry.fields.size() > maxFields)
            return Error{Errc::Unsupported, "an entry with too many predecessors or fields to be sent",
                         item.entry.entity.shortText(), "resolve its conflict first"};
        put(c, item.entry, last);
    }
    Value::Map columns;
    for (int i = 0; i <= Sizes; ++i)
        columns[columnNames[i]] = Bytes{c.numbers[i]};
    Value::List texts(c.texts.items.begin(), c.texts.items.end());
    Value::List shapes;
    for (const Shape &shape : c.shapes.items)
        shapes.emplace_back(Value::List(shape.begin(), shape.end()));
    std::string packed = encodeCbor(Value::Map{{"v", columnsVersion},
                                               {"count", entries.size()},
                                               {"streams", Bytes{joined(c.streams.items)}},
                                               {"ids", Bytes{joined(c.ids.items)}},
                                               {"texts", std::move(texts)},
                                               {"shapes", std::move(shapes)},
                                               {"columns", std::move(columns)},
                                               {"values", Bytes{c.values}}});
    const auto back = unpackEntries(packed);
    const auto isSame = [](const IncomingEntry &a, const IncomingEntry &b) { return a.bytes == b.bytes; };
    if (!back || !std::equal(back->begin(), back->end(), entries.begin(), entries.end(), isSame))
        return Error{Errc::Unsupported, "entries that would not arrive as they are", "",
                     "update the program on this machine"};
    return packed;
}

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
        entries.push_back(std::move(entry).value());
    }
    if (!unpacker.isDone())
        return broken("columns are longer than their number");
    return entries;
}

} // namespace snugwalk

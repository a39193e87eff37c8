// SPDX-License-Identifier: Apache-2.0
// Entries to columns and back. What follows from the rest of an entry is not carried: it is made again.
#include "sync/columns.hpp"

#include <algorithm>

#include "base/cbor.hpp"
#include "base/text.hpp"
#include "logbook/thing.hpp"
#include "sync/column_tables.hpp"

namespace snugwalk {
namespace {

constexpr std::int64_t columnsVersion = 1;
constexpr std::size_t maxFields = 512;
constexpr std::size_t maxGrown =
    std::size_t{64} * 1024 * 1024; // entries that share a long text may not grow beyond

enum Column {
    Seq,
    Hlc,
    Tick,
    Stream,
    Act,
    Scope,
    Undoes,
    Entity,
    Type,
    By,
    At,
    ShapeOf,
    Where,
    Prev,
    columnCount
};
constexpr const char *columnNames[] = {"seq",    "hlc",  "tick", "stream", "act",   "scope", "undoes",
                                       "entity", "type", "by",   "at",     "shape", "where", "prev"};
// How an id is told.
enum IdForm { None, AsBefore, Listed, Derived, DerivedByText };

// The clock's own milliseconds, from which what the person's clock showed is a few away.
std::int64_t millisOf(std::int64_t hlc) { return hlc >> 16; }
constexpr std::int64_t tickMask = 0xFFFF;

std::int64_t minus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) - static_cast<std::uint64_t>(b));
}

std::int64_t plus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
}

std::string_view textField(const Entry &entry, const char *field)
{
    const auto found = entry.fields.find(field);
    const auto *text =
        found == entry.fields.end() ? nullptr : std::get_if<std::string>(&found->second.variant());
    return text == nullptr ? std::string_view() : std::string_view(*text);
}

// The mark that the entry's own fields name.
Id markOfFields(const Entry &entry)
{
    const auto walk = Id::parse(textField(entry, "walk"));
    const std::string_view point = textField(entry, "point");
    return walk && !point.empty() ? markId(*walk, point) : Id{};
}

// What both sides remember of the entries before.
struct Last {
    std::map<std::string, std::int64_t, std::less<>> seq; // by stream
    std::int64_t millis = 0;
    Id ids[columnCount]; // by column
};

std::string valueText(ValueForm form, const Entry &entry, const std::string &at)
{
    switch (form) {
    case ValueForm::Carried:
        break;
    case ValueForm::At:
        return at;
    case ValueForm::By:
        return entry.by;
    case ValueForm::Scope:
        return entry.scope.text();
    }
    return {};
}

class Packer {
public:
    void put(const Entry &entry)
    {
        const std::string stream = entry.id.stream.bytes();
        m_streams.put(m_numbers[Stream], stream);
        putSigned(m_numbers[Seq], minus(entry.id.seq, m_last.seq[stream]));
        m_last.seq[stream] = entry.id.seq;
        putSigned(m_numbers[Hlc], minus(millisOf(entry.hlc), m_last.millis));
        putVarint(m_numbers[Tick], static_cast<std::uint64_t>(entry.hlc & tickMask));
        m_last.millis = millisOf(entry.hlc);
        m_texts.put(m_numbers[Type], entry.type);
        m_texts.put(m_numbers[By], entry.by);
        putSigned(m_numbers[At], minus(toMillis(entry.at.instant), millisOf(entry.hlc)));
        putSigned(m_numbers[At], entry.at.offset.minutes);
        putId(Scope, entry.scope);
        putId(Undoes, entry.undoes);
        putFields(entry);
        putEntity(entry);
        putAct(entry);
        putVarint(m_numbers[Prev], entry.prev.size());
        for (const EntryId &prev : entry.prev) {
            m_streams.put(m_numbers[Prev], prev.stream.bytes());
            putSigned(m_numbers[Prev], minus(entry.id.seq, prev.seq));
        }
    }

    std::string packed(std::size_t count)
    {
        Value::Map columns;
        for (int i = 0; i < columnCount; ++i)
            columns[columnNames[i]] = Bytes{m_numbers[i]};
        Value::List texts(m_texts.items.begin(), m_texts.items.end());
        Value::List shapes;
        for (const Shape &shape : m_shapes.items)
            shapes.push_back(shapeValue(shape));
        Value::List values;
        for (const std::string &bytes : m_values)
            values.emplace_back(Bytes{bytes});
        return encodeCbor(Value::Map{{"v", columnsVersion},
                                     {"count", count},
                                     {"streams", Bytes{joined(m_streams.items)}},
                                     {"ids", Bytes{m_ids.carried()}},
                                     {"texts", std::move(texts)},
                                     {"shapes", std::move(shapes)},
                                     {"columns", std::move(columns)},
                                     {"values", std::move(values)}});
    }

private:
    void putId(Column column, const Id &id)
    {
        const bool isSame = !id.isNull() && id == m_last.ids[column];
        putVarint(m_numbers[column], id.isNull() ? None : isSame ? AsBefore : Listed);
        if (!id.isNull() && !isSame)
            m_ids.put(m_numbers[column], id);
        m_last.ids[column] = id;
    }

    void putFields(const Entry &entry)
    {
        const std::string at = formatLocal(entry.at);
        Shape shape;
        for (const auto &[field, value] : entry.fields)
            shape.push_back({field, formOf(entry, value, at)});
        m_shapes.put(m_numbers[ShapeOf], shape);
        for (const ShapeField &item : shape) {
            if (item.form == ValueForm::Carried)
                putCbor(valuesOf(item.name), entry.fields.at(item.name));
        }
        putVarint(m_numbers[Where], entry.where ? 1 : 0);
        if (entry.where)
            putCbor(valuesOf(std::string(whereName)), whereValue(*entry.where));
    }

    static ValueForm formOf(const Entry &entry, const Value &value, const std::string &at)
    {
        const auto *text = std::get_if<std::string>(&value.variant());
        if (text == nullptr)
            return ValueForm::Carried;
        for (const ValueForm form : {ValueForm::At, ValueForm::By, ValueForm::Scope}) {
            if (!text->empty() && *text == valueText(form, entry, at))
                return form;
        }
        return ValueForm::Carried;
    }

    // One string of values a field, in the order of their first use: what is alike lies together.
    std::string &valuesOf(const std::string &field)
    {
        const auto [at, isNew] = m_places.emplace(field, m_values.size());
        if (isNew)
            m_values.emplace_back();
        return m_values[at->second];
    }

    void putEntity(const Entry &entry)
    {
        std::string &out = m_numbers[Entity];
        const std::string point = pointOf(entry);
        if (entry.entity == m_last.ids[Entity]) {
            putVarint(out, AsBefore);
        } else if (entry.entity == markOfFields(entry)) {
            putVarint(out, Derived);
        } else if (!point.empty()) {
            putVarint(out, DerivedByText);
            m_texts.put(out, point);
        } else {
            putVarint(out, Listed);
            m_ids.put(out, entry.entity);
        }
        m_last.ids[Entity] = entry.entity;
        if (const Id mark = markOfFields(entry); !mark.isNull())
            m_points[entry.entity] = std::string(textField(entry, "point"));
    }

    // The point of a mark that was written in this file before, when it is one of the walk the entry is on.
    std::string pointOf(const Entry &entry) const
    {
        const auto known = m_points.find(entry.entity);
        if (known == m_points.end() || entry.entity != markId(entry.scope, known->second))
            return {};
        return known->second;
    }

    void putAct(const Entry &entry)
    {
        std::string &out = m_numbers[Act];
        const bool isSame = entry.act == m_last.ids[Act];
        const bool isDerived = !isSame && entry.act == actIdOf(entry);
        putVarint(out, isSame ? AsBefore : isDerived ? Derived : Listed);
        if (!isSame && !isDerived)
            m_ids.put(out, entry.act);
        m_last.ids[Act] = entry.act;
    }

    std::string m_numbers[columnCount];
    Table<std::string> m_streams;
    Table<std::string> m_texts;
    Table<Shape> m_shapes;
    IdTable m_ids;
    std::map<std::string, std::size_t> m_places;
    std::vector<std::string> m_values;
    std::map<Id, std::string> m_points;
    Last m_last;
};

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
        const std::string *stream = m_streams.get(m_columns[Stream].next());
        if (stream == nullptr)
            return broken("streams cannot be told");
        entry.id.stream = streamFromBytes(*stream).value();
        std::int64_t &lastSeq = m_last.seq[*stream];
        entry.id.seq = lastSeq = plus(lastSeq, m_columns[Seq].nextSigned());
        m_last.millis = plus(m_last.millis, m_columns[Hlc].nextSigned());
        const std::uint64_t tick = m_columns[Tick].next();
        if (m_last.millis !=
                millisOf(static_cast<std::int64_t>(static_cast<std::uint64_t>(m_last.millis) << 16U)) ||
            tick > static_cast<std::uint64_t>(tickMask) || entry.id.seq < 1)
            return broken("numbers cannot be");
        entry.hlc = static_cast<std::int64_t>(static_cast<std::uint64_t>(m_last.millis) << 16U | tick);
        SNUG_TRY(readTexts(entry));
        if (!readId(Scope, entry.scope) || !readId(Undoes, entry.undoes))
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
        const std::string *type = m_texts.get(m_columns[Type].next());
        const std::string *by = m_texts.get(m_columns[By].next());
        const std::int64_t at = plus(m_last.millis, m_columns[At].nextSigned());
        const std::int64_t offset = m_columns[At].nextSigned();
        // the years 0000 to 9999, which RFC 3339 can write
        if (type == nullptr || by == nullptr || at < -62'167'132'800'000 || at > 253'402'214'400'000 ||
            offset < -840 || offset > 840)
            return broken("texts or times cannot be");
        entry.type = *type;
        entry.by = *by;
        entry.at = {fromMillis(at), ZoneOffset{static_cast<int>(offset)}};
        return done();
    }

    bool readId(Column column, Id &id)
    {
        switch (m_columns[column].next()) {
        case None:
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
        ReadShape *shape = m_shapes.get(m_columns[ShapeOf].next());
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
        const std::uint64_t hasWhere = m_columns[Where].next();
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
        switch (m_columns[Entity].next()) {
        case AsBefore:
            entry.entity = m_last.ids[Entity];
            break;
        case Listed:
            entry.entity = m_ids.get(m_columns[Entity].next()).value_or(Id{});
            break;
        case Derived:
            entry.entity = markOfFields(entry);
            break;
        case DerivedByText:
            if (const std::string *point = m_texts.get(m_columns[Entity].next()))
                entry.entity = markId(entry.scope, *point);
            break;
        default:
            return false;
        }
        m_last.ids[Entity] = entry.entity;
        return !entry.entity.isNull();
    }

    bool readAct(Entry &entry)
    {
        switch (m_columns[Act].next()) {
        case AsBefore:
            entry.act = m_last.ids[Act];
            break;
        case Listed:
            entry.act = m_ids.get(m_columns[Act].next()).value_or(Id{});
            break;
        case Derived:
            entry.act = actIdOf(entry);
            break;
        default:
            return false;
        }
        m_last.ids[Act] = entry.act;
        return !entry.act.isNull();
    }

    Status readPrev(Entry &entry)
    {
        const std::uint64_t count = m_columns[Prev].next();
        if (count > maxPrev)
            return broken("predecessors are too many");
        for (std::uint64_t i = 0; i < count; ++i) {
            const std::string *stream = m_streams.get(m_columns[Prev].next());
            const std::int64_t seq = minus(entry.id.seq, m_columns[Prev].nextSigned());
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

Result<std::string> packEntries(const std::vector<IncomingEntry> &entries)
{
    Packer packer;
    for (const IncomingEntry &item : entries) {
        if (item.entry.prev.size() > maxPrev || item.entry.fields.size() > maxFields)
            return Error{Errc::Unsupported, "an entry with too many predecessors or fields to be sent",
                         item.entry.entity.shortText(), "resolve its conflict first"};
        packer.put(item.entry);
    }
    std::string packed = packer.packed(entries.size());
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
        entries.push_back(std::move(*entry));
    }
    if (!unpacker.isDone())
        return broken("columns are longer than their number");
    return entries;
}

} // namespace snugwalk

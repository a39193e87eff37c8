// SPDX-License-Identifier: Apache-2.0
// Entries to columns. What follows from the rest of an entry is not carried.
#include "sync/columns.hpp"

#include <algorithm>

#include "base/cbor.hpp"
#include "logbook/thing.hpp"
#include "sync/column_layout.hpp"

namespace snugwalk {
namespace {

class Packer {
public:
    void put(const Entry &entry)
    {
        const std::string stream = entry.id.stream.bytes();
        m_streams.put(m_numbers[StreamColumn], stream);
        putSigned(m_numbers[SeqColumn], minus(entry.id.seq, m_last.seq[stream]));
        m_last.seq[stream] = entry.id.seq;
        putSigned(m_numbers[HlcColumn], minus(millisOf(entry.hlc), m_last.millis));
        putVarint(m_numbers[TickColumn], static_cast<std::uint64_t>(entry.hlc & tickMask));
        m_last.millis = millisOf(entry.hlc);
        m_texts.put(m_numbers[TypeColumn], entry.type);
        m_texts.put(m_numbers[ByColumn], entry.by);
        putSigned(m_numbers[AtColumn], minus(toMillis(entry.at.instant), millisOf(entry.hlc)));
        putSigned(m_numbers[AtColumn], entry.at.offset.minutes);
        putId(ScopeColumn, entry.scope);
        putId(UndoesColumn, entry.undoes);
        putFields(entry);
        putEntity(entry);
        putAct(entry);
        putVarint(m_numbers[PrevColumn], entry.prev.size());
        for (const EntryId &prev : entry.prev) {
            m_streams.put(m_numbers[PrevColumn], prev.stream.bytes());
            putSigned(m_numbers[PrevColumn], minus(entry.id.seq, prev.seq));
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
        putVarint(m_numbers[column], id.isNull() ? NoId : isSame ? AsBefore : Listed);
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
        m_shapes.put(m_numbers[ShapeColumn], shape);
        for (const ShapeField &item : shape) {
            if (item.form == ValueForm::Carried)
                putCbor(valuesOf(item.name), entry.fields.at(item.name));
        }
        putVarint(m_numbers[WhereColumn], entry.where ? 1 : 0);
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
        std::string &out = m_numbers[EntityColumn];
        const std::string point = pointOf(entry);
        if (entry.entity == m_last.ids[EntityColumn]) {
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
        m_last.ids[EntityColumn] = entry.entity;
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
        std::string &out = m_numbers[ActColumn];
        const bool isSame = entry.act == m_last.ids[ActColumn];
        const bool isDerived = !isSame && entry.act == actIdOf(entry);
        putVarint(out, isSame ? AsBefore : isDerived ? Derived : Listed);
        if (!isSame && !isDerived)
            m_ids.put(out, entry.act);
        m_last.ids[ActColumn] = entry.act;
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

} // namespace snugwalk

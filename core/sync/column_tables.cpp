// SPDX-License-Identifier: Apache-2.0
// Bounded by what the file holds: nothing is made that is not there.
#include "sync/column_layout.hpp"

#include <algorithm>

#include "logbook/thing.hpp"

namespace snugwalk {

std::string_view textField(const Entry &entry, const char *field)
{
    const auto found = entry.fields.find(field);
    const auto *text =
        found == entry.fields.end() ? nullptr : std::get_if<std::string>(&found->second.variant());
    return text == nullptr ? std::string_view() : std::string_view(*text);
}

Id markOfFields(const Entry &entry)
{
    const auto walk = Id::parse(textField(entry, "walk"));
    const std::string_view point = textField(entry, "point");
    return walk && !point.empty() ? markId(*walk, point) : Id{};
}

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

Value shapeValue(const Shape &shape)
{
    Value::List list;
    for (const ShapeField &item : shape) {
        if (item.form == ValueForm::Carried)
            list.emplace_back(item.name);
        else
            list.emplace_back(Value::List{item.name, static_cast<int>(item.form)});
    }
    return list;
}

std::vector<ReadShape> shapesIn(const Value &value, bool &fine)
{
    std::vector<ReadShape> shapes;
    fine = fine && value.isList();
    for (const Value &listed : value.list()) {
        ReadShape shape;
        fine = fine && listed.isList() && listed.list().size() <= maxFields;
        for (const Value &item : listed.list()) {
            if (item.isString()) {
                shape.push_back({*item.asString(), ValueForm::Carried, std::nullopt});
                continue;
            }
            const auto form = item.list().size() == 2 ? item.list()[1].asInt() : std::nullopt;
            fine = fine && form && item.list()[0].isString() && *form > 0 && *form < valueForms;
            if (fine)
                shape.push_back({*item.list()[0].asString(), static_cast<ValueForm>(*form), std::nullopt});
        }
        const auto isNoRise = [](const ReadField &a, const ReadField &b) { return a.name >= b.name; };
        fine = fine && std::adjacent_find(shape.begin(), shape.end(), isNoRise) == shape.end();
        shapes.push_back(std::move(shape));
    }
    return shapes;
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

std::vector<std::string> cut(const Value &value, std::size_t size, bool &fine)
{
    const std::string bytes = value.asBytes().value_or("");
    fine = fine && value.asBytes() && bytes.size() % size == 0;
    std::vector<std::string> parts;
    for (std::size_t at = 0; fine && at < bytes.size(); at += size)
        parts.push_back(bytes.substr(at, size));
    return parts;
}

std::string joined(const std::vector<std::string> &parts)
{
    std::string all;
    for (const std::string &part : parts)
        all += part;
    return all;
}

Value whereValue(const GeoPoint &where)
{
    return Value::List{where.latitude, where.longitude, where.altitude,
                       where.accuracy ? Value(where.accuracy->si()) : Value()};
}

bool readWhere(const Value &value, std::optional<GeoPoint> &where)
{
    const Value::List &list = value.list();
    if (list.size() != 4 || !list[0].asDouble() || !list[1].asDouble())
        return false;
    where = GeoPoint{*list[0].asDouble(), *list[1].asDouble(), list[2].asDouble(), std::nullopt};
    if (const auto accuracy = list[3].asDouble())
        where->accuracy = Length::fromSi(*accuracy);
    return isValid(*where);
}

void IdTable::put(std::string &out, const Id &id)
{
    const auto [at, isNew] = m_places.emplace(id, m_places.size());
    putVarint(out, isNew ? 0 : m_places.size() - at->second);
    if (isNew)
        m_carried += id.view();
}

IdReader::IdReader(std::string carried, bool &fine) : m_carried(std::move(carried))
{
    fine = fine && m_carried.size() % 16 == 0;
}

std::optional<Id> IdReader::get(std::uint64_t ago)
{
    const bool isNew = ago == 0;
    if (isNew ? m_seen * 16 >= m_carried.size() : ago > m_seen)
        return std::nullopt;
    const std::size_t place = isNew ? m_seen++ : m_seen - static_cast<std::size_t>(ago);
    return Id::fromBytes(std::string_view(m_carried).substr(place * 16, 16));
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Reading members of a value tree without ever failing on an unexpected type.
#include "base/value.hpp"

namespace snugwalk {

std::optional<bool> Value::asBool() const
{
    const auto *v = std::get_if<bool>(&m_v);
    return v ? std::optional(*v) : std::nullopt;
}

std::optional<std::int64_t> Value::asInt() const
{
    const auto *v = std::get_if<std::int64_t>(&m_v);
    return v ? std::optional(*v) : std::nullopt;
}

std::optional<double> Value::asDouble() const
{
    if (const auto *v = std::get_if<double>(&m_v))
        return *v;
    if (const auto *v = std::get_if<std::int64_t>(&m_v))
        return static_cast<double>(*v);
    return std::nullopt;
}

std::optional<std::string> Value::asString() const
{
    const auto *v = std::get_if<std::string>(&m_v);
    return v ? std::optional(*v) : std::nullopt;
}

std::optional<std::string> Value::asBytes() const
{
    const auto *v = std::get_if<Bytes>(&m_v);
    return v ? std::optional(v->data) : std::nullopt;
}

const Value::List &Value::list() const
{
    static const List empty;
    const auto *v = std::get_if<List>(&m_v);
    return v ? *v : empty;
}

const Value::Map &Value::map() const
{
    static const Map empty;
    const auto *v = std::get_if<Map>(&m_v);
    return v ? *v : empty;
}

const Value &Value::operator[](std::string_view key) const
{
    static const Value null;
    const Map &members = map();
    const auto found = members.find(std::string(key));
    return found == members.end() ? null : found->second;
}

Value &Value::member(std::string_view key)
{
    if (!isMap())
        m_v = Map{};
    return std::get<Map>(m_v)[std::string(key)];
}

} // namespace snugwalk

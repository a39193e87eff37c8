// SPDX-License-Identifier: Apache-2.0
// JSON in and out through nlohmann-json, whose exceptions end here.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "base/text.hpp"
#include "base/value.hpp"

namespace snugwalk {
namespace {

using Json = nlohmann::json;

struct ToJson {
    Json operator()(std::monostate) const { return nullptr; }
    Json operator()(const Bytes &v) const { return toHex(v.data); }
    Json operator()(const Value::List &v) const
    {
        Json out = Json::array();
        for (const Value &item : v)
            out.push_back(std::visit(*this, item.variant()));
        return out;
    }
    Json operator()(const Value::Map &v) const
    {
        Json out = Json::object();
        for (const auto &[key, item] : v)
            out[key] = std::visit(*this, item.variant());
        return out;
    }
    template <typename T>
    Json operator()(const T &v) const
    {
        return v;
    }
};

Value fromJson(const Json &json)
{
    switch (json.type()) {
    case Json::value_t::boolean:
        return json.get<bool>();
    case Json::value_t::number_integer:
        return json.get<std::int64_t>();
    case Json::value_t::number_unsigned: {
        // beyond 63 bits it is still a number, but no longer an integer here
        const auto n = json.get<std::uint64_t>();
        return n <= 0x7FFFFFFFFFFFFFFFULL ? Value(static_cast<std::int64_t>(n))
                                          : Value(static_cast<double>(n));
    }
    case Json::value_t::number_float:
        return json.get<double>();
    case Json::value_t::string:
        return json.get<std::string>();
    case Json::value_t::array: {
        Value::List items;
        for (const Json &item : json)
            items.push_back(fromJson(item));
        return items;
    }
    case Json::value_t::object: {
        Value::Map members;
        for (const auto &[key, item] : json.items())
            members.emplace(key, fromJson(item));
        return members;
    }
    default:
        return {};
    }
}

// The library recurses as deep as the text does, so depth is bounded before it starts.
bool tooDeep(std::string_view text)
{
    int depth = 0;
    bool inString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (inString && text[i] == '\\')
            ++i;
        else if (text[i] == '"')
            inString = !inString;
        else if (!inString && (text[i] == '[' || text[i] == '{') && ++depth > 64)
            return true;
        else if (!inString && (text[i] == ']' || text[i] == '}'))
            --depth;
    }
    return false;
}

std::string lineAndColumn(std::string_view text, std::size_t byte)
{
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const auto start = before.rfind('\n');
    const auto column = before.size() - (start == std::string_view::npos ? 0 : start + 1);
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

} // namespace

std::string toJson(const Value &value, bool indented)
{
    return std::visit(ToJson{}, value.variant())
        .dump(indented ? 2 : -1, ' ', false, Json::error_handler_t::replace);
}

Result<Value> parseJson(std::string_view text)
{
    if (tooDeep(text))
        return Error{Errc::InvalidInput, "JSON nested too deeply", "", "keep it under 64 levels"};
    try {
        return fromJson(Json::parse(text.begin(), text.end()));
    } catch (const Json::parse_error &fault) {
        return Error{Errc::InvalidInput, "not JSON", lineAndColumn(text, fault.byte),
                     "correct the text there"};
    } catch (const Json::exception &) {
        return Error{Errc::InvalidInput, "JSON with a number or text that cannot be read", "", "correct it"};
    }
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Members of an entry between CBOR, which has bytes, and JSON, which has none.
#include "exchange/entry_line.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::array<std::string_view, 5> byteMembers = {"stream", "act", "scope", "undoes", "entity"};
constexpr std::array<std::string_view, 3> addedMembers = {"hash", "cbor", "previous"};

Error unreadable(const std::string &what)
{
    return {Errc::Corrupt, what, "", "fetch the file again from where it was made"};
}

Value toHexText(const Value &v)
{
    const auto bytes = v.asBytes();
    return bytes ? Value(toHex(*bytes)) : v;
}

Value toByteValue(const Value &v)
{
    const auto text = v.asString();
    const auto bytes = text ? fromHex(*text) : std::nullopt;
    return bytes ? Value(Bytes{*bytes}) : v;
}

// [[stream, seq], ...] with the stream turned by `turn`.
Value turnPrev(const Value &prev, Value (*turn)(const Value &))
{
    Value::List out;
    for (const Value &item : prev.list()) {
        Value::List pair = item.list();
        if (!pair.empty())
            pair.front() = turn(pair.front());
        out.emplace_back(std::move(pair));
    }
    return prev.isList() ? Value(std::move(out)) : prev;
}

// The entry's bytes as its members tell them.
std::string bytesOfMembers(Value::Map members)
{
    for (const std::string_view name : addedMembers)
        members.erase(std::string(name));
    for (const std::string_view name : byteMembers) {
        const auto found = members.find(std::string(name));
        if (found != members.end())
            found->second = toByteValue(found->second);
    }
    if (const auto prev = members.find("prev"); prev != members.end())
        prev->second = turnPrev(prev->second, toByteValue);
    if (const auto hlc = members.find("hlc"); hlc != members.end()) {
        const auto number = parseInteger(hlc->second.asString().value_or(""));
        hlc->second = number ? Value(*number) : Value();
    }
    return encodeCbor(Value(std::move(members)));
}

std::string lineText(Value::Map members, std::string_view bytes, const Hash &hash,
                     const std::optional<Hash> &previous)
{
    for (const std::string_view name : byteMembers) {
        const auto found = members.find(std::string(name));
        if (found != members.end())
            found->second = toHexText(found->second);
    }
    if (const auto prev = members.find("prev"); prev != members.end())
        prev->second = turnPrev(prev->second, toHexText);
    if (const auto hlc = members.find("hlc"); hlc != members.end() && hlc->second.asInt())
        hlc->second = std::to_string(*hlc->second.asInt());
    members["hash"] = hash.text();
    if (previous)
        members["previous"] = previous->text();
    std::string line = toJson(Value(members), false);
    const Result<Value> back = parseJson(line);
    if (back && bytesOfMembers(back->map()) == bytes)
        return line;
    members["cbor"] = toHex(bytes);
    return toJson(Value(std::move(members)), false);
}

} // namespace

Result<std::string> lineOf(std::string_view bytes, const Hash &hash, const std::optional<Hash> &previous)
{
    Result<Value> entry = decodeCbor(bytes);
    if (!entry)
        return entry.error();
    const bool isTaken = std::any_of(addedMembers.begin(), addedMembers.end(), [&](std::string_view name) {
        return entry->map().count(std::string(name)) > 0;
    });
    if (!entry->isMap() || isTaken)
        return Error{Errc::Corrupt, "an entry that cannot be read", "", "run `snugwalk check`"};
    return lineText(entry->map(), bytes, hash, previous);
}

Result<EntryLine> entryFromLine(std::string_view line)
{
    if (line.size() > maxLineBytes)
        return Error{Errc::OutOfRange, "a line of more than 8 MiB", "", "ask who made this file"};
    const Result<Value> parsed = parseJson(line);
    if (!parsed || !parsed->isMap())
        return unreadable("a line that is no JSON object");
    const Value &members = *parsed;
    const auto hash = Hash::parse(members["hash"].asString().value_or(""));
    if (!hash)
        return unreadable("a line without its hash");
    EntryLine out;
    ForeignEntry &entry = out.entry;
    entry.hash = *hash;
    out.previous = Hash::parse(members["previous"].asString().value_or(""));
    if (members["cbor"].isNull()) {
        SNUG_TRY(checkEncodable(members));
        entry.bytes = bytesOfMembers(members.map());
    } else {
        const auto bytes = fromHex(members["cbor"].asString().value_or(""));
        if (!bytes)
            return unreadable("a line whose bytes are no hexadecimal");
        entry.bytes = *bytes;
    }
    const Result<std::string> again = lineOf(entry.bytes, entry.hash, out.previous);
    if (!again || *again != toJson(members, false))
        return unreadable("a line that shows something else than its bytes say");
    const Result<StreamId> stream =
        streamFromBytes(fromHex(members["stream"].asString().value_or("")).value_or(""));
    const auto seq = members["seq"].asInt();
    if (!stream || !seq || *seq < 1)
        return unreadable("a line without its stream and number");
    entry.id = {*stream, *seq};
    return out;
}

} // namespace snugwalk

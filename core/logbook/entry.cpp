// SPDX-License-Identifier: Apache-2.0
// Entries to bytes and back.
#include "logbook/entry.hpp"

#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

constexpr std::int64_t entryFormat = 1;

Value idBytes(const Id &id) { return id.isNull() ? Value() : Value(Bytes{std::string(id.view())}); }

std::optional<Id> readId(const Value &v)
{
    if (v.isNull())
        return Id{};
    const auto raw = v.asBytes();
    return raw && raw->size() == 16 ? std::optional(Id::fromBytes(*raw)) : std::nullopt;
}

std::optional<EntryId> readEntryId(const Value &stream, const Value &seq)
{
    const auto raw = stream.asBytes();
    const auto number = seq.asInt();
    if (!raw || !number || *number < 1)
        return std::nullopt;
    const Result<StreamId> id = streamFromBytes(*raw);
    return id ? std::optional(EntryId{*id, *number}) : std::nullopt;
}

Error broken(const char *what)
{
    return {Errc::Corrupt, std::string("an entry whose ") + what + " cannot be read", "",
            "run `snugwalk check`"};
}

} // namespace

std::string canonicalBytes(const Entry &entry)
{
    Value::List prev;
    for (const EntryId &id : entry.prev)
        prev.push_back(Value::List{Bytes{id.stream.bytes()}, id.seq});
    return encodeCbor(Value::Map{{"v", entryFormat},
                                 {"stream", Bytes{entry.id.stream.bytes()}},
                                 {"seq", entry.id.seq},
                                 {"hlc", entry.hlc},
                                 {"act", idBytes(entry.act)},
                                 {"scope", idBytes(entry.scope)},
                                 {"undoes", idBytes(entry.undoes)},
                                 {"entity", idBytes(entry.entity)},
                                 {"type", entry.type},
                                 {"fields", entry.fields},
                                 {"prev", prev},
                                 {"by", entry.by},
                                 {"at", formatLocal(entry.at)},
                                 {"where", entry.where ? toValue(*entry.where) : Value()}});
}

Result<Entry> entryFromBytes(std::string_view bytes)
{
    const Result<Value> decoded = decodeCbor(bytes);
    if (!decoded)
        return decoded.error();
    const Value &v = *decoded;
    if (v["v"].asInt() != entryFormat)
        return Error{Errc::Unsupported, "an entry of a newer version", "",
                     "update the program on this machine"};
    const auto id = readEntryId(v["stream"], v["seq"]);
    const auto hlc = v["hlc"].asInt();
    const auto act = readId(v["act"]);
    const auto scope = readId(v["scope"]);
    const auto undoes = readId(v["undoes"]);
    const auto entity = readId(v["entity"]);
    const auto type = v["type"].asString();
    const auto by = v["by"].asString();
    const auto at = parseLocal(v["at"].asString().value_or(""));
    if (!id || !hlc || !act || !scope || !undoes || !entity || act->isNull() || entity->isNull())
        return broken("names");
    if (!type || !by || !at || !v["fields"].isMap() || !v["prev"].isList())
        return broken("members");
    const auto where = geoFromValue(v["where"]);
    if (!where && !v["where"].isNull())
        return broken("place");
    Entry entry{*id, *hlc, *act, *scope, *undoes, *entity, *type, v["fields"].map(), {}, *by, *at, where};
    for (const Value &item : v["prev"].list()) {
        if (item.list().size() != 2)
            return broken("predecessors");
        const auto prev = readEntryId(item.list()[0], item.list()[1]);
        if (!prev)
            return broken("predecessors");
        entry.prev.push_back(*prev);
    }
    return entry;
}

Hash chainHash(const Hash &previous, std::string_view bytes)
{
    Hasher hasher;
    hasher.add(previous.view());
    hasher.add(bytes);
    return hasher.finish();
}

} // namespace snugwalk

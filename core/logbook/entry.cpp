// SPDX-License-Identifier: Apache-2.0
// Entries to bytes and back.
#include "logbook/entry.hpp"

#include "base/cbor.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

constexpr std::int64_t entryFormat = 1;

void putId(std::string &out, const Id &id)
{
    if (id.isNull())
        out += cborNull;
    else
        putCborBytes(out, id.view());
}

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

// The members in the order of their encoded keys, written one by one: a tree of values for each entry would
// take longer than all the rest of reading it.
std::string canonicalBytes(const Entry &entry)
{
    std::string out;
    out.reserve(512);
    const auto key = [&out](std::string_view name) { putCborText(out, name); };
    const std::string stream = entry.id.stream.bytes();
    putCborHead(out, 5, 14);
    key("v");
    putCborNumber(out, entryFormat);
    key("at");
    putCborText(out, formatLocal(entry.at));
    key("by");
    putCborText(out, entry.by);
    key("act");
    putId(out, entry.act);
    key("hlc");
    putCborNumber(out, entry.hlc);
    key("seq");
    putCborNumber(out, entry.id.seq);
    key("prev");
    putCborHead(out, 4, entry.prev.size());
    for (const EntryId &id : entry.prev) {
        putCborHead(out, 4, 2);
        putCborBytes(out, id.stream.bytes());
        putCborNumber(out, id.seq);
    }
    key("type");
    putCborText(out, entry.type);
    key("scope");
    putId(out, entry.scope);
    key("where");
    putCbor(out, entry.where ? toValue(*entry.where) : Value());
    key("entity");
    putId(out, entry.entity);
    key("fields");
    putCborMap(out, entry.fields);
    key("stream");
    putCborBytes(out, stream);
    key("undoes");
    putId(out, entry.undoes);
    return out;
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

Id actIdOf(const Entry &first)
{
    std::string rest;
    putCborNumber(rest, first.id.seq);
    putCborNumber(rest, first.hlc);
    putCborBytes(rest, first.entity.view());
    putCborMap(rest, first.fields);
    return derivedId("act", first.id.stream.bytes(), rest);
}

Hash chainHash(const Hash &previous, std::string_view bytes)
{
    Hasher hasher;
    hasher.add(previous.view());
    hasher.add(bytes);
    return hasher.finish();
}

} // namespace snugwalk

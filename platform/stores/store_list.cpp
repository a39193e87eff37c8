// SPDX-License-Identifier: Apache-2.0
// The list is read and written whole; it is short.
#include "stores/store_list.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"
#include "logbook/files.hpp"
#include "stores/private_file.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t maxListBytes = std::size_t{1024} * 1024;
constexpr std::size_t maxAuthorityBytes = std::size_t{256} * 1024;
constexpr std::size_t maxLabel = 40;
constexpr std::size_t nonceBytes = 24;
constexpr std::array slugs = {"folder", "webdav", "file"};

fs::path listFile(const fs::path &folder) { return folder / "stores.json"; }

Error damaged(const fs::path &file)
{
    return {Errc::Corrupt, "the list of stores cannot be read", file.string(),
            "move the file away and add the stores again; no entry is lost by it"};
}

std::optional<StoreKind> kindOf(const std::string &slug)
{
    for (std::size_t i = 0; i < slugs.size(); ++i) {
        if (slug == slugs.at(i))
            return static_cast<StoreKind>(i);
    }
    return std::nullopt;
}

std::string textOf(const Value &v) { return v.asString().value_or(""); }

Value valueOf(const StoreRecord &store)
{
    Value::Map map{{"name", store.name},           {"kind", slugOf(store.kind)},
                   {"place", store.place},         {"user", store.user},
                   {"authority", store.authority}, {"sealed_password", store.sealedPassword}};
    if (store.last) {
        Value::Map last = store.last->counts;
        last["at"] = formatLocal(store.last->at);
        map["last"] = last;
    }
    return map;
}

std::optional<StoreRecord> recordFrom(const Value &v)
{
    const auto kind = kindOf(textOf(v["kind"]));
    StoreRecord store{textOf(v["name"]), StoreKind::Folder,      textOf(v["place"]),
                      textOf(v["user"]), textOf(v["authority"]), textOf(v["sealed_password"]),
                      std::nullopt};
    if (!kind || !checkStoreLabel(store.name) || store.place.empty())
        return std::nullopt;
    store.kind = *kind;
    if (const auto at = parseLocal(textOf(v["last"]["at"]))) {
        store.last = LastExchange{*at, v["last"].map()};
        store.last->counts.erase("at");
    }
    return store;
}

std::string boundTo(const StoreRecord &store)
{
    return encodeCbor(Value::List{"snugwalk store password", store.place, store.user, store.authority});
}

} // namespace

std::string_view slugOf(StoreKind kind) { return slugs.at(static_cast<std::size_t>(kind)); }

Value::Map countsOf(const ExchangeSummary &summary)
{
    return {{"entries_sent", summary.entriesSent},
            {"entries_received", summary.entriesReceived},
            {"files_forwarded", summary.filesForwarded},
            {"photos_sent", summary.photosSent},
            {"thumbnails_received", summary.thumbnailsReceived},
            {"photos_received", summary.photosReceived},
            {"photos_left", summary.photosLeft},
            {"aside", summary.aside},
            {"unopened", summary.unopened},
            {"gaps", summary.gaps},
            {"conflicts", summary.conflicts},
            {"damaged", summary.damaged},
            {"bytes_read", summary.bytesRead},
            {"bytes_written", summary.bytesWritten},
            {"new_stream", summary.forked}};
}

Status checkStoreLabel(const std::string &name)
{
    const bool fine =
        !name.empty() && name.size() <= maxLabel && std::all_of(name.begin(), name.end(), [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
                   c == '_';
        });
    return fine ? done()
                : Status(Error{Errc::InvalidInput, "not a name for a store: \"" + name + "\"", "",
                               "use 1 to 40 letters, digits, - or _"});
}

Result<std::vector<StoreRecord>> storeList(const fs::path &folder)
{
    const fs::path file = listFile(folder);
    const auto text = readFile(file, maxListBytes);
    if (!text && text.error().code == Errc::NotFound)
        return std::vector<StoreRecord>();
    if (!text)
        return text.error();
    const Result<Value> v = parseJson(*text);
    if (!v || !(*v)["stores"].isList())
        return damaged(file);
    std::vector<StoreRecord> stores;
    for (const Value &item : (*v)["stores"].list()) {
        const auto store = recordFrom(item);
        if (!store)
            return damaged(file);
        stores.push_back(*store);
    }
    return stores;
}

Status keepStoreList(const fs::path &folder, const std::vector<StoreRecord> &stores)
{
    Value::List list;
    for (const StoreRecord &store : stores)
        list.push_back(valueOf(store));
    return replacePrivateFile(listFile(folder), toJson(Value::Map{{"stores", list}}, true) + "\n");
}

Result<StoreRecord> storeNamed(const fs::path &folder, const std::string &name)
{
    const auto stores = storeList(folder);
    if (!stores)
        return stores.error();
    std::vector<std::string> names;
    for (const StoreRecord &store : *stores) {
        if (store.name == name)
            return store;
        names.push_back(store.name);
    }
    return Error{Errc::NotFound, "no such store: " + name, "",
                 names.empty() ? "add one with `snugwalk store add`" : "there are " + join(names, ", ")};
}

Status addStore(const fs::path &folder, const StoreRecord &store)
{
    SNUG_TRY(checkStoreLabel(store.name));
    auto stores = storeList(folder);
    if (!stores)
        return stores.error();
    const bool isTaken = std::any_of(stores->begin(), stores->end(),
                                     [&](const StoreRecord &s) { return s.name == store.name; });
    if (isTaken)
        return Error{Errc::Conflict, "a store has this name already", store.name,
                     "choose another, or remove that one first"};
    stores->push_back(store);
    return keepStoreList(folder, *stores);
}

Status removeStore(const fs::path &folder, const std::string &name)
{
    const auto known = storeNamed(folder, name);
    auto stores = storeList(folder);
    if (!known || !stores)
        return known ? stores.error() : known.error();
    std::erase_if(*stores, [&](const StoreRecord &store) { return store.name == name; });
    return keepStoreList(folder, *stores);
}

Status noteExchange(const fs::path &folder, const std::string &name, const LastExchange &last)
{
    auto stores = storeList(folder);
    if (!stores)
        return stores.error();
    for (StoreRecord &store : *stores) {
        if (store.name == name)
            store.last = last;
    }
    return keepStoreList(folder, *stores);
}

Result<std::string> authorityFrom(const fs::path &file)
{
    const auto text = readFile(file, maxAuthorityBytes);
    if (!text)
        return text;
    if (text->find("PRIVATE KEY-----") != std::string::npos)
        return Error{Errc::InvalidInput, "a private key does not belong in a file to be given away",
                     file.string(), "give the authority's certificate alone"};
    if (!isUtf8(*text) || text->find("-----BEGIN CERTIFICATE-----") == std::string::npos)
        return Error{Errc::InvalidInput, "no certificate in PEM form in this file", file.string(),
                     "export the authority's certificate as PEM"};
    return text;
}

Result<std::string> sealPassword(SecretKeeper &keeper, const StoreRecord &store, const std::string &password)
{
    const auto secret = secretOf(keeper, "stores");
    if (!secret)
        return secret.error();
    const std::string nonce = randomBytes(nonceBytes);
    return toHex(nonce + seal(*secret, nonce, password, boundTo(store)));
}

Result<std::string> passwordOf(SecretKeeper &keeper, const StoreRecord &store)
{
    if (store.sealedPassword.empty())
        return std::string();
    const Error fault{Errc::Corrupt, "the password of this store does not open", store.name,
                      "remove the store and add it again with its password"};
    const auto secret = keeper.find("stores");
    if (!secret)
        return secret.error();
    const auto bytes = fromHex(store.sealedPassword);
    if (!*secret || !bytes || bytes->size() < nonceBytes)
        return fault;
    const auto plain = unseal(**secret, std::string_view(*bytes).substr(0, nonceBytes),
                              std::string_view(*bytes).substr(nonceBytes), boundTo(store));
    return plain ? plain : Result<std::string>(fault);
}

} // namespace snugwalk

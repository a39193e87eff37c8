// SPDX-License-Identifier: Apache-2.0
// store add, list, remove.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "device/device.hpp"
#include "logbook/files.hpp"
#include "stores/new_store.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    NewStore store;
    std::string passwordFile;
};

Value storeJson(const StoreRecord &store)
{
    Value::Map map{{"name", store.name},
                   {"kind", slugOf(store.kind)},
                   {"place", store.place},
                   {"user", store.user},
                   {"password", !store.sealedPassword.empty()},
                   {"last", Value()}};
    map["authority"] = store.authority.empty() ? Value() : Value(blake2b(store.authority).text());
    if (store.last) {
        Value::Map last = store.last->counts;
        last["at"] = formatLocal(store.last->at);
        map["last"] = last;
    }
    return map;
}

std::string storeLine(const StoreRecord &store)
{
    std::string line = store.name + "  " + std::string(slugOf(store.kind)) + "  " + store.place;
    if (!store.last)
        return line + "  no exchange yet\n";
    const Value counts(store.last->counts);
    return line + "  last " + formatLocalShort(store.last->at) + ": " +
           std::to_string(counts["entries_sent"].asInt().value_or(0)) + " sent, " +
           std::to_string(counts["entries_received"].asInt().value_or(0)) + " received\n";
}

Result<std::string> passwordFrom(const std::string &file)
{
    constexpr std::size_t most = 4096;
    const auto text = readFile(file, most);
    if (!text)
        return text.error();
    std::string line(split(*text, '\n')[0]);
    if (!line.empty() && line.back() == '\r')
        line.pop_back();
    return line.empty()
               ? Result<std::string>(Error{Errc::InvalidInput, "no password in the file's first line", file,
                                           "write it there, alone"})
               : line;
}

Result<Answer> add(const Typed &typed)
{
    NewStore wanted = typed.store;
    const bool isWeb = wanted.kind == "webdav";
    if (!isWeb && (!wanted.user.empty() || !typed.passwordFile.empty() || !wanted.authority.empty()))
        return Error{Errc::Usage, "user, password and authority belong to webdav", wanted.kind,
                     "leave them out"};
    if (!typed.passwordFile.empty()) {
        auto password = passwordFrom(typed.passwordFile);
        if (!password)
            return password.error();
        wanted.password = std::move(password).value();
    }
    const auto secrets = keeper();
    const auto store = newStore(wanted, *secrets);
    if (!store)
        return store.error();
    SNUG_TRY(addStore(dataFolder(), *store));
    std::string text = storeLine(*store);
    if (!store->sealedPassword.empty())
        text += "The password is kept in " + secrets->says() + ".\n";
    return Answer{storeJson(*store), text};
}

Result<Answer> list()
{
    const auto stores = storeList(dataFolder());
    if (!stores)
        return stores.error();
    Value::List json;
    std::string text;
    for (const StoreRecord &store : *stores) {
        json.push_back(storeJson(store));
        text += storeLine(store);
    }
    return Answer{Value::Map{{"stores", json}},
                  stores->empty() ? "no store yet; add one with `snugwalk store add`\n" : text};
}

Result<Answer> remove(const std::string &name)
{
    SNUG_TRY(removeStore(dataFolder(), name));
    return Answer{Value::Map{{"removed", name}},
                  name + " is no longer on this device's list; what lies there stays there\n"};
}

} // namespace

void addStoreCommands(CLI::App &app, Registry &registry)
{
    CLI::App *store = app.add_subcommand("store", "places where devices meet to exchange entries");
    store->require_subcommand(1);
    auto typed = std::make_shared<Typed>();
    CLI::App *adding = store->add_subcommand("add", "remember a place; nothing is sent yet");
    adding->add_option("name", typed->store.name, "what you call it")->required();
    adding
        ->add_option("kind", typed->store.kind,
                     "folder (stick, shared folder), webdav, or file (one file to hand over)")
        ->required()
        ->check(CLI::IsMember({"folder", "webdav", "file"}));
    adding->add_option("place", typed->store.place, "a folder that is there, an https address, or a file")
        ->required();
    adding->add_option("--user", typed->store.user, "webdav: who signs in");
    adding->add_option(
        "--password-file", typed->passwordFile,
        "webdav: a file whose first line is the password. It is copied, sealed with a secret that lies in "
        "the key store of the system; where there is none, in your data folder as a file for your user "
        "alone (0600) and without a lock: who can read your files can read the password");
    adding->add_option(
        "--authority", typed->store.authority,
        "webdav: PEM file of the only authority to believe (default: the system's). Its certificate is "
        "kept with the store, the file is not read again; whether a server is the one you named is "
        "always checked");
    registry.add(
        *adding,
        "  snugwalk store add stick folder /media/stick\n"
        "  snugwalk store add home webdav https://example.org/dav/rig/ --user rata --password-file pw.txt\n"
        "  snugwalk store add mail file ~/heron.snug",
        [typed](Session &) { return add(*typed); });
    registry.add(*store->add_subcommand("list", "the stores of this device and their last exchange"),
                 "  snugwalk store list", [](Session &) { return list(); });
    auto name = std::make_shared<std::string>();
    CLI::App *removing = store->add_subcommand("remove", "forget a store and its password; its files stay");
    removing->add_option("name", *name, "as `store list` has it")->required();
    registry.add(*removing, "  snugwalk store remove stick", [name](Session &) { return remove(*name); });
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// From what a page asks for to the list of stores.
#include "places/known_places.hpp"

#include "stores/open_store.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

// Beside the counts of the last exchange; other readers of the list leave it alone.
constexpr const char *carriedMember = "entries_carried";

Result<StoreRecord> recordOf(const NewPlace &place, SecretKeeper &secrets)
{
    SNUG_TRY(checkStoreLabel(place.name));
    StoreRecord store{place.name, StoreKind::Folder, place.where, "", "", "", std::nullopt};
    if (place.kind != "webdav") {
        store.kind = place.kind == "file" ? StoreKind::File : StoreKind::Folder;
        store.place = fs::absolute(place.where).lexically_normal().string();
        return store;
    }
    store.kind = StoreKind::Webdav;
    store.user = place.user;
    if (place.password.empty())
        return store;
    const auto sealed = sealPassword(secrets, store, place.password);
    if (!sealed)
        return sealed.error();
    store.sealedPassword = *sealed;
    return store;
}

// A place that cannot be one is told now, not at the first exchange. Nothing is sent.
Status tryOut(SecretKeeper &secrets, const StoreRecord &store)
{
    const auto opened = openStore(secrets, store);
    if (!opened)
        return opened.error();
    std::error_code fault;
    const fs::path above = fs::path(store.place).parent_path();
    if (store.kind == StoreKind::File && !fs::is_directory(above, fault))
        return Error{Errc::NotFound, "the folder of the file is not there", above.string(), "make it first"};
    if (store.kind != StoreKind::Folder)
        return done();
    const auto listed = opened->store->list("");
    return listed ? done() : Status(listed.error());
}

} // namespace

KnownPlaces::KnownPlaces(fs::path folder)
    : m_folder(std::move(folder)), m_secrets(fileKeeper(m_folder / "secrets"))
{}

KnownPlaces::~KnownPlaces() = default;

Result<std::vector<SyncPlace>> KnownPlaces::list()
{
    const std::lock_guard lock(m_one);
    const auto stores = storeList(m_folder);
    if (!stores)
        return stores.error();
    std::vector<SyncPlace> places;
    for (const StoreRecord &store : *stores) {
        SyncPlace place{store.name, std::string(slugOf(store.kind)), store.place, std::nullopt, std::nullopt};
        if (store.last) {
            place.met = store.last->at;
            place.carried = Value(store.last->counts)[carriedMember].asInt();
        }
        places.push_back(std::move(place));
    }
    return places;
}

Status KnownPlaces::add(const NewPlace &place)
{
    const std::lock_guard lock(m_one);
    const auto store = recordOf(place, *m_secrets);
    if (!store)
        return store.error();
    SNUG_TRY(tryOut(*m_secrets, *store));
    return addStore(m_folder, *store);
}

Status KnownPlaces::remove(const std::string &name)
{
    const std::lock_guard lock(m_one);
    return removeStore(m_folder, name);
}

Result<OpenedPlace> KnownPlaces::open(const std::string &name)
{
    const std::lock_guard lock(m_one);
    const auto store = storeNamed(m_folder, name);
    if (!store)
        return store.error();
    auto opened = openStore(*m_secrets, *store);
    if (!opened)
        return opened.error();
    return OpenedPlace{std::move(opened->store), std::move(opened->finish)};
}

Status KnownPlaces::noteMet(const std::string &name, const LocalTime &at, std::int64_t carried,
                            const ExchangeSummary &summary)
{
    const std::lock_guard lock(m_one);
    Value::Map counts = countsOf(summary);
    counts[carriedMember] = carried;
    return noteExchange(m_folder, name, {at, counts});
}

} // namespace snugwalk

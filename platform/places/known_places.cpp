// SPDX-License-Identifier: Apache-2.0
// From what a page asks for to the list of stores.
#include "places/known_places.hpp"

#include "stores/new_store.hpp"
#include "stores/open_store.hpp"
#include "stores/system_keeper.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

// Beside the counts of the last exchange; other readers of the list leave it alone.
constexpr const char *carriedMember = "entries_carried";

} // namespace

KnownPlaces::KnownPlaces(fs::path folder) : m_folder(std::move(folder)) {}

KnownPlaces::~KnownPlaces() = default;

SecretKeeper &KnownPlaces::secrets()
{
    if (!m_secrets) // asks the machine, which the start of a program has no time for
        m_secrets = bestKeeper(m_folder / "secrets");
    return *m_secrets;
}

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
    const auto store = newStore(
        {place.name, place.kind, place.where, place.user, place.password, place.authority}, secrets());
    if (!store)
        return store.error();
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
    auto opened = openStore(secrets(), *store);
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

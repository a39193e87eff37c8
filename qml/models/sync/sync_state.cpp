// SPDX-License-Identifier: Apache-2.0
// Asking the logbook about its sharing.
#include "sync_state.hpp"

#include <algorithm>
#include <limits>

#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {
namespace {

Result<std::int64_t> unsentCount(Logbook &book, const Id &rig)
{
    constexpr auto all = std::numeric_limits<std::size_t>::max();
    const auto unsent = unsentOf(book, rig, all, all, [](const StreamId &) { return true; });
    return unsent ? Result<std::int64_t>(static_cast<std::int64_t>(unsent->size())) : unsent.error();
}

Result<std::vector<Photo>> photosElsewhere(Logbook &book, const Id &rig)
{
    auto photos = photosOf(book, rig);
    if (!photos)
        return photos;
    const PhotoStore folder(book.photoFolder());
    std::erase_if(*photos, [&](const Photo &photo) {
        const auto hash = Hash::parse(photo.hash);
        return !hash || folder.exists(*hash);
    });
    return photos;
}

Status readStores(Logbook &book, SyncPlaces &places, SyncState &state)
{
    const auto list = places.list();
    const auto carried = carriedEntries(book);
    if (!list || !carried)
        return list ? carried.error() : list.error();
    for (const SyncPlace &place : *list)
        state.stores.push_back({place, std::max<std::int64_t>(0, *carried - place.carried.value_or(0))});
    return done();
}

Status readConflicts(Logbook &book, SyncState &state)
{
    auto conflicts = conflictsOf(book, state.rig);
    auto aside = asideOf(book, state.rig);
    if (!conflicts || !aside)
        return conflicts ? aside.error() : conflicts.error();
    for (Conflict &conflict : *conflicts) {
        const Result<Thing> known = thing(book.db(), conflict.type, conflict.entity);
        state.conflicts.push_back({std::move(conflict), known ? known->doc : Value()});
    }
    for (SetAside &item : *aside) {
        Value doc(item.entry.fields);
        state.aside.push_back({std::move(item), std::move(doc)});
    }
    return done();
}

Status readMembers(Logbook &book, SyncState &state)
{
    const auto members = membersOf(book, state.rig);
    if (!members)
        return members.error();
    for (const auto &[device, member] : members->members)
        state.members.push_back(member);
    std::stable_sort(state.members.begin(), state.members.end(), [](const Member &a, const Member &b) {
        return std::pair(!a.role(), a.name) < std::pair(!b.role(), b.name);
    });
    const Member *me = members->find(state.self);
    if (me != nullptr)
        state.role = me->role();
    return done();
}

} // namespace

Result<std::int64_t> carriedEntries(Logbook &book)
{
    const auto rigs = sharedRigs(book);
    if (!rigs)
        return rigs.error();
    if (rigs->empty())
        return std::int64_t{0};
    auto count = book.db().number("SELECT count(*) FROM entry WHERE segment IS NOT NULL", 0);
    for (const auto &[rig, root] : *rigs) {
        const auto unsent = unsentCount(book, rig);
        if (!count || !unsent)
            return count ? unsent.error() : count.error();
        *count += *unsent;
    }
    return count;
}

Result<SyncState> readSyncState(Logbook &book, SyncPlaces *places, const Id &rig)
{
    SyncState state;
    state.rig = rig;
    state.self = book.device().deviceId();
    const auto rigs = sharedRigs(book);
    if (!rigs)
        return rigs.error();
    for (const auto &[shared, root] : *rigs) {
        state.shared = state.shared || shared == rig;
        state.joining = state.joining || !thing(book.db(), "rig", shared);
    }
    if (places != nullptr)
        SNUG_TRY(readStores(book, *places, state));
    if (!state.shared)
        return state;
    SNUG_TRY(readMembers(book, state));
    SNUG_TRY(readConflicts(book, state));
    const auto unsent = unsentCount(book, rig);
    auto photos = photosElsewhere(book, rig);
    if (!unsent || !photos)
        return unsent ? photos.error() : unsent.error();
    state.unsent = *unsent;
    state.elsewhere = std::move(photos).value();
    return state;
}

} // namespace snugwalk

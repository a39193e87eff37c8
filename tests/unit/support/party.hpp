// SPDX-License-Identifier: Apache-2.0
// A device with its logbook that meets others at a store. For programs that link sync.
#pragma once

#include <doctest/doctest.h>

#include "logbook/thing.hpp"
#include "support/book.hpp"
#include "sync/exchange.hpp"
#include "sync/memory_store.hpp"

namespace snugwalk::test {

struct Party {
    explicit Party(const std::string &seed) : home(seed), keys(home.book().device()) {}

    [[nodiscard]] Logbook &book() { return home.book(); }

    /// A rig with one finding and one mark, entered by this device.
    Id addRig(const std::string &name = "rig")
    {
        const Id rig = home.ids.next();
        set(rig, "rig", {{"name", name}});
        return rig;
    }

    EntryId set(const Id &entity, const std::string &type, Value::Map fields)
    {
        home.clock.advance(std::chrono::seconds(10));
        Act act;
        act.by = "somebody";
        act.changes = {{entity, type, std::move(fields)}};
        REQUIRE(book().record(act));
        return {book().stream(), book()
                                     .db()
                                     .number("SELECT max(seq) FROM entry JOIN stream ON stream.id = "
                                             "entry.stream WHERE own = 1")
                                     .value()};
    }

    void enroll(Party &other, const Id &rig, SyncRole role)
    {
        REQUIRE(joinRig(other.book(), rig, sharedRigs(book()).value().front().second));
        REQUIRE(
            enrollDevice(book(), keys, rig,
                         {other.keys.device.publicKey(), other.keys.pair.publicKey(), "other", role, ""}));
    }

    ExchangeSummary meet(Store &store, const ExchangeOptions &options = {})
    {
        const auto summary = exchange(book(), keys, store, options);
        REQUIRE_MESSAGE(summary, (summary ? "" : summary.error().what + " " + summary.error().where));
        return *summary;
    }

    [[nodiscard]] Value shown(const std::string &type, const Id &entity, const std::string &field)
    {
        const auto found = thing(book().db(), type, entity);
        return found ? found->doc[field] : Value();
    }

    [[nodiscard]] std::int64_t number(const std::string &sql) { return book().db().number(sql).value(); }

    TestBook home;
    Keys keys;
};

/// An owner who shares a rig, and a second device enrolled; both have met at the store.
struct Shared {
    explicit Shared(SyncRole role = SyncRole::Helper) : owner("owner"), other("other")
    {
        rig = owner.addRig();
        REQUIRE(shareRig(owner.book(), owner.keys, rig));
        owner.enroll(other, rig, role);
        owner.meet(store);
        other.meet(store);
    }
    void both()
    {
        for (int i = 0; i < 2; ++i) {
            owner.meet(store);
            other.meet(store);
        }
    }
    Party owner;
    Party other;
    Id rig;
    MemoryStore store;
};

} // namespace snugwalk::test

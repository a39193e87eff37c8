// SPDX-License-Identifier: Apache-2.0
// A place that cannot be one is told now, not at the first exchange.
#include "stores/new_store.hpp"

#include <filesystem>

#include "stores/open_store.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

std::string absolute(const std::string &path)
{
    return path.empty() ? path : fs::absolute(path).lexically_normal().string();
}

Status tryOut(const StoreRecord &store, SecretKeeper &keeper)
{
    const auto opened = openStore(keeper, store);
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

Result<StoreRecord> newStore(const NewStore &typed, SecretKeeper &keeper)
{
    SNUG_TRY(checkStoreLabel(typed.name));
    StoreRecord store{typed.name, StoreKind::Folder, typed.place, "", "", "", std::nullopt};
    if (typed.kind == "webdav") {
        store.kind = StoreKind::Webdav;
        store.user = typed.user;
        if (!typed.authority.empty()) {
            const auto authority = authorityFrom(typed.authority);
            if (!authority)
                return authority.error();
            store.authority = *authority;
        }
    } else {
        store.kind = typed.kind == "file" ? StoreKind::File : StoreKind::Folder;
        store.place = absolute(typed.place);
    }
    if (store.kind == StoreKind::Webdav && !typed.password.empty()) {
        const auto sealed = sealPassword(keeper, store, typed.password);
        if (!sealed)
            return sealed.error();
        store.sealedPassword = *sealed;
    }
    SNUG_TRY(tryOut(store, keeper));
    return store;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// One maker a kind.
#include "stores/open_store.hpp"

#include "sync/bundle_store.hpp"
#include "sync/folder_store.hpp"

namespace snugwalk {
namespace {

Result<OpenedStore> openFile(const StoreRecord &store)
{
    auto bundle = BundleStore::open(store.place);
    if (!bundle)
        return bundle.error();
    BundleStore *open = bundle->get();
    return OpenedStore{std::move(bundle).value(), [open] { return open->finish(); }};
}

} // namespace

Result<OpenedStore> openStore(SecretKeeper &keeper, const StoreRecord &store)
{
    const auto nothing = [] { return done(); };
    if (store.kind == StoreKind::Folder)
        return OpenedStore{std::make_unique<FolderStore>(store.place), nothing};
    if (store.kind == StoreKind::File)
        return openFile(store);
    const auto password = passwordOf(keeper, store);
    if (!password)
        return password.error();
    auto opened = openWebdav(store, *password);
    if (!opened)
        return opened.error();
    return OpenedStore{std::move(opened).value(), nothing};
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// WebDAV by Qt: its network classes want an application object, which the command line has not.
#include <QCoreApplication>

#include "stores/open_store.hpp"
#include "webdav/webdav_store.hpp"

namespace snugwalk {
namespace {

void needApplication()
{
    if (QCoreApplication::instance() != nullptr)
        return;
    static int count = 1;
    static char name[] = "snugwalk";
    static char *arguments[] = {name, nullptr};
    static QCoreApplication application(count, arguments);
}

} // namespace

Result<std::unique_ptr<Store>> openWebdav(const StoreRecord &store, const std::string &password)
{
    needApplication();
    WebdavSettings settings;
    settings.address = store.place;
    settings.user = store.user;
    settings.password = password;
    settings.authority = store.authority;
    auto opened = WebdavStore::open(settings);
    if (!opened)
        return opened.error();
    return std::unique_ptr<Store>(std::move(opened).value());
}

} // namespace snugwalk

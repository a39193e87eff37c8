// SPDX-License-Identifier: Apache-2.0
// A program built without Qt has no WebDAV, and says so.
#include "stores/open_store.hpp"

namespace snugwalk {

Result<std::unique_ptr<Store>> openWebdav(const StoreRecord &store, const std::string & /*password*/)
{
    return Error{Errc::Unsupported, "this program was built without WebDAV", store.place,
                 "build it with the app (Qt 6), or use a folder or a file to hand over"};
}

} // namespace snugwalk

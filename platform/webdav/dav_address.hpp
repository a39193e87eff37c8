// SPDX-License-Identifier: Apache-2.0
// Where a WebDAV folder is, and what may be sent there.
#pragma once

#include <QUrl>
#include <string>

#include "base/result.hpp"

namespace snugwalk {

/// The folder's address, with a slash at its end. https, or http to this machine itself; a password only
/// ever over https. \returns `InvalidInput` with what is wrong, never showing a password.
[[nodiscard]] Result<QUrl> davAddress(const std::string &text, bool withPassword);

/// The address of `name` (see `nameIsFine`) below `root`; "" is `root` itself.
[[nodiscard]] QUrl davChild(const QUrl &root, std::string_view name);

} // namespace snugwalk

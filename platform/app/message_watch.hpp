// SPDX-License-Identifier: Apache-2.0
// Remembers what Qt and QML warn about.
#pragma once

#include <QStringList>

namespace snugwalk {

/// One at a time; messages go on to standard error all the same.
class MessageWatch {
public:
    MessageWatch();
    ~MessageWatch();
    MessageWatch(const MessageWatch &) = delete;
    MessageWatch &operator=(const MessageWatch &) = delete;
    /// Warnings and worse so far, from any thread.
    [[nodiscard]] QStringList warnings() const;
};

} // namespace snugwalk

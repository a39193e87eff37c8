// SPDX-License-Identifier: Apache-2.0
// A throw-away copy of a logbook, so that pictures and tests never write into a real one.
#pragma once

#include <memory>

#include <QTemporaryDir>

#include "base/result.hpp"

namespace snugwalk {

/// Its photos are those of the original, by a link.
class ScratchBook {
public:
    /// \param book a closed logbook; an empty name, or one that is not there yet, gives an empty logbook.
    /// \returns `Io`.
    [[nodiscard]] static Result<ScratchBook> copyOf(const QString &book);
    [[nodiscard]] QString file() const { return m_folder->filePath(QStringLiteral("copy.snugwalk")); }

private:
    std::unique_ptr<QTemporaryDir> m_folder = std::make_unique<QTemporaryDir>();
};

} // namespace snugwalk

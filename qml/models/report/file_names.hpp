// SPDX-License-Identifier: Apache-2.0
// Names of files that people are offered, and addresses they choose.
#pragma once

#include <filesystem>

#include <QString>
#include <QStringList>

namespace snugwalk {

/// An address in the person's home: the parts in letters that every file system takes, joined by dashes.
[[nodiscard]] QString homeFile(const QStringList &parts, const QString &ending);
/// \param file a file's address or path
[[nodiscard]] std::filesystem::path pathOfFile(const QString &file);

} // namespace snugwalk

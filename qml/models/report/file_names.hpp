// SPDX-License-Identifier: Apache-2.0
// Names of files that people are offered, and addresses they choose.
#pragma once

#include <string>

#include <QString>
#include <QStringList>

#include "base/result.hpp"

namespace snugwalk {

/// An address in the person's home: the parts in letters that every file system takes, joined by dashes.
[[nodiscard]] QString homeFile(const QStringList &parts, const QString &ending);
/// Writes all of it; the worker's work. \param file a file's address or path \returns the file's name
[[nodiscard]] Result<std::string> writeToFile(const QString &file, const std::string &bytes);

} // namespace snugwalk

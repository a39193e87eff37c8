// SPDX-License-Identifier: Apache-2.0
// Everything a model shows, as JSON to lay beside a kept file.
#pragma once

#include <QByteArray>
#include <QObject>

namespace snugwalk::test {

/// Properties by name; list models as their rows, at most `rowLimit` each.
[[nodiscard]] QByteArray dumpOf(const QObject &model, int rowLimit);

/// Compares with tests/model/golden/<name>.json. With SNUGWALK_WRITE_GOLDEN set, writes that file and
/// fails, so that no run that writes ever passes.
[[nodiscard]] bool isAsKept(const QByteArray &dump, const QByteArray &name);

} // namespace snugwalk::test

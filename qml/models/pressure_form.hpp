// SPDX-License-Identifier: Apache-2.0
// The tire pressure computation between typed texts and results in words.
#pragma once

#include <map>

#include <QVariantList>

#include "snapshot.hpp"

namespace snugwalk {

struct PressureAnswer {
    QVariantList results; ///< [{label, value, range, basis, source, warnings}]
    QString problem;
};

/// What the rig's plates say, by the names of `BenchModel::typed`.
[[nodiscard]] std::map<QString, QString> pressureDefaults(const Shown &shown);

/// \param typed texts by name; numbers without a unit are in the person's units.
[[nodiscard]] PressureAnswer workPressure(const Voice &voice, const std::map<QString, QString> &typed);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Steps that the journeys through the app share.
#pragma once

#include <QString>
#include <QVariant>

#include "finger.hpp"
#include "walk_model.hpp"
#include "wiring.hpp"

class QAbstractItemModel;

namespace snugwalk::journey {

/// A line to the driver, at once.
void say(const QString &line);
[[nodiscard]] QString placeOf(Wiring &app);
/// Keeps a picture of the window.
void grab(Wiring &app, const QString &folder, const QString &name);
[[nodiscard]] QVariant cell(const QAbstractItemModel &model, int row, const char *role);
[[nodiscard]] int lineTitled(const WalkModel &walk, const QString &title);
/// Cautions come in full first; a person reads them and goes on.
void readCautions(Finger &finger, const WalkModel &walk);
/// By the list of all lines.
void goToLine(Finger &finger, WalkModel &walk, const QString &title);

} // namespace snugwalk::journey

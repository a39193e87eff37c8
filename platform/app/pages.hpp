// SPDX-License-Identifier: Apache-2.0
// Every page of the app, for pictures and for the self-test.
#pragma once

#include <QStringList>

namespace snugwalk {

class Wiring;

/// Names for `currentPlace` of Main.qml, home first.
[[nodiscard]] const QStringList &pageNames();

/// Opens a page and waits until it stands still; false when it did not settle.
[[nodiscard]] bool openPage(Wiring &wiring, const QString &name);

/// Sees to it that a walk is open, so that its pages have something to show.
[[nodiscard]] bool openSomeWalk(Wiring &wiring);

} // namespace snugwalk

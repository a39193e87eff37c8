// SPDX-License-Identifier: Apache-2.0
// The logbooks of this device: which one is open, the demo's, and the way from one to another.
#pragma once

#include <functional>
#include <string>

#include <QString>
#include <QStringList>

#include "base/result.hpp"

namespace snugwalk {

/// Given by the program; functions that are not set are not offered.
struct BookPlaces {
    QString current;   ///< the file that is open
    QString own;       ///< the person's own logbook, the one the app begins with
    QString demo;      ///< where the invented rig's logbook is, or would be
    QStringList known; ///< the person's logbooks, the demo's not among them
    bool hasDemo = false;
    /// Makes the demo's logbook where there is none; on the worker's thread, told after each act.
    std::function<Status(const std::function<void(int, int)> &progress)> makeDemo;
    /// A new logbook of a backup; on the worker's thread. \returns its file.
    std::function<Result<std::string>(const std::string &backup)> restore;
    /// Goes over to another logbook once the event loop is back; `forgotten` and what lies beside it is
    /// removed once nobody has it open. An empty `file` stays where one is, an empty `forgotten` removes
    /// nothing.
    std::function<void(const QString &file, const QString &forgotten)> open;
};

} // namespace snugwalk

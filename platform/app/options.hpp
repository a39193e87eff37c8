// SPDX-License-Identifier: Apache-2.0
// What the program was asked on its command line.
#pragma once

#include <optional>

#include <QStringList>

#include "base/result.hpp"
#include "base/time.hpp"

namespace snugwalk {

struct Options {
    QString book;                 ///< logbook file; the usual one when empty
    QString screensFolder;        ///< draw every page into this folder
    QString screensOnly;          ///< of these, the pages whose name begins so
    QString nmeaFile;             ///< positions from a log
    QString cameraFolder;         ///< photos from files, as a camera would give them
    QString language;             ///< en or es; the kept one or the system's when empty
    std::optional<LocalTime> now; ///< a clock that stands still
    QString paper;                ///< kind of report to write, without a window
    QString plot;                 ///< kind of plot to write, with what it is of
    QString paperFile;            ///< where to, its ending says as what
    QString paperSize;            ///< a4 or letter
    QString paperPlace;           ///< left_out, coarse or exact
    bool ownData = false;         ///< photos keep what the camera wrote into them
    bool usUnits = false;         ///< of that report
    bool selfTest = false;
    bool untilUsable = false;
    bool help = false;
    QString helpText;
};

/// \returns `Usage` for an unknown option or a value that cannot be read.
[[nodiscard]] Result<Options> readOptions(const QStringList &arguments);

} // namespace snugwalk

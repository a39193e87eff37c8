// SPDX-License-Identifier: Apache-2.0
// A plot laid out for the screen.
#pragma once

#include <QString>
#include <QVariantMap>

#include "report/plot/plot_sheet.hpp"
#include "report/plot/plot_voice.hpp"
#include "voice.hpp"

namespace snugwalk {

/// How large, in pixels, and in which letters.
struct ScreenLook {
    double width = 0.0, height = 0.0;
    double letter = 15.0;
    double stroke = 2.0;
    QString family;
};

/// {width, height, letter, lineHeight, left, top, across, up, inks: [{kind, tone, xy, width, dash, shape,
/// size}], words: [{x, y, text, side, bold, quiet, width}], xs: [x of each row]}; empty for a plot without
/// data.
[[nodiscard]] QVariantMap plotPicture(const Plot &plot, const ScreenLook &look);

/// Words, numbers and dates as the person reads them. Holds the voice by reference.
[[nodiscard]] PlotVoice screenVoice(const Voice &voice);

} // namespace snugwalk

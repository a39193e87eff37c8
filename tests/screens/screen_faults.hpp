// SPDX-License-Identifier: Apache-2.0
// What a person could not read, reach or name on a window as it stands.
#pragma once

#include <QImage>
#include <QStringList>

class QQuickWindow;

namespace snugwalk::screens {

struct Wanted {
    int target = 48;       ///< least side of what is pressed, in device-independent pixels
    double contrast = 4.5; ///< of text, WCAG 2.2 SC 1.4.3; large text 3, or this where it is higher than AA's
};

/// Each fault is one line: what, which words, figures. Looked at are:
/// words that are cut, lie outside or over other words; their contrast against what is behind them in the
/// picture; controls too small, without a name for a screen reader, or not reached by the Tab key. \param
/// picture of the window, of its size
[[nodiscard]] QStringList faultsOf(QQuickWindow &window, const QImage &picture, const Wanted &wanted);

/// Contrast of two colours, 1 to 21. Source [WCAG22], relative luminance and contrast ratio.
[[nodiscard]] double contrastOf(const QColor &one, const QColor &other);

} // namespace snugwalk::screens

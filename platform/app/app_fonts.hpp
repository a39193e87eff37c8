// SPDX-License-Identifier: Apache-2.0
// The app's own letters, from its resources.
#pragma once

namespace snugwalk {

/// Once, before the first window or page is drawn.
void loadFonts();

} // namespace snugwalk

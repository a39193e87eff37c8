// SPDX-License-Identifier: Apache-2.0
// When a page stands still: everything read, decoded and laid out.
#pragma once

class QQuickWindow;

namespace snugwalk {

class Session;

/// Runs the event loop until the session waits for nothing and no image or part of a page is still
/// loading. False when that took half a minute.
[[nodiscard]] bool waitUntilSettled(const Session &session, QQuickWindow &window);

} // namespace snugwalk

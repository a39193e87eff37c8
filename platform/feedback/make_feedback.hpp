// SPDX-License-Identifier: Apache-2.0
// The maker of feedback.
#pragma once

#include <memory>

#include "feedback_source.hpp"

namespace snugwalk {

/// The machine's own; what it can do is asked when someone wants to know.
[[nodiscard]] std::unique_ptr<FeedbackSource> systemFeedback();

} // namespace snugwalk

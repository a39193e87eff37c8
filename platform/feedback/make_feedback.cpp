// SPDX-License-Identifier: Apache-2.0
#include "feedback/make_feedback.hpp"

#include "feedback/qt_feedback.hpp"

namespace snugwalk {

std::unique_ptr<FeedbackSource> systemFeedback() { return std::make_unique<QtFeedback>(); }

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// What went wrong, and what to do now, in the language of the person.
#pragma once

#include <QString>

#include "base/result.hpp"

namespace snugwalk {

struct ErrorText {
    QString what;
    QString act;
};

/// From the code, and the place it happened at; the core's English words stay in the log.
[[nodiscard]] ErrorText errorText(const Error &error);

} // namespace snugwalk

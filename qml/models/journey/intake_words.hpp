// SPDX-License-Identifier: Apache-2.0
// What was taken in, and what was wrong with it, in words.
#pragma once

#include <QStringList>

#include "base/result.hpp"
#include "intake.hpp"
#include "voice.hpp"

namespace snugwalk {

/// What the logbook has now, a sentence each; what was left out too.
[[nodiscard]] QStringList intakeOutcome(const Voice &voice, const IntakeFound &found);
/// {what, where, reason, act}: what happened to which file, the line, the reader's own words, what to do.
[[nodiscard]] QVariantMap intakeFault(const Error &error, const QString &fileName);
/// "3.4 of 12.0 MB".
[[nodiscard]] QString bytesText(const Voice &voice, long long read, long long size);

} // namespace snugwalk

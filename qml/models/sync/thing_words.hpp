// SPDX-License-Identifier: Apache-2.0
// Things of the logbook and single fields of them, told to a person who has to choose between two.
#pragma once

#include <QString>

#include "base/value.hpp"
#include "voice.hpp"

namespace snugwalk {

/// "Mark: Roof vent sealant", "Mend of 3 February 2026: resealed" from the fields that are known.
[[nodiscard]] QString thingTitle(const Voice &voice, const std::string &type, const Value &doc);
[[nodiscard]] QString fieldTitle(const Voice &voice, const std::string &field);
/// Any value of a field; what has no words of its own is written as it is stored.
[[nodiscard]] QString fieldValue(const Voice &voice, const std::string &field, const Value &value);
/// "grade: 3"
[[nodiscard]] QString fieldLine(const Voice &voice, const std::string &field, const Value &value);
/// Why an entry was set aside.
[[nodiscard]] QString asideReason(const std::string &reason);

} // namespace snugwalk

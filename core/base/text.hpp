// SPDX-License-Identifier: Apache-2.0
// Small helpers over text that every folder needs, free of locale.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace snugwalk {

[[nodiscard]] std::string_view trim(std::string_view text);
/// Splits at every `separator`; "a,,b" gives three parts, "" gives one empty part.
[[nodiscard]] std::vector<std::string_view> split(std::string_view text, char separator);
/// ASCII letters only; other bytes stay as they are.
[[nodiscard]] std::string lowerAscii(std::string_view text);
[[nodiscard]] std::string join(const std::vector<std::string> &parts, std::string_view separator);
[[nodiscard]] std::string replaceAll(std::string text, std::string_view from, std::string_view to);

/// True when `text` is well-formed UTF-8 [RFC3629]: no overlong forms, no surrogates.
[[nodiscard]] bool isUtf8(std::string_view text);

/// Reads a decimal number in full, independent of locale; nothing for "", "1x", "nan", "inf".
[[nodiscard]] std::optional<double> parseDouble(std::string_view text);
[[nodiscard]] std::optional<long long> parseInteger(std::string_view text);

/// Fixed notation with `decimals` digits; "-0.0" is printed "0.0".
[[nodiscard]] std::string fixed(double value, int decimals);

/// Lower-case hexadecimal of bytes, and back (nothing when malformed).
[[nodiscard]] std::string toHex(std::string_view bytes);
[[nodiscard]] std::optional<std::string> fromHex(std::string_view hex);

} // namespace snugwalk

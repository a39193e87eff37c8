// SPDX-License-Identifier: Apache-2.0
// Numbers as a language writes them, made into the plain form that every parser here reads.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace snugwalk {

/// Which mark splits off the decimals, and which one groups thousands: '.' and ',' in English, ',' and '.'
/// in German and Spanish, ',' and ' ' in French.
struct NumberStyle {
    char decimal = '.';
    char grouping = ',';
};

/// A number that its language reads one way and its neighbour a thousand times off: "1.250" is 1250 in
/// German, yet a gauge or a keyboard made elsewhere writes 1.25 so.
struct DoubtfulNumber {
    std::string typed; ///< "1.250"
    std::string taken; ///< "1250"
    std::string other; ///< how the other meaning is written in this style: "1,250"
};

struct PlainNumbers {
    std::string text;
    std::optional<DoubtfulNumber> doubtful; ///< the first such number
};

/// Rewrites each number in `typed` with a decimal point and without grouping: "3,215 m" typed in Spanish
/// becomes "3.215 m", "1.250 kg" in German "1250 kg". All else stays as it is, also numbers that follow no
/// rule ("1,2,3"), which the parsers then refuse.
///
/// The marks decide before the style does: with both marks the last is the decimal one ("1.250,5" and
/// "1,250.5" alike); a mark that comes twice groups; a mark not followed by exactly three digits, or after
/// a zero or more than three digits, splits off decimals ("4,5", "0.125"). Only one mark between one to
/// three digits and three digits is left to the style: its decimal mark splits off decimals without doubt.
/// Its grouping mark groups; a mark that is neither ('.' in French) splits off decimals; both are doubtful,
/// as a slip of the mark there is a slip by a thousand. In English ',' groups without doubt.
[[nodiscard]] PlainNumbers plainNumbers(std::string_view typed, NumberStyle style);

} // namespace snugwalk

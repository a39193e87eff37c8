// SPDX-License-Identifier: Apache-2.0
// What a line got the last time someone walked along it.
#pragma once

#include <QVariantMap>

#include "snapshot.hpp"

namespace snugwalk {

/// {mark, words, photo} of the newest earlier walk that marked one of `points`, of its worst mark there;
/// empty when none did. `words` as "last: looked, pass, 12 May 2027, A.; 448 kPa": shown, never copied in.
/// `photo` is the last one of these points, "" for none.
[[nodiscard]] QVariantMap lastTime(const Shown &shown, const std::vector<std::string> &points,
                                   const Id &walk);

/// Reasons of "could not look" for one press, most likely first: what was said of these points before, then
/// the risky reach that comes first everywhere, then what this rig's walks say most often. [{slug, text}]
[[nodiscard]] QVariantList usualReasons(const Shown &shown, const std::vector<std::string> &points, int most);

} // namespace snugwalk

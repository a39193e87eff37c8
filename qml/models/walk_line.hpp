// SPDX-License-Identifier: Apache-2.0
// What is shown of one line of the tape: its points, cautions, findings already known, choices.
#pragma once

#include <set>

#include <QVariantList>

#include "snapshot.hpp"
#include "walk/progress.hpp"

namespace snugwalk {

/// [{slug, title, look, pass, state}]
[[nodiscard]] QVariantList linePoints(const Voice &voice, const TapeLine &line,
                                      const std::vector<Mark> &marks);

/// Codes of the cautions on a line, each once, in the order of the points.
[[nodiscard]] std::vector<std::string> lineCautions(const Catalogue &catalogue, const TapeLine &line);

/// [{slug, word}] of what can be wrong with a point; "other" last.
[[nodiscard]] QVariantList defectChoices(const Catalogue &catalogue, const Voice &voice,
                                         std::string_view point);
/// [{grade, word}], 1 to 5.
[[nodiscard]] QVariantList gradeChoices(const Voice &voice, std::string_view point);
/// [{slug, text}]
[[nodiscard]] QVariantList reasonChoices(const Voice &voice);

/// Findings of the line's points that are not closed, in the order of their numbers:
/// [{id, point, number, words, grade, gradeText, grades, place, photo, kind, since, status, mended}].
/// `number` as on the drawing, 0 = not there; `mended` the date of the last mend.
[[nodiscard]] QVariantList openFindingsOf(const Shown &shown, const std::vector<std::string> &points,
                                          const std::vector<Id> &numbered);

/// Open findings of these points without a look on `walk`; those that wait for a confirming pass are not
/// among them.
[[nodiscard]] int untoldFindings(const Shown &shown, const std::vector<std::string> &points, const Id &walk);

} // namespace snugwalk

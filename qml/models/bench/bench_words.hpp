// SPDX-License-Identifier: Apache-2.0
// Questions, answers and refusals of the bench in the person's language and units.
#pragma once

#include <QVariantList>

#include "bench/ask/question.hpp"
#include "voice.hpp"

namespace snugwalk {

struct BenchLabel {
    QString name;  ///< "Cold pressure on the placard"
    QString about; ///< "the maker's figure"; may be empty
};

[[nodiscard]] QString benchTitle(const Voice &voice, const BenchQuestion &question);
[[nodiscard]] QString benchAbout(const Voice &voice, const BenchQuestion &question);
[[nodiscard]] BenchLabel benchInputLabel(const Voice &voice, const BenchQuestion &question,
                                         const BenchInput &input);
/// One of the words of an input.
[[nodiscard]] QString benchChoice(const Voice &voice, std::string_view word);
[[nodiscard]] QStringList benchCautions(const Voice &voice, const BenchQuestion &question);

/// [{slug, title, questions: [{slug, title, about}]}], in the order of the bench.
[[nodiscard]] QVariantList benchSubjects(const Voice &voice);

/// [{label, value, range, basis, source}]
[[nodiscard]] QVariantList benchFigures(const Voice &voice, const BenchQuestion &question,
                                        const BenchAnswer &answer);
[[nodiscard]] QStringList benchLines(const Voice &voice, const BenchQuestion &question,
                                     const BenchAnswer &answer);
/// Of all figures, each once.
[[nodiscard]] QStringList benchWarnings(const Voice &voice, const BenchAnswer &answer);
/// "Taken as usual: waste 10 %."; empty when everything was typed.
[[nodiscard]] QString benchAssumed(const Voice &voice, const BenchQuestion &question,
                                   const BenchAnswer &answer);

/// What is wrong with one input by itself, and what to do.
[[nodiscard]] QString benchRefusal(const Voice &voice, const BenchQuestion &question, const Error &error);
/// What stands against working with figures that were each understood. The computations speak English: other
/// languages get a sentence that names less.
[[nodiscard]] QString benchConflict(const Voice &voice, const Error &error);

} // namespace snugwalk

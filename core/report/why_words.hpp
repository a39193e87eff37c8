// SPDX-License-Identifier: Apache-2.0
// Why a date is where it is, in one sentence that the command line and the app both say.
#pragma once

#include <functional>
#include <string>

#include "catalogue/texts.hpp"
#include "round/why.hpp"

namespace snugwalk {

/// How a face writes what the sentence holds.
struct WhyWriting {
    std::function<std::string(CivilDate)> date;              ///< a day
    std::function<std::string(double, int decimals)> number; ///< without a sign
};
/// "2027-03-12" and "1.8", as the command line writes them.
[[nodiscard]] WhyWriting plainWriting();

/// "Likely in March 2027 instead of June 2027: 1.8 months sooner by sun, 0.9 months sooner by salt."
[[nodiscard]] std::string whyDueWords(const WhySentence &why, const Texts &texts,
                                      const WhyWriting &writing = plainWriting());
/// The same for a band that nothing decomposes: readings, a happening, no look yet, each move.
[[nodiscard]] std::string whyUnshiftedWords(const DueBand &band, const Texts &texts,
                                            const WhyWriting &writing = plainWriting());
/// "1.8 months sooner by sun".
[[nodiscard]] std::string whyPartWords(const WhyPart &part, WhyLimit limit, const Texts &texts,
                                       const WhyWriting &writing = plainWriting());

} // namespace snugwalk

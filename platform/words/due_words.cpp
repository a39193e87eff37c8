// SPDX-License-Identifier: Apache-2.0
// Bands, ages and notes in words of a language.
#include "words/due_words.hpp"

#include "base/text.hpp"

namespace snugwalk {

std::string bandWords(const DueBand &band, const Texts &texts)
{
    if (!band.likely)
        return texts.phrase("each_move");
    return texts.phrase("due_band",
                        {formatDate(*band.early), formatDate(*band.likely), formatDate(*band.late)});
}

std::string agedWords(const DueShift &shift, const Texts &texts)
{
    return texts.phrase("due_aged", {fixed(shift.days, 0), fixed(shift.agedDays, 0)});
}

std::string usageWords(const UsageForecast &usage, const Texts &texts, UnitSystem units)
{
    return texts.phrase("usage_" + std::string(slug(usage.level)), {format(usage.yearly, units)});
}

std::string weatherNoteWords(const std::string &note, const Texts &texts)
{
    const std::string phrase = "weather_" + note;
    const std::string words = texts.phrase(phrase);
    return words == phrase ? replaceAll(note, "_", " ") : words;
}

} // namespace snugwalk

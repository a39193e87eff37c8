// SPDX-License-Identifier: Apache-2.0
// A finding in one line.
#include "words/finding_words.hpp"

#include "walk/mend_part.hpp"
#include "words/place_words.hpp"
#include "words/words.hpp"

namespace snugwalk {

std::string findingWords(const Rig &rig, const FindingHistory &history, const Texts &texts, UnitSystem units)
{
    const Finding &finding = history.finding;
    std::string out = texts.point(finding.point).title + ": " + texts.word("defects", finding.defect);
    if (const Look *last = lookAt(history, Instant::max())) {
        out += ", " + texts.phrase("grade", {std::to_string(last->grade)});
        if (last->extent)
            out += ", " + extentWords(last->extent, units);
    }
    const std::string place = placeWords(rig, finding.place, texts, units);
    return out + (place.empty() ? "" : ", " + place);
}

std::string lookWords(const FindingHistory &history, const Look &look, const Texts &texts, UnitSystem units)
{
    if (look.grade == 0)
        return texts.phrase("gone_word");
    std::string out = texts.phrase("grade", {std::to_string(look.grade)}) + ", " +
                      texts.grade(history.finding.point, look.grade);
    if (look.extent)
        out += ", " + extentWords(look.extent, units);
    return look.note.empty() ? out : out + "; " + look.note;
}

std::string mendWords(const Mend &mend)
{
    std::string out = mend.what;
    for (const MendPart &part : mend.parts)
        out += "; " + partText(part);
    if (!mend.cost.empty())
        out += "; " + mend.cost;
    if (mend.minutes)
        out += (mend.cost.empty() ? "; " : ", ") + amountText(*mend.minutes) + "\u00a0min";
    return out;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// From a decomposition to words of a language.
#include "words/due_words.hpp"

#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

std::string causeWords(const WhyPart &part, WhyLimit limit, const Texts &texts)
{
    if (part.cause == "limit")
        return texts.phrase(limit == WhyLimit::Event     ? "cause_called"
                            : limit == WhyLimit::Reading ? "cause_reading"
                                                         : "cause_limit");
    if (part.cause == "use" || part.cause == "history")
        return texts.phrase("cause_" + part.cause);
    return texts.phrase((part.months > 0.0 ? "cause_little_" : "cause_") + part.cause);
}

} // namespace

std::string monthWords(CivilDate date, const Texts &texts)
{
    const std::string month = texts.phrase("month_" + std::to_string(static_cast<unsigned>(date.month())));
    return texts.phrase("month_of_year", {month, std::to_string(static_cast<int>(date.year()))});
}

std::string whyPartWords(const WhyPart &part, WhyLimit limit, const Texts &texts)
{
    const std::string way = part.months > 0.0 ? "later" : "sooner";
    const std::string cause = causeWords(part, limit, texts);
    if (isUnderATenth(part))
        return texts.phrase("due_least_" + way, {cause});
    return texts.phrase("due_" + way, {fixed(std::abs(part.months), 1), cause});
}

std::string whyDueWords(const WhySentence &why, const Texts &texts)
{
    if (!why.first)
        return texts.phrase("due_why_nothing", {formatDate(why.likely)});
    std::string causes = whyPartWords(*why.first, why.limit, texts);
    if (why.second)
        causes += ", " + whyPartWords(*why.second, why.limit, texts);
    if (why.likely == why.nominal)
        return texts.phrase("due_why_same", {formatDate(why.likely), causes});
    if (isWithinAMonth(why))
        return texts.phrase("due_why_days", {formatDate(why.likely), formatDate(why.nominal), causes});
    return texts.phrase("due_why_months",
                        {monthWords(why.likely, texts), monthWords(why.nominal, texts), causes});
}

std::string whyUnshiftedWords(const DueBand &band, const Texts &texts)
{
    if (!band.likely)
        return texts.phrase("due_why_each_move");
    const std::string rule = whyLimit(band) == WhyLimit::Event     ? "event"
                             : whyLimit(band) == WhyLimit::Reading ? "reading"
                                                                   : "never";
    return texts.phrase("due_why_" + rule, {formatDate(*band.likely)});
}

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

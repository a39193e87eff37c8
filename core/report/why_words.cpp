// SPDX-License-Identifier: Apache-2.0
// From a decomposition to words of a language.
#include "report/why_words.hpp"

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

std::string monthWords(CivilDate date, const Texts &texts)
{
    const std::string month = texts.phrase("month_" + std::to_string(static_cast<unsigned>(date.month())));
    return texts.phrase("month_of_year", {month, std::to_string(static_cast<int>(date.year()))});
}

} // namespace

WhyWriting plainWriting()
{
    return {[](CivilDate date) { return formatDate(date); },
            [](double value, int decimals) { return fixed(value, decimals); }};
}

std::string whyPartWords(const WhyPart &part, WhyLimit limit, const Texts &texts, const WhyWriting &writing)
{
    const std::string way = part.months > 0.0 ? "later" : "sooner";
    const std::string cause = causeWords(part, limit, texts);
    if (isUnderATenth(part))
        return texts.phrase("due_least_" + way, {writing.number(0.1, 1), cause});
    return texts.phrase("due_" + way, {writing.number(std::abs(part.months), 1), cause});
}

std::string whyDueWords(const WhySentence &why, const Texts &texts, const WhyWriting &writing)
{
    const std::string likely = writing.date(why.likely);
    if (!why.first)
        return texts.phrase("due_why_nothing", {likely});
    std::string causes = whyPartWords(*why.first, why.limit, texts, writing);
    if (why.second)
        causes += ", " + whyPartWords(*why.second, why.limit, texts, writing);
    if (why.likely == why.nominal)
        return texts.phrase("due_why_same", {likely, causes});
    if (isWithinAMonth(why))
        return texts.phrase("due_why_days", {likely, writing.date(why.nominal), causes});
    return texts.phrase("due_why_months",
                        {monthWords(why.likely, texts), monthWords(why.nominal, texts), causes});
}

std::string whyUnshiftedWords(const DueBand &band, const Texts &texts, const WhyWriting &writing)
{
    if (!band.likely)
        return texts.phrase("due_why_each_move");
    const std::string rule = whyLimit(band) == WhyLimit::Event     ? "event"
                             : whyLimit(band) == WhyLimit::Reading ? "reading"
                                                                   : "never";
    return texts.phrase("due_why_" + rule, {writing.date(*band.likely)});
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Reasons, calls and due dates in sentences.
#include "words/reason_words.hpp"

#include <array>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

// Reasons whose sentence takes its word or its number as %1.
constexpr std::array plainReasons = {std::string_view("last_look"),     std::string_view("mended"),
                                     std::string_view("distance_used"), std::string_view("usage"),
                                     std::string_view("never_looked"),  std::string_view("limit_left_out")};

} // namespace

std::string reasonWords(const Reason &reason, const Texts &texts, UnitSystem units)
{
    const std::string amount = reason.si ? formatFor(reason.dimension, *reason.si, units) : "";
    if (reason.slug == "event")
        return texts.word("events", reason.detail);
    if (reason.slug == "reading")
        return texts.phrase("reason_reading", {texts.word("readings", reason.detail)});
    if (reason.slug == "months")
        return texts.phrase(amount == "1" ? "months_1" : "months_n", {amount});
    if (reason.slug == "wheel_fitted")
        return texts.phrase("wheel_fitted", {reason.detail, amount});
    if (reason.slug == "could_not_look")
        return texts.phrase("could_not_look_then", {reason.detail});
    for (const std::string_view plain : plainReasons) {
        if (plain == reason.slug)
            return texts.phrase(reason.slug, {amount.empty() ? reason.detail : amount});
    }
    return replaceAll(reason.slug + " " + (amount.empty() ? reason.detail : amount), "_", " ");
}

std::string callWords(const Concern &concern, const Texts &texts)
{
    const std::string number = std::to_string(std::lround(concern.number));
    switch (concern.call) {
    case Call::Hold:
        return texts.word("forbids", concern.forbids);
    case Call::MendSoon:
        return texts.phrase("call_mend_soon", {number});
    case Call::Watch:
        return texts.phrase("call_watch", {number});
    case Call::None:
        return {};
    }
    return {};
}

std::string whenWords(const DueBand &band, const Texts &texts)
{
    if (!band.everLooked && band.rule == "never_looked")
        return texts.phrase("never");
    if (!band.likely)
        return texts.phrase("each_move");
    const std::string date = formatDate(*band.likely);
    if (band.pastDue)
        return texts.phrase("past_due_word") + ", " + date;
    return band.dueNow ? texts.phrase("due_word") + ", " + date : date;
}

} // namespace snugwalk

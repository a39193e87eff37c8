// SPDX-License-Identifier: Apache-2.0
// Reasons, calls, due dates and the state of a rig in sentences.
#include "words/reason_words.hpp"

#include <array>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

std::string oneOrMany(const Texts &texts, const std::string &phrase, int count,
                      const std::string &second = {})
{
    return texts.phrase(phrase + (count == 1 ? "_1" : "_n"), {std::to_string(count), second});
}

std::string lookedWords(const RigState &s, const Texts &texts)
{
    if (!s.lookedSince)
        return texts.phrase("looked_none");
    std::string out =
        oneOrMany(texts, s.hold == 0 ? "no_hold" : "looked", s.lookedAt, formatLocalShort(*s.lookedSince));
    return out + (s.by.empty() ? "." : " " + texts.phrase("by", {s.by}) + ".");
}

std::string callCounts(const RigState &s, const Texts &texts)
{
    std::string out;
    if (s.hold > 0) {
        std::vector<std::string> forbids;
        for (const std::string &what : s.forbids)
            forbids.push_back(texts.word("forbids", what));
        out += texts.phrase("on_hold", {std::to_string(s.hold), join(forbids, ", ")}) + " ";
    }
    if (s.mendSoon > 0)
        out += texts.phrase("mend_soon_n", {std::to_string(s.mendSoon)}) + " ";
    if (s.watch > 0)
        out += texts.phrase("watch_n", {std::to_string(s.watch)}) + " ";
    return out;
}

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

std::string stateSentence(const Standing &standing, const Texts &texts)
{
    const RigState &s = standing.state;
    std::string out = callCounts(s, texts) + lookedWords(s, texts);
    if (!s.couldNotLook.empty()) {
        std::vector<std::string> points;
        for (const CouldNotLook &c : s.couldNotLook)
            points.push_back(texts.point(c.point).title);
        out += " " + texts.phrase("unseen", {std::to_string(points.size()), join(points, ", ")});
    }
    if (s.pastDue > 0)
        out += " " + oneOrMany(texts, "past_due", s.pastDue);
    return out + " " + texts.phrase("says_only");
}

} // namespace snugwalk

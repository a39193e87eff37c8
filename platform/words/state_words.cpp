// SPDX-License-Identifier: Apache-2.0
// Counts, names and chances put into sentences.
#include "words/state_words.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "walk/draft.hpp"

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
    for (const StateHold &hold : s.holds) {
        if (hold.accepted)
            out += acceptedWords(*hold.accepted, texts) + " ";
    }
    if (s.mendSoon > 0)
        out += texts.phrase("mend_soon_n", {std::to_string(s.mendSoon)}) + " ";
    if (s.watch > 0)
        out += texts.phrase("watch_n", {std::to_string(s.watch)}) + " ";
    return out;
}

std::string oneDigit(double count) { return fixed(count, count < 9.95 ? 1 : 0); }

// "about 1 in 12 (1 in 30 to 1 in 5)"; at the ends of the scale just "over 19 in 20".
std::string rangeWords(const ChanceRange &chance, const Texts &texts)
{
    const std::string middle = chanceWords(chance.value, texts);
    const std::string low = chanceWords(chance.low, texts);
    const std::string high = chanceWords(chance.high, texts);
    const bool ends = chance.value < 1e-4 || chance.value > 0.95;
    const std::string about = ends ? middle : texts.phrase("chance_about", {middle});
    return low == high ? about : texts.phrase("chance_range", {about, low, high});
}

std::string outlookWords(const Outlook &o, const Texts &texts)
{
    std::string out;
    if (o.weight > 0.0) // never rounded up to all of it
        out += " " +
               texts.phrase("looked_share", {std::to_string(static_cast<int>(std::floor(100.0 * o.looked)))});
    if (o.seriousItems == 0)
        return out;
    out += " " + texts.phrase("serious_chance", {rangeWords(o.serious, texts)});
    return out + " " +
           texts.phrase("serious_expected", {std::to_string(o.seriousItems), oneDigit(o.expected.value),
                                             oneDigit(o.expected.low), oneDigit(o.expected.high)});
}

// Two figures are as many as such a chance is known to.
long twoFigures(double n)
{
    const double scale = std::pow(10.0, std::max(0.0, std::floor(std::log10(n)) - 1.0));
    return std::lround(std::round(n / scale) * scale);
}

} // namespace

std::string chanceWords(double chance, const Texts &texts)
{
    if (chance < 1e-4)
        return texts.phrase("chance_least");
    if (chance > 0.95)
        return texts.phrase("chance_most");
    if (chance >= 0.45)
        return texts.phrase("chance_in_10", {std::to_string(std::min(std::lround(10.0 * chance), 9L))});
    return texts.phrase("chance_1_in", {std::to_string(twoFigures(1.0 / chance))});
}

std::string acceptedWords(const Acceptance &acceptance, const Texts &texts)
{
    return texts.phrase(
        "accepted_by", {texts.point(acceptance.point).title, acceptance.by, formatLocalShort(acceptance.at)});
}

std::string acceptanceSentence(const Acceptance &acceptance, const Texts &texts)
{
    const auto &slugs = reasons();
    const bool known = std::find(slugs.begin(), slugs.end(), acceptance.reason) != slugs.end();
    std::string out = texts.text("acceptance");
    out = replaceAll(std::move(out), "{outcome}", acceptance.knowing);
    out = replaceAll(std::move(out), "{reason}",
                     known ? texts.word("reasons", acceptance.reason) : acceptance.reason);
    return replaceAll(std::move(out), "{point}", texts.point(acceptance.point).title);
}

std::string stateSentence(const Standing &standing, const Texts &texts)
{
    const RigState &s = standing.state;
    std::string out = callCounts(s, texts) + lookedWords(s, texts);
    if (!s.couldNotLook.empty()) {
        std::vector<std::string> points;
        for (const CouldNotLook &c : s.couldNotLook)
            points.push_back(texts.point(c.point).title);
        out += " " + oneOrMany(texts, "unseen", static_cast<int>(points.size()), join(points, ", "));
    }
    if (s.pastDue > 0)
        out += " " + oneOrMany(texts, "past_due", s.pastDue);
    return out + outlookWords(s.outlook, texts) + " " + texts.phrase("says_only");
}

} // namespace snugwalk

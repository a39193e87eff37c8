// SPDX-License-Identifier: Apache-2.0
// The life of a finding for every order of looks, mends and passes, against the rules told in words.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "walk/finding_state.hpp"

using namespace snugwalk;

namespace {

LocalTime day(int n) { return {Instant(std::chrono::hours(24 * n)), {}}; }

// L a look with a grade, G a look that finds it gone, M a mend, P a pass; one a day, from day 1.
FindingHistory historyOf(const std::string &events)
{
    FindingHistory history;
    for (std::size_t i = 0; i < events.size(); ++i) {
        const LocalTime at = day(static_cast<int>(i) + 1);
        if (events[i] == 'L' || events[i] == 'G') {
            Look look;
            look.at = at;
            look.grade = events[i] == 'L' ? 3 : 0;
            history.looks.push_back(look);
        } else if (events[i] == 'M') {
            Mend mend;
            mend.at = at;
            history.mends.push_back(mend);
        } else {
            Mark pass;
            pass.at = at;
            pass.state = MarkState::Pass;
            history.pointPasses.push_back(pass);
        }
    }
    return history;
}

// The rules as a machine that reads one event after another.
FindingStatus byRules(const std::string &events)
{
    FindingStatus status = FindingStatus::Open;
    bool mendedSince = false; // since it was last seen
    for (const char event : events) {
        if (event == 'L')
            status = FindingStatus::Open, mendedSince = false;
        if (event == 'G')
            status = mendedSince ? FindingStatus::Confirmed : FindingStatus::Gone;
        if (event == 'M')
            status = FindingStatus::Mended, mendedSince = true;
        if (event == 'P' && status == FindingStatus::Mended)
            status = FindingStatus::Confirmed;
    }
    return status;
}

} // namespace

TEST_CASE("the life most findings have")
{
    CHECK(statusOf(historyOf("L")) == FindingStatus::Open);
    CHECK(statusOf(historyOf("LP")) == FindingStatus::Open); // a pass alone never closes it
    CHECK(statusOf(historyOf("LM")) == FindingStatus::Mended);
    CHECK(statusOf(historyOf("LMP")) == FindingStatus::Confirmed);
    CHECK(statusOf(historyOf("LPM")) == FindingStatus::Mended); // the pass came before the mend
    CHECK(statusOf(historyOf("LML")) == FindingStatus::Open);   // it came back
    CHECK(statusOf(historyOf("LMLP")) == FindingStatus::Open);
    CHECK(statusOf(historyOf("LMPL")) == FindingStatus::Open);
    CHECK(statusOf(historyOf("LG")) == FindingStatus::Gone);
    CHECK(statusOf(historyOf("LMG")) == FindingStatus::Confirmed);
    CHECK(statusOf(historyOf("LMLG")) == FindingStatus::Gone); // came back, then went without a mend
    CHECK(slug(FindingStatus::Mended) == "mended");
}

TEST_CASE("every order of up to six looks, mends and passes")
{
    const std::string letters = "LGMP";
    int tried = 0;
    for (std::size_t length = 1; length <= 6; ++length) {
        std::size_t words = 1;
        for (std::size_t i = 0; i < length; ++i)
            words *= letters.size();
        for (std::size_t word = 0; word < words; ++word) {
            std::string events = "L";
            for (std::size_t rest = word, i = 0; i < length; ++i, rest /= letters.size())
                events += letters[rest % letters.size()];
            CAPTURE(events);
            REQUIRE(slug(statusOf(historyOf(events))) == slug(byRules(events)));
            ++tried;
        }
    }
    CHECK(tried == 4 + 16 + 64 + 256 + 1024 + 4096);
}

TEST_CASE("as things stood on a day: what came later does not count")
{
    const std::string events = "LPMLGMPL";
    const FindingHistory history = historyOf(events);
    for (int days = 1; days <= static_cast<int>(events.size()); ++days) {
        CAPTURE(days);
        CHECK(slug(statusAt(history, day(days).instant)) ==
              slug(byRules(events.substr(0, static_cast<std::size_t>(days)))));
    }
}

TEST_CASE("the last look at a time")
{
    const FindingHistory history = historyOf("LPGL");
    CHECK(lookAt(history, day(0).instant) == nullptr);
    CHECK(lookAt(history, day(2).instant)->grade == 3);
    CHECK(lookAt(history, day(3).instant)->grade == 0);
    CHECK(lookAt(history, Instant::max()) == &history.looks.back());
}

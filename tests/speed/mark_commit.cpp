// SPDX-License-Identifier: Apache-2.0
// One mark made durable on a logbook of the demo's size, against one bare SQLite commit of a row as large
// as the mark's entry, with the same settings. Alternating in one run, warm, median of 15; budget 1.5.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "bare_commit.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

using SteadyClock = std::chrono::steady_clock;

template <typename Work>
double milliseconds(Work work)
{
    const auto from = SteadyClock::now();
    work();
    return std::chrono::duration<double, std::milli>(SteadyClock::now() - from).count();
}

// Eight walks with every point marked and a finding here and there, as the demo has.
void fill(Walker &walker)
{
    for (int round = 0; round < 8; ++round) {
        for (const TapeLine &line : walker.walk.tape) {
            const bool found = line.points.front().size() % 7 == 0;
            const MarkDraft draft =
                found ? attentionOn(line.points.front(), 2, "seen") : passOf(line.points.front());
            SNUG_ASSERT(walker.mark(draft).has_value());
        }
        if (round < 7)
            walker.nextWalk("full_round");
    }
    walker.nextWalk("full_round");
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

} // namespace

int main()
{
    constexpr int warm = 5;
    constexpr int counted = 15;
    Walker walker("speed", "full_round");
    fill(walker);
    SNUG_ASSERT(walker.mark(passOf(walker.walk.tape.back().points.front())).has_value());
    const std::size_t size = entrySize(walker.book().db());
    BareBook bare(walker.home.folder().file("bare.db"), size);
    std::vector<double> marks;
    std::vector<double> commits;
    for (int i = 0; i < warm + counted; ++i) {
        const MarkDraft draft = passOf(walker.walk.tape[static_cast<std::size_t>(i)].points.front());
        const double mark = milliseconds([&] { SNUG_ASSERT(walker.mark(draft).has_value()); });
        const double commit = milliseconds([&] { bare.commit(); });
        if (i >= warm) {
            marks.push_back(mark);
            commits.push_back(commit);
        }
    }
    const Id device = walker.book().stream().device;
    const double history =
        milliseconds([&] { SNUG_ASSERT(findingHistories(walker.book(), walker.rig.id)->size() > 3); });
    const double again = milliseconds([&] { SNUG_ASSERT(walker.home.reopened().stream().device == device); });
    std::printf("entries in the logbook: %lld\n", static_cast<long long>(entryCount(walker.book())));
    std::printf("mark made durable: %.3f ms, bare commit of %zu bytes: %.3f ms\n", median(marks), size,
                median(commits));
    std::printf("ratio of a mark to a bare commit: %.2f (budget 1.5)\n", median(marks) / median(commits));
    std::printf("all findings with their histories: %.2f bare commits\n", history / median(commits));
    std::printf("opening the whole logbook again: %.2f bare commits\n", again / median(commits));
    return 0;
}

// SPDX-License-Identifier: Apache-2.0
// One mark made durable on a logbook of the demo's size, against one bare SQLite commit of a row as large
// as the mark's entry, with the same settings. Alternating in one run, warm, median of 15; budget 1.5.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

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

sqlite::Connection bareBook(const std::string &file)
{
    auto db = sqlite::Connection::open(file, sqlite::OpenMode::Create).value();
    SNUG_ASSERT(db.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
                        "CREATE TABLE bare(id INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT")
                    .has_value());
    return db;
}

void commitBare(sqlite::Connection &db, sqlite::Statement &insert, const std::string &bytes)
{
    auto transaction = sqlite::Transaction::begin(db).value();
    insert.bindBytes(1, bytes);
    SNUG_ASSERT(insert.run().has_value());
    SNUG_ASSERT(std::move(transaction).commit().has_value());
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
    const std::int64_t size =
        walker.book().db().number("SELECT length(bytes) FROM entry ORDER BY hlc DESC LIMIT 1").value();
    const std::string bytes(static_cast<std::size_t>(size), 'x');
    auto bare = bareBook(walker.home.folder().file("bare.db"));
    auto insert = bare.prepare("INSERT INTO bare(bytes) VALUES(?)").value();
    std::vector<double> marks;
    std::vector<double> commits;
    for (int i = 0; i < warm + counted; ++i) {
        const MarkDraft draft = passOf(walker.walk.tape[static_cast<std::size_t>(i)].points.front());
        const double mark = milliseconds([&] { SNUG_ASSERT(walker.mark(draft).has_value()); });
        const double commit = milliseconds([&] { commitBare(bare, insert, bytes); });
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
    std::printf("mark made durable: %.3f ms, bare commit of %zu bytes: %.3f ms\n", median(marks),
                bytes.size(), median(commits));
    std::printf("ratio of a mark to a bare commit: %.2f (budget 1.5)\n", median(marks) / median(commits));
    std::printf("all findings with their histories: %.2f bare commits\n", history / median(commits));
    std::printf("opening the whole logbook again: %.2f bare commits\n", again / median(commits));
    return 0;
}

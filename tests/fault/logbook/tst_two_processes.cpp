// SPDX-License-Identifier: Apache-2.0
// Two processes on one logbook: one waits for the other, and nothing that was acknowledged is lost.
#include <doctest/doctest.h>

#include <set>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include "logbook/check.hpp"
#include "logbook/entry_rows.hpp"
#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr int marksEach = 200;

// Runs `work` in a process of its own, which ends with what it returns.
template <typename Work>
pid_t inChild(Work work)
{
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0)
        ::_exit(work());
    return child;
}

int exitOf(pid_t child)
{
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

// Writes as the same device: both processes go on in one stream.
Result<Logbook> openAs(Walker &walker, const std::string &file, IdSource &ids)
{
    const Hash secret = blake2b("device test");
    return Logbook::open(file,
                         {DeviceKey::fromSeed(secret.view()), "device", &walker.home.clock, &ids, true});
}

int markMany(Walker &walker, const std::string &name)
{
    CountingIds ids("writer " + name);
    auto book = openAs(walker, walker.home.file(), ids);
    if (!book)
        return 1;
    for (int i = 0; i < marksEach; ++i) {
        const std::string by = name + " " + std::to_string(i);
        if (!markPoint(*book, realCatalogue(), walker.rig, walker.walk, passOf("chains-run", by),
                       {by, {}, {}}))
            return 2;
    }
    return 0;
}

} // namespace

TEST_CASE("two writers of 200 marks each: all are there, in one chain")
{
    Walker walker;
    walker.home.close();
    const pid_t a = inChild([&] { return markMany(walker, "a"); });
    const pid_t b = inChild([&] { return markMany(walker, "b"); });
    CHECK(exitOf(a) == 0);
    CHECK(exitOf(b) == 0);
    std::set<std::string> found;
    REQUIRE(eachStoredEntry(walker.book().db(), [&](const StoredEntry &stored) {
        found.insert(stored.entry.by);
        return done();
    }));
    for (int i = 0; i < marksEach; ++i) {
        CHECK(found.count("a " + std::to_string(i)) == 1);
        CHECK(found.count("b " + std::to_string(i)) == 1);
    }
    CHECK(entryCount(walker.book()) == 2 * marksEach + 2);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("eight processes begin one new logbook at the same time")
{
    for (int round = 0; round < 5; ++round) {
        Walker walker;
        const std::string file = walker.home.folder().file("fresh.snug");
        std::vector<pid_t> children;
        for (int i = 0; i < 8; ++i) {
            children.push_back(inChild([&, i] {
                CountingIds ids("opener " + std::to_string(i));
                auto book = openAs(walker, file, ids);
                return book && saveRig(*book, tandem(), walker.doer) ? 0 : 1;
            }));
        }
        for (const pid_t child : children)
            CHECK(exitOf(child) == 0);
        auto book = walker.home.tryOpen(file, false).value();
        CHECK(allRigs(book)->size() == 8);
        CHECK(checkLogbook(book, true)->faults.empty());
        CHECK(checkLogbook(book, true)->streams == 1);
    }
}

TEST_CASE("a writer that does not let go: conflict after the waiting time, and nothing is changed")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    auto other = walker.home.tryOpen(walker.home.file()).value();
    sqlite3_busy_timeout(walker.book().db().raw(), 30);
    {
        const auto held = sqlite::Transaction::begin(other.db()).value();
        const auto marked = walker.mark(passOf("spring-bars"));
        REQUIRE_FALSE(marked);
        CHECK(marked.error().code == Errc::Conflict);
        CHECK_FALSE(marked.error().act.empty());
        CHECK(walker.undo().error().code == Errc::Conflict);
        CHECK(marksOf(walker.book(), walker.walk.id)->size() == 1); // reading goes on
    }
    CHECK(marksOf(walker.book(), walker.walk.id)->size() == 1);
    CHECK(walker.mark(passOf("spring-bars")));
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("a writer that is killed within a transaction leaves nothing and holds nothing up")
{
    Walker walker;
    walker.home.close();
    const pid_t child = inChild([&] {
        auto book = walker.home.tryOpen(walker.home.file()).value();
        auto held = sqlite::Transaction::begin(book.db()).value();
        const bool written = book.db().exec("INSERT INTO meta VALUES('half', 1)").has_value();
        return written ? ::kill(::getpid(), SIGKILL) : 1;
    });
    CHECK(exitOf(child) == -1);
    CHECK(walker.mark(passOf("chains-run")));
    CHECK(walker.book().db().number("SELECT count(*) FROM meta WHERE key = 'half'").value() == 0);
    CHECK(checkLogbook(walker.book(), true)->faults.empty());
}

TEST_CASE("what one process did between another's look and its act is minded")
{
    Walker walker;
    auto other = walker.home.tryOpen(walker.home.file()).value();
    REQUIRE(finishWalk(other, walker.walk, walker.doer));
    CHECK(walker.mark(passOf("chains-run")).error().code == Errc::Conflict);
    REQUIRE(startWalk(other, realCatalogue(), walker.rig, "before_road", {}, {}, walker.doer));
    CHECK(startWalk(walker.book(), realCatalogue(), walker.rig, "before_road", {}, {}, walker.doer)
              .error()
              .code == Errc::Conflict);
}

// SPDX-License-Identifier: Apache-2.0
// Row 27: a stick pulled while it is written, one that is read only, names that every disk can hold.
#include <doctest/doctest.h>

#include <csignal>
#include <filesystem>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

#include "row.hpp"
#include "support/party.hpp"
#include "sync/folder_store.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

namespace fs = std::filesystem;

std::string nameOf(int n)
{
    return "snugwalk1/x/" + std::to_string(n % 7) + "/" + std::to_string(n) + ".seg";
}
std::string bytesOf(int n)
{
    return std::string(20'000 + static_cast<std::size_t>(n) * 13, static_cast<char>(n));
}

// Puts file after file until it is killed; a byte through the pipe for each that was acknowledged.
[[noreturn]] void putForEver(const fs::path &folder, int first, int pipe)
{
    FolderStore store(folder);
    for (int n = first; n < first + 100'000; ++n) {
        const char told = store.publish(nameOf(n), bytesOf(n)) ? '+' : '-';
        if (write(pipe, &told, 1) != 1)
            break;
    }
    _exit(0);
}

} // namespace

TEST_CASE(
    "row 27: pulled 200 times while it is written: what was acknowledged is whole, nothing is half there")
{
    const TempFolder folder;
    std::mt19937 rng(27);
    int next = 0;
    int pulls = 0;
    int damaged = 0;
    for (; pulls < 200; ++pulls) {
        int ends[2];
        REQUIRE(pipe(ends) == 0);
        const pid_t child = fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            close(ends[0]);
            putForEver(folder.path(), next, ends[1]);
        }
        close(ends[1]);
        // killed after the n-th acknowledgement and some more work
        int acknowledged = 0;
        char told = 0;
        for (unsigned n = rng() % 4; n > 0 && read(ends[0], &told, 1) == 1; --n)
            acknowledged += told == '+' ? 1 : 0;
        usleep(static_cast<useconds_t>(rng() % 2000));
        kill(child, SIGKILL);
        waitpid(child, nullptr, 0);
        while (read(ends[0], &told, 1) == 1)
            acknowledged += told == '+' ? 1 : 0;
        close(ends[0]);
        FolderStore store(folder.path());
        for (int n = next; n < next + acknowledged; ++n) {
            const auto bytes = store.read(nameOf(n), 1'000'000);
            damaged += bytes && *bytes == bytesOf(n) ? 0 : 1;
        }
        // the one it was at: not there, or whole; and it can be put now
        const int at = next + acknowledged;
        const auto half = store.read(nameOf(at), 1'000'000);
        damaged += !half || *half == bytesOf(at) ? 0 : 1;
        damaged += store.publish(nameOf(at), bytesOf(at)) ? 0 : 1;
        next = at + 1;
    }
    FolderStore store(folder.path());
    for (int n = 0; n < next; ++n) {
        const auto bytes = store.read(nameOf(n), 1'000'000);
        damaged += bytes && *bytes == bytesOf(n) ? 0 : 1;
    }
    row(27, std::to_string(pulls) + " pulls, " + std::to_string(next) + " files, " + std::to_string(damaged) +
                " damaged");
    CHECK(damaged == 0);
    CHECK(next >= pulls);
}

TEST_CASE("row 27: every name we give is lower case, short, and alone when cases are folded")
{
    Shared s;
    s.owner.set(s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}});
    s.both();
    std::set<std::string> folded;
    for (const auto &[name, bytes] : s.store.files) {
        std::string lower = name;
        for (char &c : lower)
            c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        CHECK(lower == name);
        CHECK(nameIsFine(name));
        CHECK(folded.insert(lower).second);
    }
    CHECK(folded.size() >= 4);
}

TEST_CASE(
    "row 27: a stick that is read only: what is there is read, the error says that nothing could be put")
{
    Shared s;
    const TempFolder folder;
    {
        FolderStore stick(folder.path());
        s.owner.set(s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}});
        s.owner.meet(stick);
    }
    class ReadOnly final : public Store {
    public:
        explicit ReadOnly(const fs::path &path) : m_store(path) {}
        Result<std::vector<StoreFile>> list(std::string_view name) override { return m_store.list(name); }
        Result<std::string> read(std::string_view name, std::int64_t limit) override
        {
            return m_store.read(name, limit);
        }
        Status publish(std::string_view name, std::string_view) override
        {
            return Error{Errc::Io, "this place is read only", std::string(name), "choose another place"};
        }

    private:
        FolderStore m_store;
    } stick(folder.path());
    s.other.set(s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}});
    const auto summary = exchange(s.other.book(), s.other.keys, stick);
    REQUIRE_FALSE(summary);
    CHECK(summary.error().code == Errc::Io);
    CHECK(entryCount(s.other.book()) == entryCount(s.owner.book()) + 1); // all of theirs, and ours is kept
    s.both();
    CHECK(projectionNow(s.owner.book()) == projectionNow(s.other.book()));
}

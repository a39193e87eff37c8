// SPDX-License-Identifier: Apache-2.0
// Runs schedules: tst_sim <how many> [<first seed> [<mutant>]]. A failing seed is printed; run it alone with
// `tst_sim 1 SEED`. With a mutant the program is broken on purpose, and finding nothing is the failure.
#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include "logbook/schema.hpp"
#include "support/temp_folder.hpp"
#include "world.hpp"

using namespace snugwalk;
using namespace snugwalk::sim;

namespace {

// The tables made once; each device begins with a copy.
std::string emptyBook(const std::string &folder)
{
    const std::string file = folder + "/empty.snug";
    auto db = sqlite::Connection::open(file, sqlite::OpenMode::Create).value();
    SNUG_ASSERT(prepareSchema(db).has_value());
    SNUG_ASSERT(db.exec("INSERT INTO meta VALUES('projection', 0); PRAGMA journal_mode = WAL").has_value());
    const std::string mark = "UPDATE meta SET value = " + std::to_string(projectionVersion);
    SNUG_ASSERT(db.exec(mark.c_str()).has_value());
    return file;
}

void print(const Counts &c, std::int64_t schedules)
{
    std::printf(
        "%lld schedules: %lld acts, %lld photos, %lld exchanges (%lld cut off, %lld crashes, %lld damaged "
        "files), %lld revocations, %lld forks, %lld set aside, %lld adopted, %lld conflicts, %lld "
        "strangers, %lld forgeries, %lld newer files\n",
        static_cast<long long>(schedules), static_cast<long long>(c.acts), static_cast<long long>(c.photos),
        static_cast<long long>(c.exchanges), static_cast<long long>(c.cutOff),
        static_cast<long long>(c.crashes), static_cast<long long>(c.damaged),
        static_cast<long long>(c.revocations), static_cast<long long>(c.forks),
        static_cast<long long>(c.aside), static_cast<long long>(c.adopted),
        static_cast<long long>(c.conflicts), static_cast<long long>(c.strangers),
        static_cast<long long>(c.forged), static_cast<long long>(c.tomorrows));
}

} // namespace

int main(int argc, char **argv)
{
    const long long schedules = argc > 1 ? std::atoll(argv[1]) : 1;
    const long long first = argc > 2 ? std::atoll(argv[2]) : 1;
    mutant = argc > 3 ? argv[3] : "";
    std::error_code fault;
    if (std::getenv("TMPDIR") == nullptr && std::filesystem::is_directory("/dev/shm", fault))
        ::setenv("TMPDIR", "/dev/shm", 1); // in memory where there is such a place
    const test::TempFolder folder;
    const std::string empty = emptyBook(folder.path().string());
    Counts total;
    long long failed = 0;
    for (long long seed = first; seed < first + schedules; ++seed) {
        const std::string place = folder.file(std::to_string(seed));
        std::filesystem::create_directory(place);
        {
            World world(place, empty, static_cast<std::uint64_t>(seed));
            const auto faults = world.run();
            total.add(world.counts);
            for (const std::string &line : faults)
                std::printf("seed %lld: %s\n", seed, line.c_str());
            failed += faults.empty() ? 0 : 1;
        }
        std::filesystem::remove_all(place);
        if (failed >= (mutant.empty() ? 20 : 1))
            break;
    }
    print(total, schedules);
    std::printf("%lld schedules failed\n", failed);
    if (!mutant.empty())
        return failed > 0 ? 0 : 1;
    return failed == 0 ? 0 : 1;
}

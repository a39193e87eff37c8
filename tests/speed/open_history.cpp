// SPDX-License-Identifier: Apache-2.0
// Opening the demo's logbook and knowing how its rig stands, against a bare SQLite read of the same rows.
// Alternating in one run, warm, median of 15. Printed, never judged.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "data/embedded.hpp"
#include "demo/load_demo.hpp"
#include "image/plain_codec.hpp"
#include "logbook/query.hpp"
#include "round/compare.hpp"
#include "round/history.hpp"
#include "round/state.hpp"

using namespace snugwalk;

namespace {

using SteadyClock = std::chrono::steady_clock;

template <typename Work>
double milliseconds(Work work)
{
    const auto from = SteadyClock::now();
    work();
    return std::chrono::duration<double, std::milli>(SteadyClock::now() - from).count();
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

// The least that any program must do: open the file, read every shown row.
std::size_t bareRead(const std::string &file)
{
    auto db = sqlite::Connection::open(file, sqlite::OpenMode::ReadWrite).value();
    auto rows = db.prepare("SELECT id, doc FROM thing ORDER BY type, sort").value();
    std::size_t bytes = 0;
    while (rows.step().value())
        bytes += rows.bytes(0).size() + rows.bytes(1).size();
    return bytes;
}

struct Timings {
    std::vector<double> bare, history, standing, compare;
};

void measureOnce(const std::string &file, const LogbookOptions &options, LocalTime now, Timings &t)
{
    std::size_t bytes = 0;
    t.bare.push_back(milliseconds([&] { bytes = bareRead(file); }));
    SNUG_ASSERT(bytes > 100'000);
    RigHistory history;
    t.history.push_back(milliseconds([&] {
        Logbook book = Logbook::open(file, options).value();
        history = loadHistory(book, allRigs(book).value().front().id).value();
    }));
    SNUG_ASSERT(history.walks.size() >= 8);
    RigHistory copy = history;
    t.standing.push_back(milliseconds(
        [&] { SNUG_ASSERT(!standingOf(productCatalogue(), std::move(copy), now).bands.empty()); }));
    t.compare.push_back(milliseconds([&] {
        const WalkPair pair = lastTwo(history).value();
        SNUG_ASSERT(!compareWalks(productCatalogue(), history, pair.then, pair.now).points.empty());
    }));
}

} // namespace

int main(int argc, char **argv)
{
    SNUG_ASSERT(argc == 2);
    const auto folder =
        std::filesystem::temp_directory_path() / ("snugwalk-speed-" + RandomIds().next().shortText());
    std::filesystem::create_directories(folder);
    const std::string file = (folder / "demo.snugwalk").string();
    SNUG_ASSERT(loadDemo(file, demoFolder(argv[1]), PlainCodec()).has_value());
    const LocalTime now = parseLocal("2026-11-20T08:00:00+13:00").value();
    FixedClock clock(now);
    RandomIds ids;
    const LogbookOptions options{DeviceKey::random(), "speed", &clock, &ids, false};
    Timings t;
    for (int i = 0; i < 15; ++i)
        measureOnce(file, options, now, t);
    const double bare = median(t.bare);
    std::printf("bare read of all rows        %8.2f ms\n", bare);
    std::printf("open and load the history    %8.2f ms  ratio %.2f\n", median(t.history),
                median(t.history) / bare);
    std::printf("due bands, concern, state    %8.2f ms  ratio %.2f\n", median(t.standing),
                median(t.standing) / bare);
    std::printf("compare the last two walks   %8.2f ms  ratio %.2f\n", median(t.compare),
                median(t.compare) / bare);
    std::filesystem::remove_all(folder);
    return 0;
}

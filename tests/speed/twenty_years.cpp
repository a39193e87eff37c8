// SPDX-License-Identifier: Apache-2.0
// Comparing two full rounds, the state of the rig and a trend, with twenty years of history, against a bare
// SQLite read of the same rows. Alternating in one run, warm, median of 15. Budgets: a tenth of a 60 Hz
// frame for the comparison, one frame for the state read and sorted. Printed, never judged.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "due/trend/trend.hpp"
#include "logbook/query.hpp"
#include "long_history.hpp"
#include "round/compare.hpp"
#include "round/history.hpp"
#include "round/state.hpp"

using namespace snugwalk;

namespace {

using SteadyClock = std::chrono::steady_clock;
constexpr double frame = 1000.0 / 60.0;

template <typename Work>
double milliseconds(Work work)
{
    const auto from = SteadyClock::now();
    work();
    return std::chrono::duration<double, std::milli>(SteadyClock::now() - from).count();
}

// The work is done once before it is timed: the rows read in between push all else out of the processor's
// caches, which costs a comparison as much again.
template <typename Work>
double warmMilliseconds(Work work)
{
    work();
    return milliseconds(work);
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
    std::vector<double> bare, load, weather, compare, bands, state, trend;
};

void measureOnce(Logbook &book, const Id &rig, const World &world, LocalTime now, Timings &t)
{
    const Catalogue &catalogue = productCatalogue();
    t.bare.push_back(milliseconds([&] { SNUG_ASSERT(bareRead(book.file()) > 1'000'000); }));
    RigHistory history;
    t.load.push_back(milliseconds([&] { history = loadHistory(book, rig).value(); }));
    t.weather.push_back(warmMilliseconds([&] { weatherHistory(history, &world, now); }));
    const WalkPair pair = lastTwo(history, "full_round").value();
    t.compare.push_back(warmMilliseconds([&] {
        SNUG_ASSERT(compareWalks(catalogue, history, pair.then, pair.now).points.size() ==
                    catalogue.points().size());
    }));
    std::vector<DueBand> bands;
    t.bands.push_back(warmMilliseconds([&] { bands = dueBands(catalogue, history, now); }));
    t.state.push_back(
        warmMilliseconds([&] { SNUG_ASSERT(!stateOf(catalogue, history, bands, now).open.empty()); }));
    t.trend.push_back(
        milliseconds([&] { SNUG_ASSERT(trendsOf(catalogue, history, "tread-depth", now).size() == 4); }));
}

void print(const char *what, const std::vector<double> &times, double bare, double budget)
{
    const double time = median(times);
    std::printf("%-32s %9.3f ms (least %.3f)  ratio to the bare read %6.3f", what, time,
                *std::min_element(times.begin(), times.end()), time / bare);
    if (budget > 0.0)
        std::printf("  share of its budget %.2f", time / budget);
    std::printf("\n");
}

} // namespace

int main()
{
    const auto folder =
        std::filesystem::temp_directory_path() / ("snugwalk-speed-" + RandomIds().next().shortText());
    std::filesystem::create_directories(folder);
    const LocalTime first = parseLocal("2005-01-01T08:00:00Z").value();
    const LocalTime now = parseLocal("2024-12-01T08:00:00Z").value();
    FixedClock clock(now);
    CountingIds ids("speed");
    Logbook book =
        Logbook::open((folder / "long.snugwalk").string(), {DeviceKey::random(), "speed", &clock, &ids})
            .value();
    const LongHistory written = writeTwentyYears(book, first);
    std::printf("%d walks, %d marks, %d findings, %d trips, %zu points\n", written.walks, written.marks,
                written.findings, written.trips, productCatalogue().points().size());
    const World world = productWorld().world;
    Timings t;
    for (int i = 0; i < 15; ++i)
        measureOnce(book, written.rig, world, now, t);
    const double bare = median(t.bare);
    print("bare read of all rows", t.bare, bare, 0.0);
    print("load the whole history", t.load, bare, 0.0);
    print("weathering day by day", t.weather, bare, 0.0);
    print("compare two full rounds", t.compare, bare, frame / 10.0);
    std::vector<double> standing;
    for (std::size_t i = 0; i < t.bands.size(); ++i)
        standing.push_back(t.bands[i] + t.state[i]);
    print("due bands and state, sorted", standing, bare, frame);
    print("  of it due bands", t.bands, bare, 0.0);
    print("  of it concern and state", t.state, bare, 0.0);
    print("trend of tread at four wheels", t.trend, bare, 0.0);
    std::filesystem::remove_all(folder);
    return 0;
}

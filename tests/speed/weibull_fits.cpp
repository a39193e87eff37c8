// SPDX-License-Identifier: Apache-2.0
// Answers each line "NAME COUNT" with the seconds that one fit takes, over COUNT; `grid` and `coarse_grid`
// weigh one point of five lives with ten looks each, with its quantiles; `bands` works out all due bands of a
// rig with twenty years of history, weathered before. "bands_counted 1" is answered with their number.
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <iostream>
#include <string>

#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "due/band.hpp"
#include "due/life/life_posterior.hpp"
#include "due/life/weibull_fit.hpp"
#include "logbook/query.hpp"
#include "long_history.hpp"
#include "round/history.hpp"

namespace {

using namespace snugwalk;

const CensoredLives &cracks()
{
    static const CensoredLives data{{{0, 186, 5},
                                     {186, 606, 16},
                                     {606, 902, 12},
                                     {902, 1077, 18},
                                     {1077, 1209, 18},
                                     {1209, 1377, 2},
                                     {1377, 1592, 6},
                                     {1592, 1932, 17},
                                     {1932, HUGE_VAL, 73}},
                                    {},
                                    {}};
    return data;
}

const CensoredLives &fourLives()
{
    static const CensoredLives data{{{12, 18}, {6, HUGE_VAL}, {0, 9}, {20, 26}}, {}, {}};
    return data;
}

double weigh(const LifeCells &cells)
{
    std::array<LookAtAge, 10> looks{};
    for (std::size_t i = 0; i < looks.size(); ++i)
        looks[i] = {1.5 * static_cast<double>(i + 1), 0.85};
    LifePosterior posterior(cells, 20.0);
    for (int life = 0; life < 4; ++life)
        posterior.add({{looks}, LookAtAge{18.0, 0.85}});
    posterior.setNow({looks});
    posterior.settle();
    static std::vector<double> ages;
    static std::vector<std::pair<double, double>> scratch;
    ages.resize(posterior.weights().size());
    std::array<double, 3> out{};
    posterior.agesWhenPresent(0.03, ages);
    weightedQuantiles(ages, posterior.weights(), std::array{0.1, 0.5, 0.9}, out, scratch);
    return out[1];
}

// A rig's history of twenty years, as the core holds it in memory.
class LongRig {
public:
    LongRig()
    {
        const auto folder =
            std::filesystem::temp_directory_path() / ("snugwalk-bands-" + RandomIds().next().shortText());
        std::filesystem::create_directories(folder);
        {
            FixedClock clock(m_now);
            CountingIds ids("speed");
            Logbook book = Logbook::open((folder / "long.snugwalk").string(),
                                         {DeviceKey::random(), "speed", &clock, &ids})
                               .value();
            const LongHistory written = writeTwentyYears(book, parseLocal("2005-01-01T08:00:00Z").value());
            m_history = loadHistory(book, written.rig).value();
        }
        std::filesystem::remove_all(folder);
        const World world = productWorld().world;
        weatherHistory(m_history, &world, m_now);
    }
    [[nodiscard]] std::size_t bands() const { return dueBands(productCatalogue(), m_history, m_now).size(); }

private:
    LocalTime m_now = parseLocal("2024-12-01T08:00:00Z").value();
    RigHistory m_history;
};

std::size_t allBands()
{
    static const LongRig rig;
    return rig.bands();
}

double once(const std::string &name)
{
    static const LifeCells fine({});
    static const LifeCells coarse({}, coarseGrid);
    if (name == "grid")
        return weigh(fine);
    if (name == "coarse_grid")
        return weigh(coarse);
    if (name == "bands")
        return static_cast<double>(allBands());
    const auto fit = fitWeibull(name == "cracks" ? cracks() : fourLives());
    return fit ? fit->logScale : NAN;
}

} // namespace

int main()
{
    std::string name;
    int count = 0;
    while (std::cin >> name >> count) {
        if (name == "bands_counted") {
            std::printf("%zu\n", allBands());
            std::fflush(stdout);
            continue;
        }
        double sum = 0.0;
        const auto began = std::chrono::steady_clock::now();
        for (int i = 0; i < count; ++i)
            sum += once(name);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
        if (!std::isfinite(sum))
            return 1;
        std::printf("%.9g\n", took.count() / count);
        std::fflush(stdout);
    }
    return 0;
}

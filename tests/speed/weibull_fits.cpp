// SPDX-License-Identifier: Apache-2.0
// Answers each line "NAME COUNT" with the seconds that one fit takes, over COUNT; `grid` and `coarse_grid`
// weigh one point of five lives with ten looks each, with its quantiles.
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <string>

#include "due/life/life_posterior.hpp"
#include "due/life/weibull_fit.hpp"

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

double once(const std::string &name)
{
    static const LifeCells fine({});
    static const LifeCells coarse({}, coarseGrid);
    if (name == "grid")
        return weigh(fine);
    if (name == "coarse_grid")
        return weigh(coarse);
    const auto fit = fitWeibull(name == "cracks" ? cracks() : fourLives());
    return fit ? fit->logScale : NAN;
}

} // namespace

int main()
{
    std::string name;
    int count = 0;
    while (std::cin >> name >> count) {
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

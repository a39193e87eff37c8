// SPDX-License-Identifier: Apache-2.0
// Simulated readings with noise of known size: how often an unchanged one is called changed, against the
// 99 % binomial interval of the level it is meant to have.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <random>

#include "../../unit/due/story.hpp"
#include "compare/compare.hpp"
#include "compare/readings.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

constexpr unsigned seeds = 8;
constexpr int walks = 30;
constexpr int places = 40;
constexpr double z99 = 2.575829; // of the normal, two sides

/// What is read, as the product's catalogue has it, and its true value in SI.
struct Gauge {
    const char *point;
    const char *reading;
    Dimension dimension;
    double truth;
};
constexpr std::array gauges = {
    Gauge{"tread-depth", "tread-depth", Dimension::Length, 6.0e-3},
    Gauge{"tire-pressure", "cold-pressure", Dimension::Pressure, 450e3},
    Gauge{"house-battery", "battery-rest-voltage", Dimension::Voltage, 12.7},
    Gauge{"hub-temperature", "hub-temperature", Dimension::Temperature, 320.0},
    Gauge{"nose-weight", "nose-weight", Dimension::Mass, 80.0},
    Gauge{"wheel-nut-torque", "nut-torque", Dimension::Torque, 140.0},
};

/// `truth(gauge, walk)` in SI; the noise is that which the comparison assumes.
template <typename Truth>
RigHistory readOn(unsigned seed, std::vector<Id> &ids, Truth truth)
{
    std::mt19937 rng(seed);
    std::normal_distribution<double> noise;
    Story story;
    for (int w = 0; w < walks; ++w) {
        LocalTime when = at("2020-01-01");
        when.instant += std::chrono::days(30 * w);
        std::vector<std::string> tape;
        for (const Gauge &g : gauges)
            tape.emplace_back(g.point);
        ids.push_back(story.walk(when, "full_round", tape));
        for (const Gauge &g : gauges) {
            Mark &mark = story.mark(ids.back(), g.point, MarkState::Pass, when);
            mark.by = "Ada";
            const double si = truth(g, w);
            for (int p = 0; p < places; ++p)
                mark.readings.push_back({g.reading, "place " + std::to_string(p), g.dimension,
                                         si + noise(rng) * readingUncertainty(g.dimension, si), "x"});
        }
    }
    return story.history();
}

struct Rate {
    long hits = 0;
    long all = 0;
    [[nodiscard]] double share() const { return static_cast<double>(hits) / static_cast<double>(all); }
    [[nodiscard]] double halfWidth(double level) const
    {
        return z99 * std::sqrt(level * (1.0 - level) / static_cast<double>(all));
    }
};

void print(const char *what, const Rate &rate, double level)
{
    std::printf("%-34s %ld of %ld, %.4f; 99 %% interval of %.4f: %.4f to %.4f\n", what, rate.hits, rate.all,
                rate.share(), level, level - rate.halfWidth(level), level + rate.halfWidth(level));
}

} // namespace

TEST_CASE("unchanged readings are called changed 1 time in 20")
{
    Rate all;
    Rate anyStands; // comparisons in which at least one change stands among many
    std::map<std::string, Rate> byGauge;
    for (unsigned seed = 0; seed < seeds; ++seed) {
        std::vector<Id> ids;
        const RigHistory history = readOn(seed, ids, [](const Gauge &g, int) { return g.truth; });
        for (std::size_t w = 1; w < walks; w += 2) { // pairs apart from each other
            const Comparison c = compareWalks(realCatalogue(), history, ids[w - 1], ids[w]);
            for (const PointChange &p : c.points) {
                for (const ReadingChange &r : p.readings) {
                    all.hits += r.changed;
                    ++all.all;
                    byGauge[r.slug].hits += r.changed;
                    ++byGauge[r.slug].all;
                }
            }
            anyStands.hits += c.rates.readingsStand > 0;
            ++anyStands.all;
        }
    }
    print("unchanged, called changed", all, 0.05);
    CHECK(all.all == 28800);
    CHECK(std::abs(all.share() - 0.05) < all.halfWidth(0.05));
    for (const auto &[name, rate] : byGauge) {
        print(name.c_str(), rate, 0.05);
        CHECK(std::abs(rate.share() - 0.05) < rate.halfWidth(0.05));
    }
    // when nothing changed, the share of comparisons with any false change that stands is the rate itself
    print("comparisons with any that stands", anyStands, 0.10);
    CHECK(anyStands.share() < 0.10 + anyStands.halfWidth(0.10));
}

TEST_CASE("a step of five uncertainties of the difference is found as often as the normal says")
{
    const double power = 0.998817; // P(|N(5, 1)| > 1.96), the normal table
    Rate rate;
    for (unsigned seed = 100; seed < 100 + seeds; ++seed) {
        std::vector<Id> ids;
        const RigHistory history = readOn(seed, ids, [](const Gauge &g, int w) {
            const double u = readingUncertainty(g.dimension, g.truth);
            return g.truth + (w % 2 == 0 ? 0.0 : 5.0 * std::sqrt(2.0) * u);
        });
        for (std::size_t w = 1; w < walks; w += 2) {
            const Comparison c = compareWalks(realCatalogue(), history, ids[w - 1], ids[w]);
            for (const PointChange &p : c.points) {
                for (const ReadingChange &r : p.readings) {
                    if (r.dimension != Dimension::Length && r.dimension != Dimension::Temperature)
                        continue; // the others' uncertainty grows with the reading
                    rate.hits += r.changed;
                    ++rate.all;
                }
            }
        }
    }
    print("changed, called changed", rate, power);
    CHECK(std::abs(rate.share() - power) < rate.halfWidth(power));
}

TEST_CASE("steady wear is called faster than expected no more often than 1 time in 20")
{
    Rate rate;
    for (unsigned seed = 200; seed < 200 + seeds; ++seed) {
        std::vector<Id> ids;
        const RigHistory history = readOn(seed, ids, [](const Gauge &g, int w) {
            return g.dimension == Dimension::Length ? 9.0e-3 - 0.2e-3 * w : g.truth;
        });
        for (const std::size_t w : {5U, 12U, 19U, 26U}) {
            const Comparison c = compareWalks(realCatalogue(), history, ids[w - 1], ids[w]);
            for (const PointChange &p : c.points) {
                for (const ReadingChange &r : p.readings) {
                    if (r.dimension != Dimension::Length)
                        continue;
                    REQUIRE(r.expectedFrom == "slope_days");
                    rate.hits += r.faster;
                    ++rate.all;
                }
            }
        }
    }
    print("steady wear, called faster", rate, 0.05);
    CHECK(rate.share() < 0.05 + rate.halfWidth(0.05));
    CHECK(rate.share() > 0.01); // it does speak up
}

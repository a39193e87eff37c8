// SPDX-License-Identifier: Apache-2.0
// Balloons keep apart and stay on the paper, and no two leaders cross.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "rig/outline/balloons.hpp"

using namespace snugwalk::outline;

namespace {

// By solving for the spot in common, another way than the code's.
bool meet(PaperSpot a, PaperSpot b, PaperSpot c, PaperSpot d)
{
    const double ux = b.x - a.x;
    const double uy = b.y - a.y;
    const double vx = d.x - c.x;
    const double vy = d.y - c.y;
    const double turn = ux * vy - uy * vx;
    if (std::fabs(turn) < 1e-12)
        return false;
    const double s = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
    const double t = ((c.x - a.x) * uy - (c.y - a.y) * ux) / turn;
    const double eps = 1e-6;
    return s > eps && s < 1 - eps && t > eps && t < 1 - eps;
}

int crossings(const std::vector<PaperSpot> &spots, const std::vector<PaperSpot> &centres)
{
    int found = 0;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k)
            found += meet(spots[i], centres[i], spots[k], centres[k]) ? 1 : 0;
    }
    return found;
}

void checkApart(const std::vector<PaperSpot> &centres, const BalloonBand &band)
{
    for (std::size_t i = 0; i < centres.size(); ++i) {
        CHECK(centres[i].x >= band.side / 2 - 1e-9);
        CHECK(centres[i].x <= band.width - band.side / 2 + 1e-9);
        for (std::size_t k = 0; k < i; ++k)
            CHECK((std::fabs(centres[i].x - centres[k].x) >= band.side - 1e-9 ||
                   std::fabs(centres[i].y - centres[k].y) >= band.side - 1e-9));
    }
}

} // namespace

TEST_CASE("any spots: balloons keep apart on the paper, leaders do not cross")
{
    std::mt19937 rng(7);
    for (int round = 0; round < 400; ++round) {
        const BalloonBand band{round % 3 == 0 ? 328.0 : 700.0, round % 2 == 0 ? 48.0 : 64.0, 100.0,
                               round % 5 == 0};
        const double from = band.below ? 0.0 : 100.0; // the drawing is on the other side of the band's edge
        std::uniform_real_distribution<double> x(0, band.width);
        std::uniform_real_distribution<double> y(from, from + 100.0);
        std::vector<PaperSpot> spots;
        for (int i = 0; i < 1 + round % 24; ++i)
            spots.push_back({x(rng), y(rng)});
        CAPTURE(round);
        const std::vector<PaperSpot> centres = balloonSpots(spots, band);
        checkApart(centres, band);
        CHECK(crossings(spots, centres) == 0);
        for (const PaperSpot &c : centres)
            CHECK((band.below ? c.y > band.edge : c.y < band.edge));
    }
}

TEST_CASE("one leader that passes under another's spot changes ends with it")
{
    // sorted by x alone the leader of the low spot would cross that of the high one
    const std::vector<PaperSpot> spots = {{380, 200}, {390, 102}, {395, 104}};
    const BalloonBand band{400, 48, 100, false};
    const std::vector<PaperSpot> centres = balloonSpots(spots, band);
    CHECK(crossings(spots, centres) == 0);
    checkApart(centres, band);
}

TEST_CASE("a lone balloon stands straight above its spot")
{
    const std::vector<PaperSpot> centres = balloonSpots({{123, 300}}, {400, 48, 100, false});
    REQUIRE(centres.size() == 1);
    CHECK(centres[0].x == 123);
    CHECK(centres[0].y == 76);
}

TEST_CASE("findings at one spot each get a balloon")
{
    const std::vector<PaperSpot> spots(5, PaperSpot{200, 150});
    const BalloonBand band{400, 48, 100, false};
    const std::vector<PaperSpot> centres = balloonSpots(spots, band);
    checkApart(centres, band);
    CHECK(crossings(spots, centres) == 0);
}

TEST_CASE("as many rows as are needed")
{
    CHECK(balloonRows(0, 400, 48) == 0);
    CHECK(balloonRows(8, 400, 48) == 1);
    CHECK(balloonRows(9, 400, 48) == 2);
    CHECK(balloonRows(3, 20, 48) == 3); // narrower than one: one below another
}

// SPDX-License-Identifier: Apache-2.0
// Round steps of degrees and of length.
#include "map/grid.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace snugwalk {
namespace {

constexpr int mostLines = 4;
constexpr std::array steps = {0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 45.0, 90.0};

int decimalsOf(double step) { return step < 0.0099 ? 3 : step < 0.099 ? 2 : step < 0.99 ? 1 : 0; }

double onOneTurn(double longitude) { return longitude - 360.0 * std::round(longitude / 360.0); }

} // namespace

std::vector<GridLine> gridOf(const MapFrame &frame)
{
    std::vector<GridLine> lines;
    const GeoBox box = frame.box();
    const auto add = [&](double from, double to, bool meridian) {
        const auto *step =
            std::find_if(steps.begin(), steps.end(), [&](double s) { return (to - from) / s <= mostLines; });
        const double by = step == steps.end() ? steps.back() : *step;
        for (double k = std::ceil(from / by); k * by < to; k += 1.0) {
            const double degrees = k * by;
            const FlatPoint at = meridian ? frame.at(0.0, degrees) : frame.at(degrees, 0.0);
            lines.push_back(
                {meridian ? at.x : at.y, meridian ? onOneTurn(degrees) : degrees, decimalsOf(by), meridian});
        }
    };
    add(box.west, box.east, true);
    add(box.south, box.north, false);
    return lines;
}

double scaleLength(double longestKm, double unitKm)
{
    double best = 0.1;
    for (double power = 0.1; power < 2e4; power *= 10.0) {
        for (const double times : {1.0, 2.0, 5.0}) {
            if (times * power * unitKm <= longestKm)
                best = times * power;
        }
    }
    return best;
}

} // namespace snugwalk

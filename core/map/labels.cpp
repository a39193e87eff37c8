// SPDX-License-Identifier: Apache-2.0
// Trying the four sides of each place in turn.
#include "map/labels.hpp"

#include <algorithm>
#include <array>

namespace snugwalk {
namespace {

constexpr std::size_t looked = 8; ///< places looked at for each name wanted

// Letters, not bytes: those that continue a letter of UTF-8 begin with the bits 10.
double lettersOf(const std::string &name)
{
    return static_cast<double>(std::count_if(name.begin(), name.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xc0U) != 0x80U;
    }));
}

} // namespace

bool overlap(const PaperBox &a, const PaperBox &b)
{
    return a.left < b.left + b.width && b.left < a.left + a.width && a.top < b.top + b.height &&
           b.top < a.top + a.height;
}

std::vector<PlaceLabel> placeLabels(const Gazetteer &places, const MapFrame &frame, double paperWidth,
                                    const LabelStyle &style, std::vector<PaperBox> taken)
{
    std::vector<PlaceLabel> labels;
    const double scale = paperWidth / frame.width();
    const double paperHeight = frame.height() * scale;
    for (NamedPlace &place : places.largestWithin(frame.box(), looked * style.atMost)) {
        if (labels.size() >= style.atMost)
            break;
        const FlatPoint flat = frame.at(place.place);
        const double x = flat.x * scale;
        const double y = flat.y * scale;
        const double width = lettersOf(place.name) * style.letter;
        const double across = x - width / 2.0;
        const double level = y - style.height / 2.0;
        const std::array<PaperBox, 4> sides = {
            PaperBox{x + style.gap, level, width, style.height},
            PaperBox{x - style.gap - width, level, width, style.height},
            PaperBox{across, y - style.gap - style.height, width, style.height},
            PaperBox{across, y + style.gap, width, style.height}};
        const PaperBox dot{x - style.gap, y - style.gap, 2.0 * style.gap, 2.0 * style.gap};
        const auto isFree = [&](const PaperBox &box) {
            return box.left >= 0.0 && box.top >= 0.0 && box.left + box.width <= paperWidth &&
                   box.top + box.height <= paperHeight &&
                   std::none_of(taken.begin(), taken.end(),
                                [&](const PaperBox &other) { return overlap(box, other); });
        };
        if (!isFree(dot))
            continue;
        const auto side = std::find_if(sides.begin(), sides.end(), isFree);
        if (side == sides.end())
            continue;
        taken.push_back(*side);
        taken.push_back(dot);
        labels.push_back({std::move(place.name), x, y, *side});
    }
    return labels;
}

} // namespace snugwalk

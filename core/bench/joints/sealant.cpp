// SPDX-License-Identifier: Apache-2.0
// Prisms of sealant.
#include "bench/joints/sealant.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr auto shapeSlugs =
    std::to_array<std::string_view>({"rectangle", "round", "half_round", "fillet", "half_ellipse"});
constexpr Length thinnest = millimetres(0.5);
constexpr Length thickest = millimetres(100.0);
constexpr double longestMetres = 1000.0;
constexpr double lowWaste = 0.05;
constexpr double highWaste = 0.15;
constexpr Volume largestCartridge = Volume::fromSi(0.1); // a drum
constexpr double mostCartridges = 100'000.0;

bool isSize(Length v) { return v >= thinnest && v <= thickest; } // NaN is none

Error badSize(const char *which)
{
    return {Errc::OutOfRange, "no bead is that thick", which, "give 0.5 mm to 100 mm"};
}

bool hasDiameter(BeadShape shape) { return shape == BeadShape::Round || shape == BeadShape::HalfRound; }

} // namespace

std::string_view slug(BeadShape shape) { return shapeSlugs.at(static_cast<std::size_t>(shape)); }

std::optional<BeadShape> parseBeadShape(std::string_view text)
{
    for (std::size_t i = 0; i < shapeSlugs.size(); ++i) {
        if (shapeSlugs[i] == text)
            return static_cast<BeadShape>(i);
    }
    return std::nullopt;
}

Result<Area> beadArea(BeadShape shape, Length width, Length height)
{
    if (!isSize(width))
        return badSize("width");
    if (!hasDiameter(shape) && !isSize(height))
        return badSize("height");
    constexpr double pi = std::numbers::pi;
    switch (shape) {
    case BeadShape::Rectangle:
        return width * height;
    case BeadShape::Round:
        return width * width * (pi / 4.0);
    case BeadShape::HalfRound:
        return width * width * (pi / 8.0);
    case BeadShape::Fillet:
        return width * height * 0.5;
    case BeadShape::HalfEllipse:
        return width * height * (pi / 4.0);
    }
    return Area();
}

Result<Estimate> beadVolume(const Bead &bead)
{
    const Result<Area> area = beadArea(bead.shape, bead.width, bead.height);
    if (!area)
        return area.error();
    if (!(bead.length.si() >= 0.0 && bead.length.si() <= longestMetres))
        return Error{Errc::OutOfRange, "no joint is that long", "length", "give 0 to 1,000 m"};
    if (!(bead.waste >= 0.0 && bead.waste <= 1.0))
        return Error{Errc::OutOfRange, "no such waste", "waste", "give a share from 0 to 1, such as 0.10"};
    const double net = (*area * bead.length).si();
    Estimate estimate;
    estimate.value = net * (1.0 + bead.waste);
    estimate.low = net * (1.0 + std::min(lowWaste, bead.waste));
    estimate.high = net * (1.0 + std::max(highWaste, bead.waste));
    estimate.unit = "m³";
    estimate.basis = "computed";
    estimate.source = "CP";
    return estimate;
}

Result<int> cartridgesFor(Volume volume, Volume cartridge, double fill)
{
    if (!(fill > 0.0 && fill <= 1.0))
        return Error{Errc::OutOfRange, "no such share of a cartridge", "fill", "give more than 0, at most 1"};
    if (!(cartridge.si() > 0.0 && cartridge <= largestCartridge))
        return Error{Errc::OutOfRange, "no cartridge holds that", "cartridge",
                     "give its volume, such as 300 mL"};
    const double count = std::ceil(volume.si() / (cartridge.si() * fill) - 1e-9);
    if (!(volume.si() >= 0.0 && count <= mostCartridges))
        return Error{Errc::OutOfRange, "no job takes that much", "volume", "check length and section"};
    return static_cast<int>(std::max(volume.si() > 0.0 ? 1.0 : 0.0, count));
}

} // namespace snugwalk

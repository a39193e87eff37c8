// SPDX-License-Identifier: Apache-2.0
// Linear expansion over a joint.
#include "bench/joints/seam.hpp"

#include <array>

#include "base/units.hpp"

namespace snugwalk {
namespace {

struct Expansion {
    std::string_view slug;
    double perKelvin;
};
constexpr auto materials = std::to_array<Expansion>(
    {{"aluminum", 23e-6}, {"fiberglass", 25e-6}, {"steel", 12e-6}, {"rubber", 160e-6}});
constexpr double doubt = 0.20;

Status checkSeam(const Seam &s)
{
    if (!(s.run > Length() && s.run <= metres(30.0)))
        return Error{Errc::OutOfRange, "no skin is that long", "run", "give more than 0, up to 30 m (98 ft)"};
    if (!(s.width >= millimetres(0.5) && s.width <= millimetres(100.0)))
        return Error{Errc::OutOfRange, "no joint is that wide", "width", "give 0.5 mm to 100 mm"};
    if (!(s.swing.si() > 0.0 && s.swing.si() <= 150.0))
        return Error{Errc::OutOfRange, "no skin swings that far", "swing",
                     "give the hottest less the coldest, more than 0, up to 150 °C (270 °F)"};
    if (!(s.allowed >= 0.05 && s.allowed <= 1.0))
        return Error{Errc::OutOfRange, "no sealant is of that class", "class",
                     "give the percent printed on the cartridge, such as 12.5, 25 or 50 %"};
    if (!(s.perKelvin >= 1e-6 && s.perKelvin <= 1e-3))
        return Error{Errc::OutOfRange, "nothing expands like that", "material",
                     "give a named material, or 1e-6 to 1e-3 a kelvin"};
    return done();
}

Estimate around(double value, const char *unit)
{
    Estimate e;
    e.value = value;
    e.low = value * (1.0 - doubt);
    e.high = value * (1.0 + doubt);
    e.unit = unit;
    e.basis = "computed";
    e.source = "handbook expansion, from memory";
    return e;
}

} // namespace

std::string_view slug(SeamMaterial material) { return materials.at(static_cast<std::size_t>(material)).slug; }

std::optional<SeamMaterial> parseSeamMaterial(std::string_view text)
{
    for (std::size_t i = 0; i < materials.size(); ++i) {
        if (materials[i].slug == text)
            return static_cast<SeamMaterial>(i);
    }
    return std::nullopt;
}

double expansionPerKelvin(SeamMaterial material)
{
    return materials.at(static_cast<std::size_t>(material)).perKelvin;
}

Result<SeamMovement> seamMovement(const Seam &seam)
{
    SNUG_TRY(checkSeam(seam));
    const double moved = seam.perKelvin * seam.run.si() * seam.swing.si();
    SeamMovement m;
    m.movement = around(moved, "m");
    m.strain = around(moved / seam.width.si(), "1");
    m.width = around(moved / seam.allowed, "m");
    if (m.strain.value > seam.allowed) {
        m.movement.warnings.emplace_back("joint_too_narrow");
        m.strain.warnings.emplace_back("joint_too_narrow");
    }
    return m;
}

} // namespace snugwalk

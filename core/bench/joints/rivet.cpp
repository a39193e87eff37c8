// SPDX-License-Identifier: Apache-2.0
// Rules of thumb on five sizes.
#include "bench/joints/rivet.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr Length inches(double v) { return metres(v * 0.0254); }
constexpr auto sizes = std::to_array<RivetSize>({
    {"3/32", inches(3.0 / 32.0), "40", inches(0.098)},
    {"1/8", inches(1.0 / 8.0), "30", inches(0.1285)},
    {"5/32", inches(5.0 / 32.0), "20", inches(0.161)},
    {"3/16", inches(3.0 / 16.0), "11", inches(0.191)},
    {"1/4", inches(1.0 / 4.0), "F", inches(0.257)},
});
constexpr Length sixteenth = inches(1.0 / 16.0);
constexpr const char *source = "NAVEDTRA-14018; AC-43.13-1B";

Status checkSheets(std::span<const Length> sheets)
{
    const auto sheet = [](Length t) { return t >= millimetres(0.2) && t <= millimetres(6.0); };
    if (sheets.empty() || sheets.size() > 6 || !std::all_of(sheets.begin(), sheets.end(), sheet))
        return Error{Errc::OutOfRange, "no such sheets", "sheets",
                     "give one to six thicknesses of 0.2 to 6 mm, such as 0.040 + 0.063 in"};
    return done();
}

const RivetSize &nearest(Length wanted)
{
    return *std::min_element(sizes.begin(), sizes.end(), [&](const RivetSize &a, const RivetSize &b) {
        return std::abs((a.diameter - wanted).si()) < std::abs((b.diameter - wanted).si());
    });
}

Result<const RivetSize *> sizeFor(const RivetJoint &joint, Length thickest)
{
    Length wanted = thickest * 3.0;
    if (joint.makerDiameter) {
        wanted = *joint.makerDiameter;
        if (!(wanted >= millimetres(2.0) && wanted <= millimetres(7.0)))
            return Error{Errc::OutOfRange, "no rivet is of that size", "diameter", "give 3/32 to 1/4 in"};
    }
    const RivetSize *size = &nearest(wanted);
    if (!joint.enlargedHole)
        return size;
    const Length hole = *joint.enlargedHole;
    if (!(hole >= millimetres(1.0) && hole <= millimetres(20.0)))
        return Error{Errc::OutOfRange, "no rivet left that hole", "hole", "give 1 to 20 mm"};
    while (size != sizes.data() + sizes.size() && size->hole < hole)
        ++size;
    if (size == sizes.data() + sizes.size())
        return Error{Errc::Unsupported, "no rivet of the list fills that hole", "hole",
                     "patch it with a backing plate, or ask the body maker for a larger fastener"};
    return size;
}

Estimate figure(double value, double low, double high)
{
    Estimate e;
    e.value = value;
    e.low = low;
    e.high = high;
    e.unit = "m";
    e.basis = "published";
    e.source = source;
    return e;
}

Estimate figure(Length v) { return figure(v.si(), v.si(), v.si()); }

} // namespace

std::span<const RivetSize> rivetSizes() { return sizes; }

Result<RivetChoice> chooseRivet(const RivetJoint &joint)
{
    SNUG_TRY(checkSheets(joint.sheets));
    const Length thickest = *std::max_element(joint.sheets.begin(), joint.sheets.end());
    Length grip;
    for (const Length t : joint.sheets)
        grip = grip + t;
    const auto found = sizeFor(joint, thickest);
    if (!found)
        return found.error();
    const RivetSize &size = **found;
    const Length d = size.diameter;

    RivetChoice choice{size, {}, figure(grip), {}, {}, figure(grip + d * 1.5), {}};
    choice.diameter = figure(d.si(), std::min(d, thickest).si(), std::max(d, thickest * 3.0).si());
    if (joint.makerDiameter && !joint.enlargedHole) {
        choice.diameter = figure(d);
        choice.diameter.basis = "maker";
        choice.diameter.source = "maker";
    }
    const Length edge = d * (joint.countersunk ? 2.5 : 2.0);
    choice.edge = figure(edge.si(), edge.si(), (d * 4.0).si());
    choice.pitch = figure((d * 3.0).si(), (d * 3.0).si(), (d * 8.0).si());
    choice.blindGrip = sixteenth * std::ceil(grip / sixteenth - 1e-9);
    auto &warnings = choice.diameter.warnings;
    if (thickest * 3.0 > sizes.back().diameter * 1.1)
        warnings.emplace_back("sheets_too_thick");
    if (joint.enlargedHole && *joint.enlargedHole > nearest(thickest * 3.0).hole)
        warnings.emplace_back("hole_enlarged");
    if (d > thickest * 3.3)
        warnings.emplace_back("beyond_three_sheets");
    return choice;
}

} // namespace snugwalk

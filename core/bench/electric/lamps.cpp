// SPDX-License-Identifier: Apache-2.0
// The table of lamps.
#include "bench/electric/lamps.hpp"

#include <array>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr auto circuits = std::to_array<std::string_view>({"running", "left", "right", "stop", "none"});
constexpr Length longFrom = metres(30.0 * 0.3048);
constexpr Length wideFrom = metres(80.0 * 0.0254);
constexpr Mass tapeFrom = kilograms(10'000.0 * 0.45359237);

using enum LampCircuit;
constexpr auto everyTrailer = std::to_array<LampRow>({
    {"tail", 2, "red", Running},
    {"stop", 2, "red", Stop},
    {"turn_left", 1, "red_or_amber", Left},
    {"turn_right", 1, "red_or_amber", Right},
    {"plate", 1, "white", Running},
    {"side_marker_front", 2, "amber", Running},
    {"side_marker_rear", 2, "red", Running},
    {"reflector_rear", 2, "red", None},
    {"reflector_side_front", 2, "amber", None},
    {"reflector_side_rear", 2, "red", None},
});
constexpr auto longTrailer = std::to_array<LampRow>({
    {"side_marker_middle", 2, "amber", Running},
    {"reflector_side_middle", 2, "amber", None},
});
constexpr auto wideTrailer = std::to_array<LampRow>({
    {"clearance_front", 2, "amber", Running},
    {"clearance_rear", 2, "red", Running},
    {"identification_rear", 3, "red", Running},
});

} // namespace

std::string_view slug(LampCircuit circuit) { return circuits.at(static_cast<std::size_t>(circuit)); }

int LampList::onCircuit(LampCircuit circuit) const
{
    int count = 0;
    for (const LampRow &row : rows)
        count += row.circuit == circuit ? row.count : 0;
    return count;
}

int LampList::lamps() const
{
    return onCircuit(Running) + onCircuit(Left) + onCircuit(Right) + onCircuit(Stop);
}
int LampList::reflectors() const { return onCircuit(None); }

Result<LampList> lampsFor(const TrailerSize &t)
{
    if (!(t.width >= metres(0.5) && t.width <= metres(3.0)))
        return Error{Errc::OutOfRange, "no trailer is that wide", "width", "give 0.5 to 3 m (20 to 118 in)"};
    if (!(t.length >= metres(1.0) && t.length <= metres(25.0)))
        return Error{Errc::OutOfRange, "no trailer is that long", "length", "give 1 to 25 m (82 ft)"};
    if (!(t.rating >= Mass() && t.rating <= kilograms(20'000.0)))
        return Error{Errc::OutOfRange, "no trailer is rated for that", "rating",
                     "give up to 20,000 kg (44,000 lb)"};
    LampList list;
    list.rows.assign(everyTrailer.begin(), everyTrailer.end());
    if (t.length > longFrom)
        list.rows.insert(list.rows.end(), longTrailer.begin(), longTrailer.end());
    if (t.width >= wideFrom) {
        list.rows.insert(list.rows.end(), wideTrailer.begin(), wideTrailer.end());
        list.tape = t.rating > tapeFrom;
    }
    return list;
}

} // namespace snugwalk

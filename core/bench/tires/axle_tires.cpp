// SPDX-License-Identifier: Apache-2.0
// Sharing a load among tires.
#include "bench/tires/axle_tires.hpp"

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double unevenSides = 1.10; // common practice, no source: most that sides differ by unless weighed

Status check(const AxleTires &a)
{
    if (!(a.maxLoad >= kilograms(50) && a.maxLoad <= kilograms(5000)))
        return Error{Errc::OutOfRange, "no such tire carries that", "max-load",
                     "read the load on the sidewall"};
    if (a.tires < 2 || a.tires > 12 || a.tires % 2 != 0)
        return Error{Errc::OutOfRange, "no axle group stands on that many tires", "tires",
                     "give 2, 4, 6 … 12"};
    if (!(a.load > Mass() && a.load <= kilograms(40'000)))
        return Error{Errc::OutOfRange, "no axle group carries that", "axle-load",
                     "give what the scale shows under all axles"};
    if (a.oneSide && !(*a.oneSide >= a.load * 0.5 && *a.oneSide <= a.load))
        return Error{Errc::InvalidInput,
                     "the heavier side carries half of the group or more, and not over all of it",
                     "heavier-side", "give the larger of the two sides"};
    return done();
}

} // namespace

Result<AxleTiresAnswer> tiresUnderAxles(const AxleTires &a)
{
    SNUG_TRY(check(a));
    const bool passenger = a.kind == TireClass::Passenger;
    const double counted = a.maxLoad.si() / (passenger ? passengerOnTrailer : 1.0);
    const double even = a.load.si() / a.tires;
    AxleTiresAnswer out;
    Estimate e;
    e.unit = "kg";
    e.basis = "computed";
    e.source = "49CFR571";
    e.value = a.oneSide ? a.oneSide->si() * 2.0 / a.tires : even;
    e.low = e.value;
    e.high = a.oneSide ? e.value : even * unevenSides;
    if (passenger)
        e.warnings.emplace_back("passenger_on_trailer");
    if (!a.oneSide)
        e.warnings.emplace_back("sides_unknown");
    if (e.value > counted)
        e.warnings.emplace_back("over_tires");
    if (a.rating && counted * a.tires < a.rating->si())
        e.warnings.emplace_back("tires_under_rating");
    out.perTire = out.share = e;
    out.share.unit = "1";
    for (double *part : {&out.share.value, &out.share.low, &out.share.high})
        *part /= counted;
    out.capacity = e;
    out.capacity.warnings.clear();
    out.capacity.value = out.capacity.low = out.capacity.high = counted * a.tires;
    return out;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A beam on two supports: the ball and the middle of the axles.
#include "bench/weights/load_shift.hpp"

#include <array>
#include <cmath>

#include "bench/make_estimate.hpp"
#include "bench/weights/tongue_warnings.hpp"

namespace snugwalk {
namespace {

constexpr double mostMass = 10'000.0;
constexpr double shiftDoubt = 0.02;  // common practice, no source
constexpr double massDoubt = 0.05;   // common practice, no source
constexpr double placeDoubt = 0.1;   // m, common practice, no source
constexpr double liquidDoubt = 0.02; // common practice, no source
constexpr double gallon = 231.0 * 0.0254 * 0.0254 * 0.0254;
constexpr double pound = 0.45359237;
constexpr std::size_t mostItems = 500;

struct Density {
    std::string_view slug;
    double poundsAGallon; // common practice, no source
};
constexpr std::array densities = {Density{"water", 8.34}, Density{"propane", 4.2}, Density{"gasoline", 6.1},
                                  Density{"diesel", 7.1}};

Status checkMass(Mass m, const char *where)
{
    return within(
        0.0, m.si(), mostMass,
        {Errc::OutOfRange, "nothing that heavy goes aboard", where, "give it with its unit, such as 150 lb"});
}

Status checkPlace(Length x, const char *where)
{
    return within(-5.0, x.si(), 30.0,
                  {Errc::OutOfRange, "no trailer is that long", where,
                   "give how far behind the coupler's ball, such as 24 ft"});
}

Status checkAxle(Length x)
{
    return within(0.5, x.si(), 20.0,
                  {Errc::OutOfRange, "no axle lies there", "axle",
                   "give how far the middle of the axles lies behind the coupler's ball"});
}

Status checkShift(const LoadShift &s)
{
    SNUG_TRY(checkMass(s.mass, "mass"));
    SNUG_TRY(checkAxle(s.axle));
    if (!s.from && !s.to)
        return Error{Errc::InvalidInput, "the load goes nowhere", "to",
                     "give where it goes, where it comes from, or both"};
    if (s.from)
        SNUG_TRY(checkPlace(*s.from, "from"));
    if (s.to)
        SNUG_TRY(checkPlace(*s.to, "to"));
    if (s.tongue)
        SNUG_TRY(checkMass(*s.tongue, "tongue"));
    if (s.gross)
        SNUG_TRY(within(1.0, s.gross->si(), 50'000.0,
                        {Errc::OutOfRange, "no trailer weighs that", "gross", "give it with its unit"}));
    if (s.tongue && s.gross && !(*s.tongue < *s.gross))
        return Error{Errc::InvalidInput, "the tongue weighs no less than the whole trailer", "tongue",
                     "weigh again, or give the gross weight of the trailer"};
    return done();
}

Origin computed(const char *unit) { return {unit, "computed", "statics"}; }

} // namespace

Result<Shifted> shiftLoad(const LoadShift &s)
{
    SNUG_TRY(checkShift(s));
    const double in = s.to ? s.mass.si() : 0.0;
    const double out = s.from ? s.mass.si() : 0.0;
    const double axles =
        (in * s.to.value_or(Length()).si() - out * s.from.value_or(Length()).si()) / s.axle.si();
    const double tongue = in - out - axles;
    Shifted shifted;
    shifted.tongueChange = around(tongue, shiftDoubt * std::fabs(tongue), computed("kg"));
    shifted.axleChange = around(axles, shiftDoubt * std::fabs(axles), computed("kg"));
    if (!s.tongue)
        return shifted;
    const double after = s.tongue->si() + tongue;
    shifted.tongueAfter = around(after, shiftDoubt * std::fabs(tongue), computed("kg"));
    if (!s.gross)
        return shifted;
    const double gross = s.gross->si() + in - out;
    if (!(gross > 0.0 && after < gross))
        return Error{Errc::InvalidInput, "that leaves no weight on the trailer's axles", "tongue",
                     "check mass, places and the gross weight"};
    shifted.shareAfter = around(after / gross, shiftDoubt * std::fabs(tongue) / gross, computed("1"));
    addTongueWarnings(after / gross, s.band, shifted.tongueChange.warnings);
    return shifted;
}

Result<Forecast> forecastWeights(std::span<const Packed> items, Length axle, const TongueBand &band)
{
    SNUG_TRY(checkAxle(axle));
    if (items.empty() || items.size() > mostItems)
        return Error{Errc::InvalidInput, "no items, or more than 500", "items",
                     "give each as mass@place, such as 120 kg@7.5 m"};
    double mass = 0.0;
    double moment = 0.0;
    double massSpread = 0.0;
    double axleSpread = 0.0;
    double tongueSpread = 0.0;
    for (const Packed &p : items) {
        SNUG_TRY(checkMass(p.mass, "items"));
        SNUG_TRY(checkPlace(p.place, "items"));
        const double m = p.mass.si();
        const double lever = p.place / axle;
        const double byPlace = m * placeDoubt / axle.si();
        mass += m;
        moment += m * lever;
        massSpread += massDoubt * massDoubt * m * m;
        axleSpread += massDoubt * massDoubt * m * m * lever * lever + byPlace * byPlace;
        tongueSpread += massDoubt * massDoubt * m * m * (1.0 - lever) * (1.0 - lever) + byPlace * byPlace;
    }
    const double tongue = mass - moment;
    if (!(tongue >= 0.0 && moment > 0.0))
        return Error{Errc::InvalidInput, "packed like this the trailer tips over its axles", "items",
                     "put load further forward, or check the places behind the ball"};
    Forecast out;
    out.gross = around(mass, std::sqrt(massSpread), computed("kg"));
    out.axles = around(moment, std::sqrt(axleSpread), computed("kg"));
    out.tongue = around(tongue, std::sqrt(tongueSpread), computed("kg"));
    out.share = around(tongue / mass, std::sqrt(tongueSpread) / mass, computed("1"));
    addTongueWarnings(tongue / mass, band, out.tongue.warnings);
    out.tongue.warnings.emplace_back("forecast");
    return out;
}

std::optional<Liquid> parseLiquid(std::string_view text)
{
    for (std::size_t i = 0; i < densities.size(); ++i) {
        if (densities[i].slug == text)
            return static_cast<Liquid>(i);
    }
    return std::nullopt;
}

Result<Estimate> liquidMass(Liquid liquid, Volume volume)
{
    SNUG_TRY(within(0.0, volume.si(), 5.0,
                    {Errc::OutOfRange, "no tank holds that", "volume",
                     "give what is in it with its unit, such as 45 gal or 170 L"}));
    const double density = densities.at(static_cast<std::size_t>(liquid)).poundsAGallon * pound / gallon;
    const double mass = density * volume.si();
    return around(mass, liquidDoubt * mass, {"kg", "common_practice", "CP"});
}

} // namespace snugwalk

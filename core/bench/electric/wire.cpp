// SPDX-License-Identifier: Apache-2.0
// Gauge, resistance, drop.
#include "bench/electric/wire.hpp"

#include <cmath>
#include <numbers>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double resistivity = 1e-6 / 58.0;
constexpr double perKelvin = 0.00393;
constexpr double doubt = 0.05;
constexpr int thickest = -3;
constexpr int thinnestListed = 18;

Error badGauge(std::string_view text)
{
    return {Errc::InvalidInput, "not a wire size: \"" + std::string(text.substr(0, 40)) + "\"", "gauge",
            "write 14, 10 AWG, 2/0 or 4 mm²"};
}

Error badSize()
{
    return {Errc::OutOfRange, "no wire of a rig is of that size", "gauge",
            "give 4/0 to 30 AWG, or 0.05 to 120 mm²"};
}

bool isSize(Area a) { return a >= Area::fromSi(0.05e-6) && a <= Area::fromSi(120e-6); }

Status checkRun(const WireRun &r)
{
    if (!isSize(r.copper))
        return badSize();
    if (!(r.oneWay >= Length() && r.oneWay <= metres(100.0)))
        return Error{Errc::OutOfRange, "no run is that long", "length", "give 0 to 100 m (328 ft), one way"};
    if (!(r.current.si() >= 0.0 && r.current.si() <= 500.0))
        return Error{Errc::OutOfRange, "no such current", "current", "give 0 to 500 A"};
    if (!(r.supply.si() >= 1.0 && r.supply.si() <= 60.0))
        return Error{Errc::OutOfRange, "not a rig's low voltage", "volts", "give 1 to 60 V"};
    if (!(r.copperTemperature >= celsius(-40.0) && r.copperTemperature <= celsius(120.0)))
        return Error{Errc::OutOfRange, "no wire is that cold or hot", "temperature", "give -40 to 120 °C"};
    if (!(r.goal >= 0.005 && r.goal <= 0.5))
        return Error{Errc::OutOfRange, "no such goal", "goal", "give 0.5 to 50 %, such as 3 %"};
    return done();
}

double ohms(const WireRun &r, Area copper)
{
    const double warm = 1.0 + perKelvin * (r.copperTemperature - celsius(20.0)).si();
    const double ways = r.groundThroughFrame ? 1.0 : 2.0;
    return ways * r.oneWay.si() * resistivity * warm / copper.si();
}

Estimate figure(double value, const char *unit)
{
    Estimate e;
    e.value = value;
    e.low = value * (1.0 - doubt);
    e.high = value * (1.0 + doubt);
    e.unit = unit;
    e.basis = "computed";
    e.source = "NBS-HANDBOOK-100";
    return e;
}

std::optional<int> thinnestFor(const WireRun &r)
{
    for (int gauge = thinnestListed; gauge >= thickest; gauge -= gauge > 0 ? 2 : 1) {
        if (r.current.si() * ohms(r, gaugeArea(gauge).value()) <= r.goal * r.supply.si())
            return gauge;
    }
    return std::nullopt;
}

std::optional<int> parseGauge(std::string_view text)
{
    if (text.ends_with("/0")) {
        const auto aught = parseInteger(text.substr(0, text.size() - 2));
        return aught && *aught >= 1 && *aught <= 4 ? std::optional<int>(1 - static_cast<int>(*aught))
                                                   : std::nullopt;
    }
    const auto number = parseInteger(text);
    return number && *number >= 0 && *number <= 1000 ? std::optional<int>(static_cast<int>(*number))
                                                     : std::nullopt;
}

} // namespace

Result<Length> gaugeDiameter(int gauge)
{
    if (gauge < thickest || gauge > 40)
        return badSize();
    return millimetres(0.127 * std::pow(92.0, (36.0 - gauge) / 39.0));
}

Result<Area> gaugeArea(int gauge)
{
    const auto d = gaugeDiameter(gauge);
    if (!d)
        return d.error();
    return *d * *d * (std::numbers::pi / 4.0);
}

std::string gaugeName(int gauge)
{
    return gauge > 0 ? std::to_string(gauge) : std::to_string(1 - gauge) + "/0";
}

Result<Area> wireArea(std::string_view typed)
{
    if (typed.size() > 40)
        return badGauge(typed);
    std::string text = lowerAscii(trim(typed));
    if (text.ends_with("mm²") || text.ends_with("mm2")) {
        const auto si = parseSi(Dimension::Area, text);
        if (!si)
            return badGauge(typed);
        return isSize(Area::fromSi(*si)) ? Result<Area>(Area::fromSi(*si)) : badSize();
    }
    std::string_view rest = text;
    if (rest.starts_with('#'))
        rest.remove_prefix(1);
    for (const std::string_view end : {"awg", "ga", "gauge"}) {
        if (rest.ends_with(end)) {
            rest.remove_suffix(end.size());
            break;
        }
    }
    const auto gauge = parseGauge(trim(rest));
    if (!gauge)
        return badGauge(typed);
    const auto area = gaugeArea(*gauge);
    return area && isSize(*area) ? area : Result<Area>(badSize());
}

Result<WireDrop> wireDrop(const WireRun &run)
{
    SNUG_TRY(checkRun(run));
    const double r = ohms(run, run.copper);
    const double volts = run.current.si() * r;
    WireDrop drop{figure(volts, "V"), figure(volts / run.supply.si(), "1"), figure(r, "Ω"), thinnestFor(run)};
    const char *warning = volts >= run.supply.si() ? "drop_all" : "drop_high";
    if (drop.share.value > run.goal) {
        drop.drop.warnings.emplace_back(warning);
        drop.share.warnings.emplace_back(warning);
    }
    return drop;
}

} // namespace snugwalk

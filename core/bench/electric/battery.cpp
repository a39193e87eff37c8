// SPDX-License-Identifier: Apache-2.0
// Volts, gravity, share of charge.
#include "bench/electric/battery.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr auto kinds = std::to_array<std::string_view>({"flooded", "agm", "gel", "lithium"});

struct Row {
    double x, y;
};
constexpr std::array chargeByGravity = {Row{1.130, 0.0}, Row{1.190, 0.25}, Row{1.220, 0.50}, Row{1.250, 0.75},
                                        Row{1.280, 1.0}};
// °F, as printed
constexpr std::array freezeByGravity = {Row{1.100, 19.0},  Row{1.150, 5.0},   Row{1.160, 1.0},
                                        Row{1.200, -16.0}, Row{1.220, -31.0}, Row{1.250, -62.0},
                                        Row{1.280, -90.0}};
constexpr std::array shareByCelsius = {Row{-17.78, 0.40}, Row{0.0, 0.75}, Row{25.0, 1.0}};
// volts of batteries that left their maker with 1.265
constexpr std::array weakAcid = {Row{11.89, 0.0}, Row{12.06, 0.25}, Row{12.24, 0.50}, Row{12.45, 0.75},
                                 Row{12.65, 1.0}};
constexpr std::array agmVolts = {Row{11.80, 0.0}, Row{12.00, 0.25}, Row{12.30, 0.50}, Row{12.60, 0.75},
                                 Row{12.80, 1.0}};
constexpr std::array gelVolts = {Row{11.80, 0.0}, Row{12.00, 0.25}, Row{12.35, 0.50}, Row{12.65, 0.75},
                                 Row{12.85, 1.0}};
constexpr std::array lithiumVolts = {Row{10.0, 0.0},  Row{12.8, 0.17}, Row{13.0, 0.30}, Row{13.1, 0.40},
                                     Row{13.2, 0.70}, Row{13.3, 0.90}, Row{13.4, 0.99}, Row{13.6, 1.0}};

constexpr double voltsPerKelvin = 1.2e-3;
constexpr double restedSeconds = 4 * 3600.0;
constexpr double unrestedDoubt = 0.15;
constexpr double freezeMargin = 5.0;
constexpr double month = 30.44 * 86400.0;

double along(std::span<const Row> rows, double x)
{
    if (x <= rows.front().x)
        return rows.front().y;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (x <= rows[i].x) {
            const double part = (x - rows[i - 1].x) / (rows[i].x - rows[i - 1].x);
            return rows[i - 1].y + part * (rows[i].y - rows[i - 1].y);
        }
    }
    return rows.back().y;
}

std::span<const Row> voltsOf(BatteryKind kind)
{
    switch (kind) {
    case BatteryKind::Flooded:
        return weakAcid;
    case BatteryKind::Agm:
        return agmVolts;
    case BatteryKind::Gel:
        return gelVolts;
    case BatteryKind::Lithium:
        break;
    }
    return lithiumVolts;
}

Status checkTemperature(Temperature t)
{
    if (t >= celsius(-40.0) && t <= celsius(60.0))
        return done();
    return Error{Errc::OutOfRange, "no battery is that cold or hot", "temperature", "give -40 to 60 °C"};
}

Status checkReading(const BatteryReading &r)
{
    if (!(r.rest.si() >= 8.0 && r.rest.si() <= 16.0))
        return Error{Errc::OutOfRange, "not a 12 V battery's voltage", "volts",
                     "give 8 to 16 V, measured at the posts; halve a pair in series"};
    if (!(r.rested.si() >= 0.0 && r.rested.si() <= 366 * 86400.0))
        return Error{Errc::OutOfRange, "no such rest", "rest", "give 0 h to a year, such as 4 h"};
    return checkTemperature(r.battery);
}

struct Range {
    double value, low, high;
};

Range chargeRange(BatteryKind kind, double volts)
{
    const double byVolts = along(voltsOf(kind), volts);
    if (kind == BatteryKind::Flooded) {
        const double value = chargeAtGravity(volts / 6.0 - 0.845);
        return {value, value - 0.08, std::max(byVolts, value + 0.08)};
    }
    if (kind == BatteryKind::Lithium) {
        const bool flat = volts > 12.9 && volts < 13.4;
        return {byVolts, flat ? 0.20 : byVolts - 0.15, flat ? 0.95 : byVolts + 0.25};
    }
    return {byVolts, byVolts - 0.15, byVolts + 0.15};
}

void warn(Estimate &e, bool when, const char *slug)
{
    if (when)
        e.warnings.emplace_back(slug);
}

double lossPerMonth(BatteryKind kind, Temperature t)
{
    const double at20 = kind == BatteryKind::Flooded ? 0.05 : 0.03;
    return at20 * std::exp2((t - celsius(20.0)).si() / 10.0);
}

Estimate seconds(double charge, double current, double lost)
{
    Estimate e;
    e.value = charge / current;
    e.high = e.value;
    e.low = charge / (current + lost);
    e.unit = "s";
    e.basis = "computed";
    e.source = "CP";
    return e;
}

} // namespace

std::string_view slug(BatteryKind kind) { return kinds.at(static_cast<std::size_t>(kind)); }

std::optional<BatteryKind> parseBatteryKind(std::string_view text)
{
    const auto *found = std::find(kinds.begin(), kinds.end(), text);
    if (found == kinds.end())
        return std::nullopt;
    return static_cast<BatteryKind>(found - kinds.begin());
}

double chargeAtGravity(double gravity) { return along(chargeByGravity, gravity); }

Temperature freezesAt(double gravity)
{
    return Temperature::fromSi((along(freezeByGravity, gravity) + 459.67) * 5.0 / 9.0);
}

double coldShare(Temperature battery)
{
    const double t = (battery - celsius(0.0)).si();
    if (t >= shareByCelsius.front().x)
        return along(shareByCelsius, t);
    const double slope = (0.75 - 0.40) / 17.78;
    return std::max(0.2, 0.40 + slope * (t - shareByCelsius.front().x));
}

Result<BatteryState> batteryState(const BatteryReading &r)
{
    SNUG_TRY(checkReading(r));
    const bool lithium = r.kind == BatteryKind::Lithium;
    const double at25 = r.rest.si() - (lithium ? 0.0 : voltsPerKelvin * (r.battery - celsius(25.0)).si());
    Range range = chargeRange(r.kind, at25);
    const bool unrested = r.rested.si() < restedSeconds;
    if (unrested)
        range.low -= unrestedDoubt;

    BatteryState state;
    Estimate &charge = state.charge;
    charge.value = std::clamp(range.value, 0.0, 1.0);
    charge.low = std::clamp(range.low, 0.0, charge.value);
    charge.high = std::clamp(range.high, charge.value, 1.0);
    charge.unit = "1";
    charge.basis = r.kind == BatteryKind::Flooded ? "published" : "common_practice";
    charge.source = r.kind == BatteryKind::Flooded ? "TM-5-1185; VINAL-1955" : "CP";
    warn(charge, unrested, "not_rested");
    warn(charge, at25 > (lithium ? 13.65 : 12.95), "surface_charge");
    warn(charge, at25 < voltsOf(r.kind).front().x - 0.05, "below_empty");
    warn(charge, lithium, "lithium_flat");
    warn(charge, lithium && r.battery < celsius(0.0), "no_charge_below_zero");
    if (!lithium) {
        // the doubtful end freezes first
        state.freezes = freezesAt(1.130 + 0.150 * charge.low);
        warn(charge, r.battery < *state.freezes + TemperatureDifference::fromSi(freezeMargin), "may_freeze");
    }
    state.cold.value = coldShare(r.battery);
    state.cold.low = std::max(0.0, state.cold.value - 0.10);
    state.cold.high = std::min(1.0, state.cold.value + 0.10);
    state.cold.unit = "1";
    state.cold.basis = "published";
    state.cold.source = "TM-10-6140";
    return state;
}

Result<DrawTimes> drawTimes(const Draw &d)
{
    if (!(d.capacity.si() >= 3600.0 && d.capacity.si() <= 2000.0 * 3600.0))
        return Error{Errc::OutOfRange, "no battery of a rig holds that", "capacity",
                     "give the label's 20 h figure, 1 to 2,000 A·h"};
    if (!(d.charge >= 0.0 && d.charge <= 1.0))
        return Error{Errc::OutOfRange, "no such charge", "charge", "give 0 to 100 %"};
    if (!(d.current.si() >= 1e-3 && d.current.si() <= 500.0))
        return Error{Errc::OutOfRange, "no such draw", "current",
                     "give what a meter in the battery's cable shows, 1 mA to 500 A"};
    SNUG_TRY(checkTemperature(d.battery));
    const double lost = lossPerMonth(d.kind, d.battery) * d.capacity.si() / month;
    const double held = d.charge * d.capacity.si();
    DrawTimes times;
    times.toHalf = seconds(std::max(0.0, held - 0.5 * d.capacity.si()), d.current.si(), lost);
    times.halfOfWhat = seconds(0.5 * held, d.current.si(), lost);
    warn(times.toHalf, d.charge <= 0.5, "under_half");
    return times;
}

} // namespace snugwalk

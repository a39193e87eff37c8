// SPDX-License-Identifier: Apache-2.0
// Rows first, the power law between them.
#include "bench/tires/tire_load.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr auto classSlugs = std::to_array<std::string_view>({"lt", "st", "p"});
constexpr const char *lawSource = "TRA";
constexpr double pressureDoubt = 0.05; // common practice, no source
constexpr double loadDoubt = 0.01;     // worst of the published rows against the law
constexpr double roundedBy = 1e-12;    // "2,680 lb" of a tire of 2,680 lb is within

double derate(TireClass kind) { return kind == TireClass::Passenger ? passengerOnTrailer : 1.0; }

Pressure lowestOfTables(const TireRating &tire)
{
    if (!tire.table.empty())
        return tire.table.front().pressure;
    return psi(tire.kind == TireClass::Passenger ? 26.0 : 35.0);
}

// L = a.load (P / a.pressure)^n through both rows.
double exponentBetween(const LoadRow &a, const LoadRow &b)
{
    return std::log(b.load / a.load) / std::log(b.pressure / a.pressure);
}

// The last row is the tire's own rating, so that a table that ends lower still ends there.
std::vector<LoadRow> rowsOf(const TireRating &tire)
{
    std::vector<LoadRow> rows = tire.table;
    if (rows.empty() || rows.back().pressure < tire.maxPressure)
        rows.push_back({tire.maxPressure, tire.maxLoad});
    return rows;
}

Estimate lawPressure(const TireRating &tire, Mass load)
{
    const double share = load / tire.maxLoad;
    const auto at = [&](double n) { return tire.maxPressure.si() * std::pow(share, 1.0 / n); };
    Estimate e;
    e.value = at(loadExponent(tire.kind));
    e.low = e.value * (1.0 - pressureDoubt);
    e.high = e.value * (1.0 + pressureDoubt);
    if (tire.kind == TireClass::Passenger)
        e.high = std::max(e.high, at(loadExponent(TireClass::SpecialTrailer)));
    e.high = std::max(e.value, std::min(e.high, tire.maxPressure.si()));
    e.basis = "computed";
    e.source = lawSource;
    return e;
}

Estimate tablePressure(const TireRating &tire, Mass load)
{
    const auto rows = rowsOf(tire);
    const auto above =
        std::find_if(rows.begin(), rows.end(), [&](const LoadRow &r) { return r.load >= load; });
    const LoadRow high = above == rows.end() ? rows.back() : *above;
    Estimate e;
    e.source = "table";
    e.high = high.pressure.si();
    const bool onRow = high.load == load || above == rows.begin();
    const LoadRow low = onRow ? high : *(above - 1);
    e.low = low.pressure.si();
    e.value = onRow ? high.pressure.si()
                    : low.pressure.si() * std::pow(load / low.load, 1.0 / exponentBetween(low, high));
    e.basis = onRow ? "maker" : "computed";
    return e;
}

Error overRating(TireClass kind)
{
    const char *act =
        kind == TireClass::Passenger
            ? "a passenger tire carries its rating divided by 1.10 on a trailer: fit tires of a "
              "higher rating or take load off before it moves"
            : "take load off or fit tires of a higher rating before it moves";
    return {Errc::OutOfRange, "the load is over the tire's rating", "load", act};
}

} // namespace

std::string_view slug(TireClass kind) { return classSlugs.at(static_cast<std::size_t>(kind)); }

std::optional<TireClass> parseTireClass(std::string_view text)
{
    for (std::size_t i = 0; i < classSlugs.size(); ++i) {
        if (classSlugs[i] == text)
            return static_cast<TireClass>(i);
    }
    return std::nullopt;
}

double loadExponent(TireClass kind)
{
    switch (kind) {
    case TireClass::LightTruck:
        return 0.70;
    case TireClass::SpecialTrailer:
        return 0.585;
    case TireClass::Passenger:
        return 0.50;
    }
    return 0.70;
}

Status checkRating(const TireRating &tire)
{
    if (!(tire.maxLoad >= kilograms(50) && tire.maxLoad <= kilograms(5000)))
        return Error{Errc::OutOfRange, "no such tire carries that", "max-load",
                     "read the load beside MAX LOAD SINGLE"};
    if (!(tire.maxPressure >= psi(20) && tire.maxPressure <= psi(145)))
        return Error{Errc::OutOfRange, "no such tire holds that", "max-pressure",
                     "read the cold pressure beside the largest load, such as 80 psi"};
    LoadRow before;
    for (const LoadRow &row : tire.table) {
        const bool rises = row.pressure > before.pressure && row.load > before.load;
        const bool within = row.pressure <= tire.maxPressure * (1.0 + roundedBy) &&
                            row.load <= tire.maxLoad * (1.0 + roundedBy);
        if (!rises || !within)
            return Error{
                Errc::InvalidInput, rises ? "a row is over the tire's own rating" : "the rows do not rise",
                "table",
                "write pressure=load from the lowest row up, for one tire, such as \"65 psi=2335 lb; "
                "80 psi=2680 lb\""};
        before = row;
    }
    return done();
}

Result<Estimate> leastPressure(const TireRating &tire, Mass load)
{
    SNUG_TRY(checkRating(tire));
    if (!(load > Mass()))
        return Error{Errc::OutOfRange, "a tire with no load on it", "load", "give what one tire carries"};
    const Mass counted = load * derate(tire.kind);
    if (counted > tire.maxLoad * (1.0 + roundedBy))
        return overRating(tire.kind);
    Estimate e = tire.table.empty() ? lawPressure(tire, counted) : tablePressure(tire, counted);
    e.unit = "Pa";
    if (tire.kind == TireClass::Passenger)
        e.warnings.emplace_back("passenger_on_trailer");
    const bool underTable =
        tire.table.empty() ? e.value < lowestOfTables(tire).si() : counted < tire.table.front().load;
    if (underTable)
        e.warnings.emplace_back("below_table");
    return e;
}

Result<Estimate> loadCarried(const TireRating &tire, Pressure pressure)
{
    SNUG_TRY(checkRating(tire));
    if (!(pressure > Pressure() && pressure <= tire.maxPressure * (1.0 + roundedBy)))
        return Error{Errc::OutOfRange, "the pressure is not between zero and the tire's maximum", "pressure",
                     "give the cold pressure, such as 65 psi"};
    LoadRow from{tire.maxPressure, tire.maxLoad};
    double n = loadExponent(tire.kind);
    if (!tire.table.empty()) {
        const auto rows = rowsOf(tire);
        const auto above =
            std::find_if(rows.begin(), rows.end(), [&](const LoadRow &r) { return r.pressure >= pressure; });
        from = above == rows.end() ? rows.back() : *above;
        if (above != rows.begin() && above != rows.end())
            n = exponentBetween(*(above - 1), *above);
    }
    Estimate e;
    e.value = from.load.si() * std::pow(pressure / from.pressure, n) / derate(tire.kind);
    e.low = e.value * (1.0 - (tire.table.empty() ? loadDoubt : 0.0));
    e.high = e.value * (1.0 + (tire.table.empty() ? loadDoubt : 0.0));
    e.unit = "kg";
    e.basis = "computed";
    e.source = tire.table.empty() ? lawSource : "table";
    if (tire.kind == TireClass::Passenger)
        e.warnings.emplace_back("passenger_on_trailer");
    if (pressure < lowestOfTables(tire))
        e.warnings.emplace_back("below_table");
    return e;
}

std::optional<LoadRow> rowFor(const TireRating &tire, Mass load)
{
    const Mass counted = load * derate(tire.kind);
    const auto found = std::find_if(tire.table.begin(), tire.table.end(),
                                    [&](const LoadRow &r) { return r.load >= counted; });
    return found == tire.table.end() ? std::nullopt : std::optional<LoadRow>(*found);
}

Result<std::optional<Estimate>> pressureForLoad(const TireRating &tire, Mass load,
                                                std::optional<Pressure> placard)
{
    const Result<Estimate> least = leastPressure(tire, load);
    if (!least)
        return least.error();
    if (placard && !(*placard > Pressure() && *placard <= tire.maxPressure * (1.0 + roundedBy)))
        return Error{Errc::InvalidInput, "the placard is over what the tire allows", "placard",
                     "read the sidewall and the placard again; the tire may be the wrong one"};
    const bool trailerTire = tire.kind == TireClass::SpecialTrailer && tire.table.empty();
    if (!placard && !trailerTire)
        return std::optional<Estimate>();
    Estimate e = *least;
    e.value = std::max(least->value, placard ? placard->si() : tire.maxPressure.si());
    if (const auto row = rowFor(tire, load))
        e.value = std::max(e.value, row->pressure.si());
    e.low = e.high = e.value;
    const bool makers = placard && e.value == placard->si();
    e.basis = makers || !tire.table.empty() ? "maker"
              : trailerTire && !placard     ? "common_practice"
                                            : "computed";
    e.source = makers                    ? "placard"
               : !tire.table.empty()     ? "table"
               : trailerTire && !placard ? "sidewall maximum"
                                         : lawSource;
    return std::optional<Estimate>(e);
}

} // namespace snugwalk

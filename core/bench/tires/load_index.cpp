// SPDX-License-Identifier: Apache-2.0
// The tables of load indices and speed symbols.
#include "bench/tires/load_index.hpp"

#include <array>
#include <cctype>
#include <string>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr int firstIndex = 60;
constexpr auto kilogramsOfIndex = std::to_array<int>({
    250,  257,  265,  272,  280,  290,  300,  307,  315,  325,  335,  345,  355,  365,  375,  387,  400,
    412,  425,  437,  450,  462,  475,  487,  500,  515,  530,  545,  560,  580,  600,  615,  630,  650,
    670,  690,  710,  730,  750,  775,  800,  825,  850,  875,  900,  925,  950,  975,  1000, 1030, 1060,
    1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750,
    1800, 1850, 1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, 2500, 2575, 2650, 2725, 2800,
    2900, 3000, 3075, 3150, 3250, 3350, 3450, 3550, 3650, 3750, 3875, 4000, 4125, 4250, 4375, 4500,
});
static_assert(kilogramsOfIndex.size() == 101);

struct SymbolSpeed {
    char symbol;
    int kilometresAnHour;
};
constexpr auto symbolSpeeds = std::to_array<SymbolSpeed>({
    {'B', 50},  {'C', 60},  {'D', 65},  {'E', 70},  {'F', 80},  {'G', 90},  {'J', 100},
    {'K', 110}, {'L', 120}, {'M', 130}, {'N', 140}, {'P', 150}, {'Q', 160}, {'R', 170},
    {'S', 180}, {'T', 190}, {'U', 200}, {'H', 210}, {'V', 240}, {'W', 270}, {'Y', 300},
});

Error notACode(std::string_view text)
{
    return {Errc::InvalidInput, "not a load index: \"" + std::string(text.substr(0, 40)) + "\"", "index",
            "write it as on the sidewall, such as 121, 121R or 115/112Q"};
}

} // namespace

Result<Mass> loadOfIndex(int index)
{
    const int last = firstIndex + static_cast<int>(kilogramsOfIndex.size()) - 1;
    if (index < firstIndex || index > last)
        return Error{Errc::OutOfRange, "no trailer tire has load index " + std::to_string(index), "index",
                     "give 60 to 160, as on the sidewall after the size"};
    return kilograms(kilogramsOfIndex.at(static_cast<std::size_t>(index - firstIndex)));
}

std::optional<Speed> speedOfSymbol(char symbol)
{
    for (const SymbolSpeed &row : symbolSpeeds) {
        if (row.symbol == symbol)
            return Speed::fromSi(row.kilometresAnHour / 3.6);
    }
    return std::nullopt;
}

Result<ServiceCode> parseServiceCode(std::string_view text)
{
    std::string_view rest = trim(text);
    ServiceCode code;
    if (!rest.empty() && std::isalpha(static_cast<unsigned char>(rest.back())) != 0) {
        code.symbol = static_cast<char>(std::toupper(static_cast<unsigned char>(rest.back())));
        rest = trim(rest.substr(0, rest.size() - 1));
        if (!speedOfSymbol(*code.symbol))
            return notACode(text);
    }
    const auto parts = split(rest, '/');
    const auto single = parseInteger(trim(parts.front()));
    const auto dual = parts.size() == 2 ? parseInteger(trim(parts.back())) : std::nullopt;
    const auto fits = [](long long index) { return index >= 0 && index < 1000; };
    if (!single || !fits(*single) || parts.size() > 2 || (parts.size() == 2 && (!dual || !fits(*dual))))
        return notACode(text);
    code.single = static_cast<int>(*single);
    if (dual)
        code.dual = static_cast<int>(*dual);
    return code;
}

} // namespace snugwalk

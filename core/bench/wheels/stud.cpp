// SPDX-License-Identifier: Apache-2.0
// Threads as people write them.
#include "bench/wheels/stud.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double inch = 0.0254;
constexpr double poundFoot = 0.45359237 * 9.80665 * 0.3048;

struct CommonTorque {
    double diameter;  ///< m
    double low, high; ///< lb·ft
};
// Common practice, no source; M22 as in US Army manuals of trucks with hub-piloted wheels.
constexpr auto commonTorques = std::to_array<CommonTorque>({
    {7.0 / 16.0 * inch, 55, 75},
    {0.012, 70, 90},
    {0.5 * inch, 90, 120},
    {0.014, 100, 140},
    {9.0 / 16.0 * inch, 120, 140},
    {5.0 / 8.0 * inch, 175, 325},
    {0.022, 450, 500},
});

Error notAStud(std::string_view text)
{
    return {Errc::InvalidInput, "not a stud: \"" + std::string(text.substr(0, 40)) + "\"", "stud",
            "write its thread, such as M14, M14x1.5, 1/2-20 or 9/16-18"};
}

std::optional<Stud> metric(std::string_view text)
{
    const std::string plain = replaceAll(lowerAscii(text.substr(1)), "×", "x");
    const auto parts = split(plain, 'x');
    const auto diameter = parseDouble(trim(parts.front()));
    const auto pitch = parts.size() == 2 ? parseDouble(trim(parts.back())) : std::optional<double>(1.5);
    if (!diameter || !pitch || parts.size() > 2)
        return std::nullopt;
    return Stud{millimetres(*diameter), millimetres(*pitch), false, {}, {}};
}

std::optional<Stud> inches(std::string_view text)
{
    const auto dash = text.rfind('-');
    if (dash == std::string_view::npos)
        return std::nullopt;
    const auto threads = parseInteger(trim(text.substr(dash + 1)));
    const auto diameter = parseSi(Dimension::Length, text.substr(0, dash), findUnit(Dimension::Length, "in"));
    if (!threads || *threads < 4 || *threads > 80 || !diameter)
        return std::nullopt;
    return Stud{
        Length::fromSi(*diameter), Length::fromSi(inch / static_cast<double>(*threads)), true, {}, {}};
}

} // namespace

Result<Stud> parseStud(std::string_view typed)
{
    const std::string_view text = trim(typed);
    if (text.empty() || text.size() > 40)
        return notAStud(text);
    std::optional<Stud> stud = text.front() == 'M' || text.front() == 'm' ? metric(text) : inches(text);
    if (!stud)
        return notAStud(text);
    const double d = stud->diameter.si();
    if (!(d >= 0.006 && d <= 0.030 && stud->pitch.si() > 0.0 && stud->pitch.si() <= 0.2 * d))
        return Error{Errc::OutOfRange, "no wheel stud has that thread", "stud",
                     "give 6 mm to 30 mm, such as M14x1.5"};
    for (const CommonTorque &row : commonTorques) {
        if (std::fabs(row.diameter - d) < 1e-5) {
            stud->commonLow = Torque::fromSi(row.low * poundFoot);
            stud->commonHigh = Torque::fromSi(row.high * poundFoot);
        }
    }
    return *stud;
}

Area stressArea(const Stud &stud)
{
    const double across = stud.diameter.si() - (stud.inchThread ? 0.9743 : 0.9382) * stud.pitch.si();
    return Area::fromSi(std::numbers::pi / 4.0 * across * across);
}

std::optional<Pressure> proofStrength(std::string_view grade)
{
    struct Proof {
        std::string_view grade;
        Pressure strength;
    };
    constexpr auto table = std::to_array<Proof>({{"5", psi(85e3)},
                                                 {"8", psi(120e3)},
                                                 {"8.8", kilopascals(600e3)},
                                                 {"10.9", kilopascals(830e3)},
                                                 {"12.9", kilopascals(970e3)}});
    for (const Proof &row : table) {
        if (row.grade == grade)
            return row.strength;
    }
    return std::nullopt;
}

} // namespace snugwalk

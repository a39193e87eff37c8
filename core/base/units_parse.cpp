// SPDX-License-Identifier: Apache-2.0
// Reading quantities as people type them: decimals with point or comma, fractions, any spelling.
#include <cmath>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

Error notUnderstood(Dimension dimension, std::string_view text)
{
    std::string example = "write a number and a unit, such as ";
    for (const Unit &unit : allUnits()) {
        if (unit.dimension != dimension)
            continue;
        example += "\"12" + (unit.symbol.empty() ? "" : " " + std::string(unit.symbol)) + "\" ";
    }
    example.pop_back();
    return {Errc::InvalidInput, "not a " + std::string(dimensionName(dimension)),
            "\"" + std::string(text.substr(0, 80)) + "\"", example};
}

// Typographic characters that phones put where a keyboard has ASCII.
std::string plainAscii(std::string_view text)
{
    std::string out(text);
    out = replaceAll(std::move(out), "\u2212", "-"); // minus sign
    out = replaceAll(std::move(out), "\u00a0", " "); // no-break space
    out = replaceAll(std::move(out), "\u202f", " "); // narrow no-break space
    out = replaceAll(std::move(out), "\u2044", "/"); // fraction slash
    out = replaceAll(std::move(out), "\u22c5", "·"); // dot operator
    out = replaceAll(std::move(out), "º", "°");      // the ordinal mark of a Spanish keyboard
    out = replaceAll(std::move(out), "½", " 1/2");
    out = replaceAll(std::move(out), "¼", " 1/4");
    out = replaceAll(std::move(out), "¾", " 3/4");
    return out;
}

// "1,060" is a thousand and sixty; "4,5" is four and a half: three digits after every comma decide.
std::optional<double> parseDecimal(std::string_view text)
{
    const auto commas = split(text, ',');
    if (commas.size() == 1)
        return parseDouble(text);
    bool thousands = !commas.front().empty() && commas.front() != "0" && commas.front() != "-0";
    for (std::size_t i = 1; i < commas.size(); ++i) {
        const auto whole = i + 1 == commas.size() ? split(commas[i], '.').front() : commas[i];
        thousands = thousands && whole.size() == 3;
    }
    if (!thousands && (commas.size() > 2 || text.find('.') != std::string_view::npos))
        return std::nullopt;
    return parseDouble(replaceAll(std::string(text), ",", thousands ? "" : "."));
}

struct Number {
    double value;
    bool isFraction;
};

std::optional<Number> parseNumber(std::string_view text)
{
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        const auto value = parseDecimal(text);
        return value ? std::optional<Number>({*value, false}) : std::nullopt;
    }
    const auto space = text.rfind(' ', slash);
    double whole = 0.0;
    double sign = 1.0;
    std::string_view fraction = text;
    if (space != std::string_view::npos) {
        const auto parsed = parseInteger(trim(text.substr(0, space)));
        if (!parsed)
            return std::nullopt;
        whole = std::fabs(static_cast<double>(*parsed));
        sign = text.starts_with('-') ? -1.0 : 1.0; // kept apart: "-0 1/2" is below zero
        fraction = text.substr(space + 1);
    }
    const auto parts = split(fraction, '/');
    if (parts.size() != 2)
        return std::nullopt;
    const auto top = parseInteger(parts[0]);
    const auto bottom = parseInteger(parts[1]);
    if (!top || !bottom || *bottom <= 0 || (space != std::string_view::npos && *top < 0))
        return std::nullopt;
    const double part = static_cast<double>(*top) / static_cast<double>(*bottom);
    return Number{sign * (whole + part), true};
}

// The number ends where the last digit does, counting "in²" style digits as part of the unit.
std::size_t numberLength(std::string_view text)
{
    std::size_t end = 0;
    while (end < text.size() &&
           std::string_view("0123456789.,/+- ").find(text[end]) != std::string_view::npos)
        ++end;
    return end;
}

} // namespace

std::optional<Unit> unitWritten(Dimension dimension, std::string_view typed)
{
    if (typed.size() > 200)
        return std::nullopt;
    const std::string plain = plainAscii(typed);
    const std::string_view text = trim(plain);
    const std::size_t length = numberLength(text);
    const std::string_view unitText = trim(text.substr(length));
    if (!unitText.empty())
        return findUnit(dimension, unitText);
    const auto number = parseNumber(trim(text.substr(0, length)));
    const bool inches = number && number->isFraction && dimension == Dimension::Length;
    return inches ? findUnit(dimension, "in") : std::nullopt;
}

Result<double> parseSi(Dimension dimension, std::string_view typed, std::optional<Unit> assumed)
{
    if (typed.size() > 200)
        return notUnderstood(dimension, typed);
    const std::string plain = plainAscii(typed);
    const std::string_view text = trim(plain);
    const std::size_t length = numberLength(text);
    const auto number = parseNumber(trim(text.substr(0, length)));
    if (!number)
        return notUnderstood(dimension, typed);

    const std::string_view unitText = trim(text.substr(length));
    std::optional<Unit> unit = assumed;
    if (!unitText.empty())
        unit = findUnit(dimension, unitText);
    else if (number->isFraction && dimension == Dimension::Length)
        unit = findUnit(dimension, "in");
    else if (!unit && (dimension == Dimension::Count || dimension == Dimension::Fraction))
        unit = displayUnit(dimension, UnitSystem::Si, 0.0);
    if (!unit)
        return notUnderstood(dimension, typed);

    const double si = toSi(*unit, number->value);
    if (!std::isfinite(si) || (dimension == Dimension::Temperature && si < 0.0))
        return Error{Errc::OutOfRange, "beyond what can be true", "\"" + std::string(typed) + "\"",
                     "check the figure"};
    return si;
}

} // namespace snugwalk

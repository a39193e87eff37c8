// SPDX-License-Identifier: Apache-2.0
// A number, a unit of one word, and a name, in the three orders people write them.
#include "walk/mend_part.hpp"

#include <optional>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

constexpr double most = 100'000.0;

// Where the digits at the front end: "3", "1/2", "1,5", "2.5".
std::size_t digitsIn(std::string_view text)
{
    const auto end = text.find_first_not_of("0123456789.,/");
    return end == std::string_view::npos ? text.size() : end;
}

std::optional<double> numberIn(std::string_view text)
{
    const Result<double> number = parseSi(Dimension::Count, text);
    return number ? std::optional(*number) : std::nullopt;
}

// "2 cartridges", "450 mL", "3": a number and at most two words without digits.
struct Amount {
    double quantity;
    std::string unit;
};
std::optional<Amount> amountIn(std::string_view text)
{
    text = trim(text);
    const std::size_t digits = digitsIn(text);
    const auto number = numberIn(text.substr(0, digits));
    const std::string_view unit = trim(text.substr(digits));
    if (digits == 0 || !number || unit.find_first_of("0123456789,;") != std::string_view::npos ||
        split(unit, ' ').size() > 2)
        return std::nullopt;
    return Amount{*number, std::string(unit)};
}

// "lap sealant, 2 cartridges": the first comma that an amount follows.
std::optional<MendPart> amountLast(std::string_view text)
{
    for (auto comma = text.find(','); comma != std::string_view::npos; comma = text.find(',', comma + 1)) {
        const auto amount = amountIn(text.substr(comma + 1));
        if (amount && !trim(text.substr(0, comma)).empty())
            return MendPart{std::string(trim(text.substr(0, comma))), amount->quantity, amount->unit};
    }
    return std::nullopt;
}

// "3 x rivet 3/16 in".
std::optional<MendPart> timesFirst(std::string_view text)
{
    const std::size_t digits = digitsIn(text);
    const auto number = numberIn(text.substr(0, digits));
    const std::string_view rest = trim(text.substr(digits));
    for (const std::string_view times : {"x ", "X ", "×"}) {
        if (digits > 0 && number && rest.starts_with(times) && !trim(rest.substr(times.size())).empty())
            return MendPart{std::string(trim(rest.substr(times.size()))), *number, ""};
    }
    return std::nullopt;
}

// "2 cartridges of lap sealant", "2 cartuchos de sellador".
std::optional<MendPart> ofBetween(std::string_view text)
{
    for (const std::string_view of : {" of ", " de "}) {
        const auto at = text.find(of);
        const auto amount = at == std::string_view::npos ? std::nullopt : amountIn(text.substr(0, at));
        if (amount && !amount->unit.empty() && !trim(text.substr(at + of.size())).empty())
            return MendPart{std::string(trim(text.substr(at + of.size()))), amount->quantity, amount->unit};
    }
    return std::nullopt;
}

} // namespace

Result<MendPart> parsePart(std::string_view typed)
{
    const std::string_view text = trim(typed);
    const std::string where = "part \"" + std::string(text.substr(0, 60)) + "\"";
    if (text.empty() || text.find_first_not_of("0123456789.,/ ") == std::string_view::npos)
        return Error{Errc::InvalidInput, "a part without a name", where,
                     "write it as \"lap sealant, 2 cartridges\" or \"3 x rivet 3/16 in\""};
    if (text.size() > 200 || !isUtf8(text))
        return Error{Errc::OutOfRange, "a part's name over 200 bytes or not UTF-8", where, "shorten it"};
    auto part = timesFirst(text);
    if (!part)
        part = amountLast(text);
    if (!part)
        part = ofBetween(text);
    if (!part)
        part = MendPart{std::string(text), 1.0, ""};
    if (!(part->quantity > 0.0 && part->quantity <= most))
        return Error{Errc::OutOfRange, "no mend takes " + amountText(part->quantity) + " of anything", where,
                     "give more than 0 and at most 100,000"};
    return *part;
}

Result<std::vector<MendPart>> parseParts(std::string_view typed)
{
    std::vector<std::string> texts;
    const std::string lines = replaceAll(std::string(typed), "\n", ";");
    for (const std::string_view line : split(lines, ';')) {
        const std::string pieces = replaceAll(std::string(line), ", ", "\x1f");
        bool first = true;
        for (const std::string_view piece : split(pieces, '\x1f')) {
            if (!first && amountIn(piece))
                texts.back() += ", " + std::string(piece);
            else
                texts.emplace_back(piece);
            first = false;
        }
    }
    std::vector<MendPart> parts;
    for (const std::string &text : texts) {
        if (trim(text).empty())
            continue;
        const Result<MendPart> part = parsePart(text);
        if (!part)
            return part.error();
        parts.push_back(*part);
    }
    return parts;
}

std::string amountText(double amount)
{
    std::string text = fixed(amount, 3);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

std::string partText(const MendPart &part)
{
    if (part.unit.empty() && part.quantity == 1.0)
        return part.name;
    return part.name + ", " + amountText(part.quantity) + (part.unit.empty() ? "" : " " + part.unit);
}

} // namespace snugwalk

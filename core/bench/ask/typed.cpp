// SPDX-License-Identifier: Apache-2.0
// Reading what was typed, input by input.
#include "bench/ask/typed.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "bench/ask/show.hpp"

namespace snugwalk {
namespace {

// "12.45 V at 5 °C", "12.45 V @ 5 °C", and as Spanish, French and German say it: the second part belongs to
// another input.
std::pair<std::string, std::string> partedAt(std::string_view text)
{
    for (const std::string_view mark : {" at ", " a ", " à ", " bei ", "@"}) {
        const auto found = text.find(mark);
        if (found != std::string_view::npos)
            return {std::string(trim(text.substr(0, found))),
                    std::string(trim(text.substr(found + mark.size())))};
    }
    return {std::string(text), {}};
}

Error missing(const BenchQuestion &question, std::string_view name)
{
    return {Errc::Usage, std::string(question.name) + " needs one more figure", std::string(name),
            "see the worked example: " + std::string(question.name) + " " + std::string(question.example)};
}

// "1,060; 2,450 lb" or "1,060, 2,450 lb": semicolons, or commas with a space, leave the bare commas to the
// numbers; without either, commas part them. A unit after the last is meant for all that have none.
std::vector<std::string> listed(Dimension dimension, std::string_view typed)
{
    std::string text(typed);
    const char *parting = text.find(", ") == std::string::npos ? "," : ", ";
    if (text.find(';') == std::string::npos)
        text = replaceAll(std::move(text), parting, ";");
    std::vector<std::string> parts;
    for (const std::string_view part : split(text, ';'))
        parts.emplace_back(trim(part));
    const auto unit = unitWritten(dimension, parts.back());
    for (std::string &part : parts) {
        if (unit && !unit->symbol.empty() && !unitWritten(dimension, part))
            part += " " + std::string(unit->symbol);
    }
    return parts;
}

// Whether one system reads a bare number otherwise than the other: volts are volts to everyone.
bool isAmbiguous(const BenchInput &input)
{
    return displayUnit(input.dimension, UnitSystem::Si, input.typical).symbol !=
           displayUnit(input.dimension, UnitSystem::Us, input.typical).symbol;
}

Error outside(const BenchInput &input, double si, UnitSystem units)
{
    const bool hasLow = input.low > -std::numeric_limits<double>::max();
    const bool hasHigh = input.high < std::numeric_limits<double>::max();
    const std::string low = hasLow ? showFor(input.dimension, input.low, units) : "";
    const std::string high = hasHigh ? showFor(input.dimension, input.high, units) : "";
    const std::string range = hasLow && hasHigh ? low + " to " + high
                              : hasLow          ? low + " or more"
                                                : high + " at most";
    return {Errc::OutOfRange, showFor(input.dimension, si, units) + " is outside " + range,
            std::string(input.name), "check the number and its unit"};
}

} // namespace

Result<BenchTyped> BenchTyped::read(const BenchQuestion &question, const BenchTexts &texts, UnitSystem units,
                                    CivilDate today)
{
    BenchTyped typed;
    typed.m_units = units;
    typed.m_today = today;
    BenchTexts all = texts;
    for (const BenchInput &input : question.inputs) {
        const auto found = all.find(input.name);
        if (found == all.end() || input.at.empty())
            continue;
        auto [first, second] = partedAt(found->second);
        if (second.empty())
            continue;
        found->second = first;
        std::string &other = all[std::string(input.at)];
        const bool taken = !trim(other).empty();
        other = second;
        if (taken)
            return Error{Errc::InvalidInput, "typed twice", std::string(input.at), "leave one of them out"};
    }
    for (const auto &[name, text] : all) {
        const bool asked =
            std::any_of(question.inputs.begin(), question.inputs.end(),
                        [&name = name](const BenchInput &input) { return input.name == name; });
        if (!asked)
            return Error{Errc::Usage, std::string(question.name) + " does not ask for that", name,
                         "leave it out"};
    }
    for (const BenchInput &input : question.inputs) {
        const auto found = all.find(input.name);
        const bool given = found != all.end() && !trim(found->second).empty();
        if (given)
            SNUG_TRY(typed.take(input, trim(found->second), false));
        else if (!input.usual.empty())
            SNUG_TRY(typed.take(input, input.usual, true));
        else if (input.required)
            return missing(question, input.name);
    }
    return typed;
}

Status BenchTyped::take(const BenchInput &input, std::string_view text, bool defaulted)
{
    if (text.size() > 2000 || !isUtf8(text))
        return Error{Errc::InvalidInput, "not a text that can be read", std::string(input.name),
                     "type it again"};
    switch (input.kind) {
    case AskKind::Quantity:
    case AskKind::Count:
    case AskKind::List:
        return takeNumbers(input, text, defaulted);
    case AskKind::Word:
        return takeWord(input, text, defaulted);
    case AskKind::Date:
        return takeDate(input, text, defaulted);
    case AskKind::Text:
        m_understood.push_back({input.name, std::string(text), false, defaulted});
        m_values.emplace(input.name, std::string(text));
        return done();
    case AskKind::Flag:
        m_values.emplace(input.name, 1.0);
        return done();
    }
    return done();
}

Status BenchTyped::takeDate(const BenchInput &input, std::string_view text, bool defaulted)
{
    const auto date = parseDate(text);
    if (!date)
        return Error{Errc::InvalidInput, "not a date: \"" + std::string(text.substr(0, 40)) + "\"",
                     std::string(input.name), "write it as 2026-11-24"};
    m_understood.push_back({input.name, formatDate(*date), false, defaulted});
    m_values.emplace(input.name, *date);
    return done();
}

Status BenchTyped::takeWord(const BenchInput &input, std::string_view text, bool defaulted)
{
    const std::string word = replaceAll(lowerAscii(text), "-", "_");
    const auto words = split(input.words, ' ');
    if (std::find(words.begin(), words.end(), word) == words.end())
        return Error{Errc::InvalidInput, "not one of the words: \"" + std::string(text.substr(0, 40)) + "\"",
                     std::string(input.name),
                     "use one of " + replaceAll(std::string(input.words), " ", ", ")};
    m_understood.push_back({input.name, word, false, defaulted});
    m_values.emplace(input.name, word);
    return done();
}

Status BenchTyped::takeNumbers(const BenchInput &input, std::string_view text, bool defaulted)
{
    const Unit bare = displayUnit(input.dimension, m_units, input.typical);
    const bool isList = input.kind == AskKind::List;
    const auto parts = isList ? listed(input.dimension, text) : std::vector<std::string>{std::string(text)};
    std::vector<double> values;
    std::vector<std::string> told;
    bool assumed = false;
    for (const std::string &part : parts) {
        const Result<double> si = parseSi(input.dimension, part, bare);
        if (!si)
            return Error{si.error().code, si.error().what + ": \"" + part.substr(0, 40) + "\"",
                         std::string(input.name), si.error().act};
        if (!(*si >= input.low && *si <= input.high))
            return outside(input, *si, m_units);
        if (input.kind == AskKind::Count && *si != std::floor(*si))
            return Error{Errc::InvalidInput, "not a whole number: \"" + part.substr(0, 40) + "\"",
                         std::string(input.name), "give a whole number"};
        const auto written = unitWritten(input.dimension, part);
        assumed = assumed || (!written && isAmbiguous(input));
        if (written)
            m_written.insert_or_assign(std::string(input.name), *written);
        values.push_back(*si);
        told.push_back(showBoth(written.value_or(bare), *si));
    }
    m_understood.push_back({input.name, join(told, "; "), assumed, defaulted});
    if (isList)
        m_values.emplace(input.name, values);
    else
        m_values.emplace(input.name, values.front());
    return done();
}

std::optional<double> BenchTyped::number(std::string_view name) const
{
    const auto found = m_values.find(name);
    const double *value = found == m_values.end() ? nullptr : std::get_if<double>(&found->second);
    return value == nullptr ? std::nullopt : std::optional<double>(*value);
}

double BenchTyped::theNumber(std::string_view name) const
{
    const auto value = number(name);
    SNUG_ASSERT(value.has_value()); // the table of inputs says so
    return *value;
}

std::string BenchTyped::text(std::string_view name) const
{
    const auto found = m_values.find(name);
    const std::string *text = found == m_values.end() ? nullptr : std::get_if<std::string>(&found->second);
    return text == nullptr ? std::string() : *text;
}

std::optional<CivilDate> BenchTyped::date(std::string_view name) const
{
    const auto found = m_values.find(name);
    const CivilDate *date = found == m_values.end() ? nullptr : std::get_if<CivilDate>(&found->second);
    return date == nullptr ? std::nullopt : std::optional<CivilDate>(*date);
}

std::optional<Unit> BenchTyped::unitOf(std::string_view name) const
{
    const auto found = m_written.find(name);
    return found == m_written.end() ? std::nullopt : std::optional<Unit>(found->second);
}

std::vector<double> BenchTyped::list(std::string_view name) const
{
    const auto found = m_values.find(name);
    const auto *list = found == m_values.end() ? nullptr : std::get_if<std::vector<double>>(&found->second);
    return list == nullptr ? std::vector<double>() : *list;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Taking names apart into words and a unit.
#include "road/accel/accel_columns.hpp"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

#include "base/text.hpp"
#include "base/units.hpp"
#include "road/series/cell_reader.hpp"

namespace snugwalk {
namespace {

struct Name {
    std::vector<std::string> words;
    std::string unit; ///< from brackets, may be empty
};

Name takenApart(std::string_view cell)
{
    Name name;
    std::string text = lowerAscii(cell);
    const auto open = text.find_first_of("([");
    if (open != std::string::npos) {
        const auto close = text.find_first_of(")]", open);
        name.unit = trim(text.substr(open + 1, close == std::string::npos ? close : close - open - 1));
        text.resize(open);
    }
    std::string word;
    for (const char c : text + " ") {
        if (c == ' ' || c == '_' || c == '-' || c == '.' || c == ':') {
            if (!word.empty())
                name.words.push_back(word);
            word.clear();
        } else {
            word += c;
        }
    }
    return name;
}

bool isOneOf(const std::string &word, std::initializer_list<const char *> words)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool isAccelWord(const std::string &word)
{
    return isOneOf(word, {"a", "acc", "accel", "acceleration", "accelerometer", "axis", "raw"});
}

// The axis that a name tells, 0 to 2, when it is one of acceleration.
std::optional<std::size_t> axisOf(const Name &name)
{
    std::optional<std::size_t> axis;
    for (const std::string &word : name.words) {
        const char last = word.back();
        const std::string stem = word.substr(0, word.size() - 1);
        if (last >= 'x' && last <= 'z' && (stem.empty() || isAccelWord(stem)))
            axis = static_cast<std::size_t>(last - 'x');
        else if (!isAccelWord(word) && !findAccelUnit(word))
            return std::nullopt;
    }
    return axis;
}

double timeFactorOf(const std::string &unit)
{
    if (isOneOf(unit, {"s", "sec", "second", "seconds"}))
        return 1.0;
    if (isOneOf(unit, {"ms", "millis", "milliseconds"}))
        return 1e-3;
    if (isOneOf(unit, {"us", "micros", "microseconds"}))
        return 1e-6;
    return isOneOf(unit, {"ns", "nanos", "nanoseconds"}) ? 1e-9 : 0.0;
}

Error noUnit(const std::string &unit, std::size_t column, long long line)
{
    return {Errc::InvalidInput, "unknown unit \"" + unit + "\"", cellText(line, column),
            "use s, ms, us or ns for time, m/s2 or g for acceleration, m/s, km/h or mph for speed"};
}

Status takeAxis(AccelColumns &columns, const Name &name, std::size_t column, std::size_t axis, long long line)
{
    columns.axes[axis] = column;
    const std::string unit =
        name.unit.empty() && findAccelUnit(name.words.back()) ? name.words.back() : name.unit;
    if (unit.empty())
        return done();
    const auto known = findAccelUnit(unit);
    if (!known)
        return noUnit(unit, column, line);
    if (columns.unit != AccelUnit::Unknown && columns.unit != *known)
        return Error{Errc::InvalidInput, "two units of acceleration", cellText(line, column), "give one"};
    columns.unit = *known;
    return done();
}

} // namespace

std::optional<AccelUnit> findAccelUnit(std::string_view text)
{
    const std::string unit = lowerAscii(text);
    if (isOneOf(unit, {"m/s2", "m/s^2", "m/s\xC2\xB2", "ms2", "ms-2", "mps2", "m/s/s"}))
        return AccelUnit::MetresPerSecondSquared;
    return isOneOf(unit, {"g", "gs"}) ? std::optional(AccelUnit::Gravities) : std::nullopt;
}

Result<AccelColumns> accelColumns(std::span<const std::string_view> header, long long line)
{
    AccelColumns columns;
    std::optional<std::size_t> time;
    std::array<bool, 3> seen{};
    for (std::size_t i = 0; i < header.size(); ++i) {
        const Name name = takenApart(header[i]);
        if (name.words.empty())
            continue;
        const std::string &first = name.words.front();
        if (!time && isOneOf(first, {"time", "t", "timestamp", "seconds", "elapsed", "epoch", "ms"})) {
            time = i;
            const std::string unit = name.unit.empty() ? name.words.back() : name.unit;
            columns.timeFactor = timeFactorOf(unit);
            if (columns.timeFactor == 0.0 && !name.unit.empty())
                return noUnit(unit, i, line);
        } else if (!columns.speed && isOneOf(first, {"speed", "velocity", "v"})) {
            columns.speed = i;
            const std::string unit = !name.unit.empty()      ? name.unit
                                     : name.words.size() > 1 ? name.words.back()
                                                             : "m/s";
            const auto known = findUnit(Dimension::Speed, unit == "kmh" ? "km/h" : unit);
            if (!known)
                return noUnit(unit, i, line);
            columns.speedFactor = toSi(*known, 1.0);
        } else if (const auto axis = axisOf(name); axis && !seen[*axis]) {
            seen[*axis] = true;
            SNUG_TRY(takeAxis(columns, name, i, *axis, line));
        }
    }
    if (!time || !seen[0] || !seen[1] || !seen[2])
        return Error{Errc::InvalidInput, !time ? "no column of times" : "not three axes of acceleration",
                     lineText(line), "name the columns time, x, y, z, with units such as time_ms, x (m/s2)"};
    columns.time = *time;
    return columns;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Tables from files, rates to people.
#include "cli/weather_rates.hpp"

#include "base/text.hpp"
#include "data/world_data.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

Value rangeValue(const RateRange &rate)
{
    return Value::Map{{"value", rate.value}, {"low", rate.low}, {"high", rate.high}, {"unit", "1"}};
}

} // namespace

Result<WorldTables> worldTables()
{
    const auto climate = worldData("climate.bin");
    const auto coast = worldData("coast.bin");
    if (!climate || !coast)
        return climate ? coast.error() : climate.error();
    Result<Climate> normals = Climate::fromBytes(*climate);
    Result<Coast> shores = Coast::fromBytes(*coast);
    if (!normals || !shores)
        return normals ? shores.error() : normals.error();
    return WorldTables{std::move(normals).value(), std::move(shores).value()};
}

Value ratesValue(const DayRates &rates)
{
    Value out = Value::Map{{"recorded", rates.recorded}, {"known", rates.known}};
    for (const WeatherDriver driver : weatherDrivers)
        out.member(slug(driver)) = rangeValue(rates[driver]);
    return out;
}

std::string rateWords(const DayRates &rates)
{
    std::string out;
    for (const WeatherDriver driver : weatherDrivers)
        out += padded(std::string(slug(driver)) + " " + fixed(rates[driver].value, 2), 14);
    return out + "\n";
}

} // namespace snugwalk::cli

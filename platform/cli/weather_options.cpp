// SPDX-License-Identifier: Apache-2.0
// Numbers in, figures out.
#include "cli/weather_options.hpp"

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk::cli {
namespace {

template <typename Q>
Result<Q> quantityOf(const std::string &text, const char *option, std::string_view unit)
{
    const Result<double> si = parseSi(DimensionOf<Q>::value, text, findUnit(DimensionOf<Q>::value, unit));
    if (!si)
        return Error{si.error().code, si.error().what, option, si.error().act};
    return Q::fromSi(*si);
}

} // namespace

Result<double> numberOf(const std::string &text, const char *option, const char *example)
{
    if (const auto number = parseDouble(trim(text)))
        return *number;
    return Error{Errc::InvalidInput, "not a number: \"" + text + "\"", option,
                 std::string("write it as ") + example};
}

Result<Temperature> temperatureOf(const std::string &text, const char *option)
{
    return quantityOf<Temperature>(text, option, "°c");
}

Result<Length> altitudeOf(const std::string &text, const char *option)
{
    const Result<Length> altitude = quantityOf<Length>(text, option, "m");
    if (altitude && !(altitude->si() >= -500.0 && altitude->si() <= 9000.0))
        return Error{Errc::OutOfRange, "no road is that high or low", option, "give -500 m to 9,000 m"};
    return altitude;
}

Result<CivilDate> dateOf(const std::string &text, const char *option)
{
    if (const auto date = parseDate(text))
        return *date;
    return Error{Errc::InvalidInput, "not a date: \"" + text + "\"", option, "write it as 2026-11-24"};
}

Result<GeoPoint> placeOf(const std::string &latitude, const std::string &longitude)
{
    const Result<double> lat = numberOf(latitude, "LAT", "-44.27, degrees, south negative");
    const Result<double> lon = numberOf(longitude, "LON", "170.10, degrees, west negative");
    if (!lat || !lon)
        return lat ? lon.error() : lat.error();
    const GeoPoint place{*lat, *lon, std::nullopt, std::nullopt};
    if (!isValid(place))
        return Error{Errc::OutOfRange, "no such place on earth", latitude + ", " + longitude,
                     "give latitude -90 to 90, longitude -180 to 180"};
    return place;
}

double inCelsius(Temperature t) { return (t - celsius(0.0)).si(); }

Value figure(double value, std::string_view unit) { return Value::Map{{"value", value}, {"unit", unit}}; }

Value textList(const std::vector<std::string> &texts)
{
    Value::List list;
    for (const std::string &text : texts)
        list.emplace_back(text);
    return list;
}

} // namespace snugwalk::cli

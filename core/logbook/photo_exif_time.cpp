// SPDX-License-Identifier: Apache-2.0
// Times of Exif: fixed columns, no locale.
#include "logbook/photo_exif_time.hpp"

#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

using namespace std::chrono;

// "2026:11:24" to "2026-11-24", the form that `base` reads
std::string dashed(std::string_view date)
{
    std::string text(date);
    if (text.size() == 10 && text[4] == ':' && text[7] == ':')
        text[4] = text[7] = '-';
    return text;
}

milliseconds fractionOf(std::string_view digits)
{
    const auto value = digits.size() <= 9 ? parseInteger(digits) : std::nullopt;
    if (!value || *value < 0 || digits[0] == '+')
        return milliseconds(0);
    const double scale = std::pow(10.0, static_cast<double>(digits.size()));
    return milliseconds(static_cast<long long>(static_cast<double>(*value) * 1000.0 / scale));
}

} // namespace

std::optional<CameraClock> readCameraClock(std::string_view text, std::string_view fraction)
{
    if (text.size() != 19 || text[10] != ' ' || text.starts_with("0000"))
        return std::nullopt;
    const auto local = parseLocal(dashed(text.substr(0, 10)) + "T" + std::string(text.substr(11)) + "Z");
    if (!local)
        return std::nullopt;
    return CameraClock{local->instant + fractionOf(fraction)};
}

std::string clockText(CameraClock clock)
{
    std::string text = formatInstant(floor<seconds>(clock.shown));
    text[10] = ' ';
    return text.substr(0, 19);
}

std::optional<Instant> readGpsInstant(std::string_view date, double h, double m, double s)
{
    const auto day = parseDate(dashed(date));
    // written so that NaN is refused too; 60 s is a leap second
    if (!day || !(h >= 0.0 && h < 24.0) || !(m >= 0.0 && m < 60.0) || !(s >= 0.0 && s <= 60.0))
        return std::nullopt;
    const double ms = std::round((h * 3600.0 + m * 60.0 + s) * 1000.0);
    return startOfDay(*day) + milliseconds(static_cast<long long>(ms));
}

std::optional<LocalTime> settleTime(std::optional<CameraClock> clock, std::string_view offset,
                                    std::optional<Instant> gps)
{
    if (clock && !offset.empty()) {
        // any valid date serves to have the offset read by the one reader of offsets
        if (const auto zone = parseLocal("2000-01-01T12:00:00" + std::string(offset)))
            return LocalTime{clock->shown - minutes(zone->offset.minutes), zone->offset};
    }
    if (!gps)
        return std::nullopt;
    if (!clock)
        return LocalTime{*gps, {}};
    const auto ahead = clock->shown - *gps;
    const auto quarters = round<duration<int, std::ratio<900>>>(ahead);
    const bool isZone = abs(ahead - quarters) <= minutes(3) && abs(quarters) <= hours(14);
    return LocalTime{*gps, ZoneOffset{isZone ? static_cast<int>(minutes(quarters).count()) : 0}};
}

} // namespace snugwalk

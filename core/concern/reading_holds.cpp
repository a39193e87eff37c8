// SPDX-License-Identifier: Apache-2.0
// Tread, pressure, linings, hubs, weights, jaws, breakaway and skin voltage against their hold limits.
#include "concern/reading_holds.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "due/ordered.hpp"

namespace snugwalk {
namespace {

/// A plain limit: holds below `low` or above `high`.
struct LimitHold {
    std::string_view rule;
    std::string_view point;
    std::string_view reading;
    std::optional<double> lowSi;
    std::optional<double> highSi;
};

constexpr std::optional<double> none;
const auto limitHolds = std::to_array<LimitHold>({
    {"1", "tread-depth", "tread-depth", millimetres(1.6).si(), none}, // 49 CFR 570.62: 2/32 in
    {"1", "tire-pressure", "cold-pressure", kilopascals(10.0).si(),
     none},                                            // flat: what a gauge cannot tell from 0
    {"2", "axle-loads", "share-of-rating", none, 1.0}, // rating labels
    {"2", "gross-weight", "share-of-rating", none, 1.0},
    {"4", "hub-temperature", "hub-temperature", none, celsius(93.0).si()},   // 200 degF, common practice
    {"5", "brake-linings", "lining-thickness", millimetres(1.6).si(), none}, // 49 CFR 570.59: 1/16 in
    {"6", "breakaway-battery", "breakaway-hold-time", 15.0 * 60.0, none},    // S.D. Codified Laws 32-18-17
    {"7", "fifth-wheel-head", "head-play", none,
     millimetres(12.7).si()}, // Utah Admin. Code R714-162-10: 1/2 in
    {"7", "friction-coupling", "ball-diameter", millimetres(49.0).si(), none}, // common practice
    {"plug", "live-skin-check", "skin-voltage", none, 2.0},                    // volts, common practice
});

constexpr Temperature warmHub = celsius(77.0);                                   // 170 degF, common practice
constexpr TemperatureDifference overMates = TemperatureDifference::fromSi(14.0); // 25 degF, common practice

HoldHit hit(std::string_view rule, const Point &point, const Reading &reading)
{
    const bool numbered = rule.front() >= '0' && rule.front() <= '9';
    return {numbered ? std::stoi(std::string(rule)) : 0, std::string(rule), point.slug,       reading.place,
            std::string(findHoldRule(rule)->forbids),    reading.si,        reading.dimension};
}

void addLimits(const Point &point, const std::vector<LastReading> &readings, std::vector<HoldHit> &hits)
{
    for (const LimitHold &limit : limitHolds) {
        if (limit.point != point.slug)
            continue;
        for (const LastReading &last : readings) {
            const double si = last.reading.si;
            const bool outside = (limit.lowSi && si < *limit.lowSi) || (limit.highSi && si > *limit.highSi);
            if (last.reading.slug == limit.reading && outside)
                hits.push_back(hit(limit.rule, point, last.reading));
        }
    }
}

// Against the hottest of the other hubs read on the same walk.
void addHubs(const Point &point, const std::vector<LastReading> &readings, std::vector<HoldHit> &hits)
{
    for (const LastReading &hub : readings) {
        const Temperature t = Temperature::fromSi(hub.reading.si);
        std::optional<Temperature> mate;
        for (const LastReading &other : readings) {
            if (other.reading.place != hub.reading.place && other.walk == hub.walk &&
                other.reading.slug == hub.reading.slug)
                mate = std::max(mate.value_or(Temperature()), Temperature::fromSi(other.reading.si));
        }
        const bool listed = t > celsius(93.0);
        if (hub.reading.slug == "hub-temperature" && !listed && mate && t > warmHub && t - *mate > overMates)
            hits.push_back(hit("4", point, hub.reading));
    }
}

// "axle 2" is the second of the plates; without a number the load of a single axle.
std::optional<Mass> axleRating(const Rig &rig, const std::string &place)
{
    const auto digits = std::find_if(place.begin(), place.end(), [](char c) { return c >= '1' && c <= '9'; });
    std::size_t index = digits == place.end() ? 0 : static_cast<std::size_t>(*digits - '1');
    if (digits == place.end() && rig.ratings.axle.size() != 1)
        return std::nullopt;
    return index < rig.ratings.axle.size() ? rig.ratings.axle[index] : std::nullopt;
}

void addLoads(const Point &point, const Rig &rig, const std::vector<LastReading> &readings,
              std::vector<HoldHit> &hits)
{
    for (const LastReading &last : readings) {
        const Reading &r = last.reading;
        std::optional<Mass> rating;
        if (point.slug == "axle-loads" && r.slug == "axle-load")
            rating = axleRating(rig, r.place);
        if (point.slug == "gross-weight" && r.slug == "gross-weight")
            rating = rig.ratings.gross;
        if (rating && r.si > rating->si())
            hits.push_back(hit("2", point, r));
    }
}

// Low end of the nose weight, common practice: the practice's share of the gross weight measured last.
std::optional<Mass> leastNose(const RigHistory &history, LocalTime now)
{
    std::optional<Mass> gross;
    for (const LastReading &last : lastReadings(history, "gross-weight", now)) {
        if (last.reading.slug == "gross-weight")
            gross = Mass::fromSi(last.reading.si);
    }
    switch (history.rig.practice) {
    case Practice::NorthAmerica:
        return gross ? std::optional(*gross * 0.08) : std::nullopt;
    case Practice::AustraliaNewZealand:
        return gross ? std::optional(*gross * 0.07) : std::nullopt;
    case Practice::Europe:
        return gross ? std::max(*gross * 0.04, kilograms(25.0)) : kilograms(25.0);
    case Practice::Other:
        break;
    }
    return std::nullopt;
}

void addNose(const Point &point, const RigHistory &history, LocalTime now,
             const std::vector<LastReading> &readings, std::vector<HoldHit> &hits)
{
    const std::optional<Mass> least = leastNose(history, now);
    const std::optional<Mass> most = history.rig.ratings.nose;
    for (const LastReading &last : readings) {
        const Mass nose = Mass::fromSi(last.reading.si);
        if (last.reading.slug == "nose-weight" && ((most && nose > *most) || (least && nose < *least)))
            hits.push_back(hit("10", point, last.reading));
    }
}

std::optional<Instant> lastMend(const RigHistory &history, std::string_view point, LocalTime now)
{
    std::optional<Instant> last;
    const auto take = [&](const Mend &mend) {
        if (mend.at.instant <= now.instant && (!last || mend.at.instant > *last))
            last = mend.at.instant;
    };
    for (const Mend &mend : history.mends) {
        if (std::find(mend.points.begin(), mend.points.end(), point) != mend.points.end())
            take(mend);
    }
    for (const FindingHistory &f : history.findings) {
        if (f.finding.point == point)
            std::for_each(f.mends.begin(), f.mends.end(), take);
    }
    return last;
}

} // namespace

std::vector<LastReading> lastReadings(const RigHistory &history, std::string_view point, LocalTime now)
{
    std::vector<const Mark *> marks;
    for (const WalkRecord &record : history.walks) {
        for (const Mark &mark : record.marks) {
            if (mark.point == point && mark.at.instant <= now.instant && !mark.readings.empty())
                marks.push_back(&mark);
        }
    }
    if (marks.empty())
        return {};
    const std::optional<Instant> mended = lastMend(history, point, now);
    std::sort(marks.begin(), marks.end(), [](const Mark *a, const Mark *b) { return isBefore(*a, *b); });
    std::map<std::pair<std::string, std::string>, LastReading> last;
    for (const Mark *mark : marks) {
        if (mended && mark->at.instant <= *mended)
            continue;
        for (const Reading &r : mark->readings)
            last[{r.slug, r.place}] = {r, mark->at, mark->walk};
    }
    std::vector<LastReading> out;
    out.reserve(last.size());
    for (auto &[key, reading] : last)
        out.push_back(std::move(reading));
    return out;
}

std::vector<HoldHit> holdsByReading(const Point &point, const RigHistory &history, LocalTime now)
{
    if (point.readings.empty())
        return {};
    const std::vector<LastReading> readings = lastReadings(history, point.slug, now);
    std::vector<HoldHit> hits;
    addLimits(point, readings, hits);
    if (point.slug == "hub-temperature")
        addHubs(point, readings, hits);
    addLoads(point, history.rig, readings, hits);
    if (point.slug == "nose-weight" || point.slug == "nose-weight-trim")
        addNose(point, history, now, readings, hits);
    return hits;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Places, records and rates joined day by day.
#include "weather/weathering.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <tuple>

#include "base/units.hpp"
#include "trip/geodesic.hpp"
#include "weather/laws/freeze_thaw.hpp"
#include "weather/recorded_days.hpp"
#include "weather/whereabouts.hpp"

namespace snugwalk {
namespace {

constexpr Temperature saltedRoads = celsius(3.0);
constexpr int saltStaysDays = 14; // with the day driven
// geometric middles of C4 and C5 over that of C3: the square roots of 3.2 and 12.8
constexpr double winterRoadLikely = 1.7888543819998317;
constexpr double winterRoadHigh = 3.5777087639996634;
constexpr std::size_t daysForUsual = 365;

void note(std::vector<std::string> &notes, const std::string &slug)
{
    if (std::find(notes.begin(), notes.end(), slug) == notes.end())
        notes.push_back(slug);
}

// Places a hundredth of a degree apart are one.
class Sites {
public:
    explicit Sites(const SiteSource &source) : m_source(source) {}

    SiteWeather &at(const GeoPoint &place)
    {
        const Key key{std::lround(place.latitude * 100.0), std::lround(place.longitude * 100.0),
                      place.altitude ? std::optional(std::lround(*place.altitude / 50.0)) : std::nullopt};
        const auto found = m_sites.find(key);
        return found != m_sites.end() ? found->second : m_sites.emplace(key, m_source(place)).first->second;
    }
    [[nodiscard]] std::vector<std::string> notes() const
    {
        std::vector<std::string> all;
        for (const auto &[key, site] : m_sites) {
            for (const std::string &one : site.notes())
                note(all, one);
        }
        return all;
    }

private:
    using Key = std::tuple<long, long, std::optional<long>>;
    const SiteSource &m_source;
    std::map<Key, SiteWeather> m_sites;
};

// Distances to the coast, near enough for the law of salt. Asking the coast takes a third of a millisecond,
// so a place within a tenth of the distance of one asked before has that one's, and so has one as far
// inland that the law is flat there.
class CoastNear {
public:
    explicit CoastNear(const Coast &coast) : m_coast(coast) {}

    Distance at(const GeoPoint &place)
    {
        for (const auto &[other, distance] : m_known) {
            const Distance apart = stepBetween(other, place);
            if (apart <= distance * sameShare || distance - apart >= chlorideFlatFrom)
                return distance;
        }
        const Distance distance = m_coast.distanceTo(place);
        m_known.emplace_back(place, distance);
        return distance;
    }

private:
    static constexpr double sameShare = 0.1;
    const Coast &m_coast;
    std::vector<std::pair<GeoPoint, Distance>> m_known;
};

// Mean of rates that come in one by one.
class MeanRates {
public:
    void add(const DayRates &rates)
    {
        for (std::size_t i = 0; i < m_sum.size(); ++i) {
            m_sum[i].value += rates.rate[i].value;
            m_sum[i].low += rates.rate[i].low;
            m_sum[i].high += rates.rate[i].high;
        }
        ++m_count;
    }
    [[nodiscard]] int count() const { return m_count; }
    [[nodiscard]] DayRates mean() const
    {
        DayRates out;
        out.known = m_count > 0;
        for (std::size_t i = 0; i < m_sum.size() && m_count > 0; ++i)
            out.rate[i] = {m_sum[i].value / m_count, m_sum[i].low / m_count, m_sum[i].high / m_count};
        return out;
    }

private:
    std::array<RateRange, weatherDrivers.size()> m_sum{
        RateRange{0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}};
    int m_count = 0;
};

// Goes through the days and remembers what carries over: frost in the joints, salt on the steel.
class DayWalk {
public:
    DayWalk(const SiteSource &sites, std::span<const WeatherRecord> records)
        : m_sites(sites), m_recorded(records)
    {}

    void step(CivilDate date, const DayPlace &where, Weathering &to)
    {
        if (where.basis == PlaceBasis::Nowhere) {
            to.days.emplace_back();
            to.days.back().known = false;
            return;
        }
        SiteWeather &site = m_sites.at(where.place);
        DayRates rates = covered(site.rates(date), where.covered);
        if (rates.known && where.basis != PlaceBasis::BeforeFirst) {
            m_months.at(static_cast<unsigned>(date.month()) - 1).add(rates);
            ++m_knownDays;
        }
        const WeatherDay *record = m_recorded.near(date, where.place);
        if (record != nullptr)
            rates =
                covered(site.recordedRates(*record, m_frost.add({record->low, record->high})), where.covered);
        else
            m_frost.forget();
        addWinterRoads(date, where, site, record, to.winterRoads);
        if (m_saltedFor > 0)
            raiseSalt(rates);
        --m_saltedFor;
        to.days.push_back(rates);
    }

    void finish(const std::optional<DayPlace> &last, CivilDate until, Weathering &to)
    {
        const bool ownYear =
            m_knownDays >= daysForUsual &&
            std::all_of(m_months.begin(), m_months.end(), [](const auto &m) { return m.count() > 0; });
        for (unsigned month = 1; month <= 12; ++month) {
            DayRates &usual = to.usual.at(month - 1);
            if (ownYear)
                usual = m_months.at(month - 1).mean();
            else if (last && last->basis != PlaceBasis::Nowhere)
                usual = normalMonth(m_sites.at(last->place), until.year() / std::chrono::month(month),
                                    last->covered);
            else
                usual.known = false;
        }
        for (const std::string &one : m_sites.notes())
            note(to.notes, one);
    }

private:
    static DayRates covered(const DayRates &rates, bool roof)
    {
        return roof && rates.known ? underRoof(rates) : rates;
    }

    static DayRates normalMonth(SiteWeather &site, std::chrono::year_month month, bool roof)
    {
        MeanRates mean;
        const auto days = static_cast<unsigned>((month / std::chrono::last).day());
        for (unsigned day = 1; day <= days; ++day)
            mean.add(covered(site.rates(month / std::chrono::day(day)), roof));
        DayRates out = mean.mean();
        out.known = site.hasNormals();
        return out;
    }

    void addWinterRoads(CivilDate date, const DayPlace &where, const SiteWeather &site,
                        const WeatherDay *record, std::vector<CivilDate> &to)
    {
        if (!where.driven || (record == nullptr && !site.hasNormals()))
            return;
        const Temperature mean =
            record != nullptr ? record->low + (record->high - record->low) / 2.0 : site.normal(date).mean;
        if (mean < saltedRoads) {
            to.push_back(date);
            m_saltedFor = saltStaysDays;
        }
    }

    static void raiseSalt(DayRates &rates)
    {
        RateRange &salt = rates[WeatherDriver::Salt];
        salt.value = std::max(salt.value, winterRoadLikely);
        salt.high = std::max(salt.high, winterRoadHigh);
    }

    Sites m_sites;
    RecordedDays m_recorded;
    FreezeThawCounter m_frost;
    std::array<MeanRates, 12> m_months{};
    std::size_t m_knownDays = 0;
    int m_saltedFor = 0;
};

} // namespace

SiteWeather siteWeatherAt(const GeoPoint &place, const Climate *climate, std::optional<Distance> fromCoast)
{
    std::optional<ClimateNormals> normals;
    if (climate != nullptr)
        normals = climate->normalsAt(place, place.altitude);
    return {place, std::move(normals), fromCoast};
}

SiteWeather siteWeatherAt(const GeoPoint &place, const Climate *climate, const Coast *coast)
{
    return siteWeatherAt(place, climate,
                         coast != nullptr ? std::optional(coast->distanceTo(place)) : std::nullopt);
}

Weathering weatheringOf(std::span<const Trip> trips, std::span<const Stay> stays,
                        std::span<const WeatherRecord> records, const SiteSource &sites, CivilDate from,
                        CivilDate until)
{
    Weathering out;
    out.first = from;
    const std::vector<DayPlace> where = whereabouts(trips, stays, from, until);
    out.days.reserve(where.size());
    DayWalk walk(sites, records);
    CivilDate date = from;
    for (const DayPlace &day : where) {
        walk.step(date, day, out);
        date = addDays(date, 1);
    }
    const bool nowhere = where.empty() || where.back().basis == PlaceBasis::Nowhere;
    walk.finish(where.empty() ? std::nullopt : std::optional(where.back()), until, out);
    if (nowhere)
        note(out.notes, "no_place");
    if (!where.empty() && where.front().basis == PlaceBasis::BeforeFirst)
        note(out.notes, "before_first");
    if (!out.winterRoads.empty())
        note(out.notes, "winter_roads");
    return out;
}

Weathering weatheringOf(std::span<const Trip> trips, std::span<const Stay> stays,
                        std::span<const WeatherRecord> records, const Climate *climate, const Coast *coast,
                        CivilDate from, CivilDate until)
{
    std::optional<CoastNear> near;
    if (coast != nullptr)
        near.emplace(*coast);
    const SiteSource sites = [&](const GeoPoint &place) {
        return siteWeatherAt(place, climate, near ? std::optional(near->at(place)) : std::nullopt);
    };
    Weathering out = weatheringOf(trips, stays, records, sites, from, until);
    if (climate == nullptr) {
        std::erase(out.notes, "beyond_data");
        note(out.notes, "no_climate");
    }
    if (coast == nullptr)
        note(out.notes, "no_coast");
    return out;
}

} // namespace snugwalk

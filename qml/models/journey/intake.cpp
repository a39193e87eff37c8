// SPDX-License-Identifier: Apache-2.0
// From a file to a value of the logbook.
#include "intake.hpp"

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <functional>

#include "logbook/files.hpp"
#include "road/accel/accel_log.hpp"
#include "road/accel/log_of_trip.hpp"
#include "road/accel/speed_track.hpp"
#include "trip/make_trip.hpp"
#include "weather/records/read_weather.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t portion = std::size_t{1} << 20;
constexpr long long mostTrackBytes = 64LL << 20;
constexpr long long mostWeatherBytes = 16LL << 20;

Error stopped() { return {Errc::Io, "it was stopped", {}, {}}; }

Status readPortions(const std::string &file, long long most, IntakeWatch &watch,
                    const std::function<Status(std::string_view)> &take)
{
    std::error_code fault;
    const auto size = std::filesystem::file_size(file, fault);
    std::ifstream in(file, std::ios::binary);
    if (fault || !in)
        return systemError(fault ? fault.value() : errno, file);
    watch.size = static_cast<long long>(size);
    if (most > 0 && static_cast<long long>(size) > most)
        return Error{Errc::OutOfRange, "the file is too large", file,
                     "export it in parts of " + std::to_string(most >> 20) + " MiB at most"};
    std::string bytes(portion, '\0');
    while (in) {
        if (watch.stop)
            return stopped();
        in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        const auto count = static_cast<std::size_t>(in.gcount());
        SNUG_TRY(take(std::string_view(bytes).substr(0, count)));
        watch.read += static_cast<long long>(count);
    }
    if (in.bad())
        return systemError(EIO, file);
    return watch.stop ? Status(stopped()) : done();
}

Result<std::string> wholeFile(const std::string &file, long long most, IntakeWatch &watch)
{
    std::string bytes;
    SNUG_TRY(readPortions(file, most, watch, [&](std::string_view part) {
        bytes += part;
        return done();
    }));
    return bytes;
}

std::string nameOf(const std::string &file) { return std::filesystem::path(file).filename().string(); }

Result<IntakeFound> readTrack(const IntakeWish &wish, IntakeWatch &watch)
{
    const Result<std::string> bytes = wholeFile(wish.file, mostTrackBytes, watch);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return track.error();
    Result<Trip> trip = makeTrip(*track, {{}, wish.road, nameOf(wish.file), {}, wish.offset});
    if (!trip)
        return trip.error();
    IntakeFound found;
    found.drops = trip->summary.drops;
    found.gaps = trip->summary.gaps;
    found.trip = std::move(trip).value();
    return found;
}

Result<IntakeFound> readWeatherFile(const IntakeWish &wish, IntakeWatch &watch)
{
    const Result<std::string> bytes = wholeFile(wish.file, mostWeatherBytes, watch);
    if (!bytes)
        return bytes.error();
    Result<ReadWeather> read = readWeather(*bytes, nameOf(wish.file), wish.year);
    if (!read)
        return read.error();
    if (!read->place && !wish.place)
        return Error{Errc::Usage, "nobody says where it was measured", "place",
                     "choose a place, or type its latitude and longitude"};
    IntakeFound found;
    found.drops = read->drops;
    found.gaps = static_cast<int>(read->gaps.size());
    WeatherRecord record;
    record.sourceName = nameOf(wish.file);
    record.place = wish.place ? *wish.place : *read->place;
    record.days = std::move(read->days);
    found.weather = std::move(record);
    return found;
}

// Samples with their speed, from the log itself, a track, or the mean of the trip.
class ShakeReader {
public:
    ShakeReader(const IntakeWish &wish, IntakeWatch &watch) : m_wish(wish), m_watch(watch) {}
    Result<IntakeFound> read();

private:
    Status openTrack();
    Status begin(const AccelFacts &facts);
    Status take(AccelSample sample, const AccelFacts &facts);

    const IntakeWish &m_wish;
    IntakeWatch &m_watch;
    std::optional<SpeedTrack> m_track;
    std::optional<RoughnessMeter> m_meter;
    RoughnessOptions m_options;
    double m_starts = 0.0; ///< seconds since 1970 of a log that counts from its start
    bool m_speedAssumed = false;
    std::optional<double> m_from; ///< first and last sample, seconds since 1970
    double m_to = 0.0;
};

Status ShakeReader::openTrack()
{
    if (m_wish.speedFile.empty())
        return done();
    const Result<std::string> bytes = readFile(m_wish.speedFile, static_cast<std::size_t>(mostTrackBytes));
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return track.error();
    m_track.emplace(track->fixes);
    return done();
}

Status ShakeReader::begin(const AccelFacts &facts)
{
    constexpr double mostRate = 1000.0;
    m_options.rate = std::min(std::round(facts.rate), mostRate); // clocks tell 100 as 99.7
    m_options.sensorLocation = m_wish.sensor;
    Result<RoughnessMeter> meter = RoughnessMeter::make(m_options);
    if (!meter)
        return meter.error();
    m_meter = std::move(meter).value();
    m_speedAssumed = !facts.hasSpeed && !m_track;
    if (!facts.sinceEpoch)
        m_starts = m_track && !m_track->empty()
                       ? m_track->start()
                       : static_cast<double>(toMillis(m_wish.trip->start.instant)) * 1e-3;
    return done();
}

Status ShakeReader::take(AccelSample sample, const AccelFacts &facts)
{
    if (!m_meter)
        SNUG_TRY(begin(facts));
    sample.time += m_starts;
    if (std::isnan(sample.speed))
        sample.speed = m_track          ? m_track->at(sample.time)
                       : m_speedAssumed ? movingSpeed(*m_wish.trip)
                                        : sample.speed;
    m_from = m_from ? m_from : sample.time;
    m_to = sample.time;
    m_meter->add(sample);
    return done();
}

Result<IntakeFound> ShakeReader::read()
{
    if (!m_wish.trip)
        return Error{Errc::Usage, "it belongs to no trip", "trip",
                     "open a trip and take the log in from there"};
    SNUG_TRY(openTrack());
    AccelReader reader(AccelUnit::Unknown,
                       [&](const AccelSample &sample) { return take(sample, reader.facts()); });
    SNUG_TRY(readPortions(m_wish.file, 0, m_watch, [&](std::string_view part) { return reader.feed(part); }));
    SNUG_TRY(reader.finish());
    if (!m_meter)
        return Error{Errc::InvalidInput, "no sample in the log", nameOf(m_wish.file),
                     "give lines of time, x, y, z"};
    SNUG_TRY(checkLogTime(*m_wish.trip, *m_from, m_to));
    IntakeFound found;
    found.shake = m_meter->finish();
    found.speedAssumed = m_speedAssumed;
    found.gaps = found.shake->gaps;
    found.trip = m_wish.trip;
    found.trip->measured = measureOf(*found.shake, m_options);
    if (!found.trip->measured)
        return Error{Errc::InvalidInput, "nothing of it could be analysed", nameOf(m_wish.file),
                     "log steady driving over 20 km/h with the sensor fixed, and its speed"};
    return found;
}

} // namespace

Result<IntakeFound> readIntake(const IntakeWish &wish, IntakeWatch &watch)
{
    switch (wish.kind) {
    case IntakeKind::Track:
        return readTrack(wish, watch);
    case IntakeKind::Weather:
        return readWeatherFile(wish, watch);
    case IntakeKind::Shake:
        break;
    }
    return ShakeReader(wish, watch).read();
}

Result<Id> writeIntake(Logbook &book, const IntakeFound &found, const Id &rig, const Doer &doer)
{
    if (found.weather) {
        WeatherRecord record = *found.weather;
        record.rig = rig;
        return addWeather(book, record, doer);
    }
    Trip trip = *found.trip;
    if (found.shake) {
        const Status changed = changeTrip(book, trip, doer);
        return changed ? Result<Id>(trip.id) : Result<Id>(changed.error());
    }
    trip.rig = rig;
    return addTrip(book, trip, doer);
}

} // namespace snugwalk

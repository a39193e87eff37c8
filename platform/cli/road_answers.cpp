// SPDX-License-Identifier: Apache-2.0
// Reading accelerometer logs with what else tells the speed, and saying what came out.
#include "cli/road_answers.hpp"

#include <cmath>
#include <optional>

#include "base/text.hpp"
#include "cli/input_stream.hpp"
#include "logbook/files.hpp"
#include "road/accel/speed_track.hpp"
#include "road/profile/iso8608.hpp"
#include "trip/make_trip.hpp"

namespace snugwalk::cli {
namespace {

constexpr double tenth = 1.2815515655446; // normal quantile of 0.9
constexpr double calibratedSpread = 0.15; // log, of a calibrated rig under another load: common practice

Value quantityOf(double value, const char *unit) { return Value::Map{{"value", value}, {"unit", unit}}; }

Result<SpeedTrack> trackOf(const std::string &file)
{
    const Result<std::string> bytes = readFile(file, std::size_t{64} << 20);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseTrack(*bytes);
    if (!track)
        return inFile(track.error(), file);
    return SpeedTrack(track->fixes);
}

// Rates that clocks tell as 99.7 are 100.
double evenRate(double told) { return std::clamp(std::round(told), 1.0, 1000.0); }

// One stream over all files: the meter is made at the first sample, when the log's rate is known.
class LogStream {
public:
    LogStream(const SensorOptions &options, double fallbackSpeed, double fallbackStart,
              const WindowSink &onWindow)
        : m_options(options),
          m_fallbackSpeed(fallbackSpeed),
          m_fallbackStart(fallbackStart),
          m_onWindow(onWindow)
    {}

    Status open()
    {
        if (!m_options.track.empty()) {
            Result<SpeedTrack> track = trackOf(m_options.track);
            if (!track)
                return track.error();
            m_track = std::move(track).value();
        }
        if (!m_options.starts.empty()) {
            const auto at = parseLocal(m_options.starts);
            if (!at)
                return Error{Errc::Usage, "not a time", "--starts", "write it as 2026-11-24T08:10:00+13:00"};
            m_starts = static_cast<double>(toMillis(at->instant)) * 1e-3;
        }
        return done();
    }

    Status read(const std::string &file)
    {
        const auto unit = m_options.unit.empty() ? AccelUnit::Unknown : *findAccelUnit(m_options.unit);
        AccelReader reader(unit, [&](const AccelSample &sample) { return take(sample, reader.facts()); });
        SNUG_TRY(readThrough(file, [&](std::string_view bytes) { return reader.feed(bytes); }));
        if (const Status finished = reader.finish(); !finished)
            return inFile(finished.error(), file);
        if (m_out.firstGap.empty() && reader.facts().firstGapLine > 0)
            m_out.firstGap = file + ", " + lineText(reader.facts().firstGapLine);
        return done();
    }

    Result<LogRoughness> finish()
    {
        if (!m_meter)
            return Error{Errc::InvalidInput, "no sample in the logs", "", "give lines of time, x, y, z"};
        m_out.result = m_meter->finish();
        const RoughnessResult &r = m_out.result;
        if (r.windows == 0)
            return Error{Errc::InvalidInput,
                         "nothing could be analysed: " + std::to_string(r.slow) +
                             " stretches under 20 km/h, " + std::to_string(r.uneven) + " of uneven speed, " +
                             std::to_string(r.handled) + " handled, " + fixed(r.seconds, 1) + " s in all",
                         "", "log 10 s or more of steady driving over 20 km/h, the sensor fixed"};
        warn();
        return m_out;
    }

private:
    Status begin(const AccelFacts &facts)
    {
        RoughnessOptions &o = m_out.options;
        o.rate = m_options.rate > 0.0 ? m_options.rate : evenRate(facts.rate);
        o.scale = m_options.scale > 0.0 ? m_options.scale : goldenScale;
        o.calibrated = m_options.scale > 0.0;
        o.exponent = m_options.exponent;
        o.sensorLocation = m_options.location;
        Result<RoughnessMeter> meter = RoughnessMeter::make(o);
        if (!meter)
            return meter.error();
        m_meter = std::move(meter).value();
        m_meter->onWindow = m_onWindow;
        if (!o.calibrated)
            m_out.defaulted.emplace_back("scale");
        if (facts.unitGuessed)
            m_out.warnings.emplace_back("unit_guessed");
        if (!facts.hasSpeed && m_options.speed <= 0.0 && !m_track && m_fallbackSpeed > 0.0)
            m_out.defaulted.emplace_back("speed");
        if (!facts.sinceEpoch && m_starts == 0.0 && (m_track || m_fallbackStart > 0.0)) {
            m_starts = m_track && !m_track->empty() ? m_track->start() : m_fallbackStart;
            m_out.defaulted.emplace_back("starts");
        }
        return done();
    }

    Status take(AccelSample sample, const AccelFacts &facts)
    {
        if (!m_meter)
            SNUG_TRY(begin(facts));
        if (!facts.sinceEpoch)
            sample.time += m_starts;
        if (m_out.to > 0.0 && sample.time < m_out.to)
            return Error{Errc::InvalidInput, "this log begins before the one before it ends", "",
                         "name the logs in the order of their times"};
        if (std::isnan(sample.speed) && m_track)
            sample.speed = m_track->at(sample.time);
        if (std::isnan(sample.speed) && (m_options.speed > 0.0 || m_fallbackSpeed > 0.0) && !m_track)
            sample.speed = m_options.speed > 0.0 ? m_options.speed / 3.6 : m_fallbackSpeed;
        if (m_out.to == 0.0)
            m_out.from = sample.time;
        m_out.to = sample.time;
        m_meter->add(sample);
        return done();
    }

    void warn()
    {
        const RoughnessResult &r = m_out.result;
        const auto say = [&](bool when, const char *slug) {
            if (when)
                m_out.warnings.emplace_back(slug);
        };
        say(!m_out.options.calibrated, "not_calibrated");
        say(m_options.location != "rig", "sensor_not_on_rig");
        say(r.speedUnknown, "speed_unknown");
        say(r.clipped, "clipped");
        say(r.gaps > 0, "gaps");
        say(r.coverage() < 0.5, "coverage_under_half");
    }

    const SensorOptions &m_options;
    double m_fallbackSpeed, m_fallbackStart;
    const WindowSink &m_onWindow;
    std::optional<SpeedTrack> m_track;
    std::optional<RoughnessMeter> m_meter;
    double m_starts = 0.0;
    LogRoughness m_out;
};

} // namespace

void addSensorOptions(CLI::App &command, SensorOptions &o)
{
    command.add_option("--unit", o.unit, "unit of the axes when the header names none: m/s2 or g")
        ->check(CLI::IsMember({"m/s2", "g"}));
    command.add_option("--track", o.track, "GPX or NMEA file of the same drive: tells the speed");
    command.add_option("--speed", o.speed, "constant speed in km/h, without a track")
        ->check(CLI::Range(0.1, 300.0));
    command.add_option("--starts", o.starts,
                       "when second 0 of the log was, such as 2026-11-24T08:10:00+13:00");
    command.add_option("--scale", o.scale, "m/km for 1 m/s2 at 80 km/h, from `road calibrate`")
        ->check(CLI::Range(0.01, 1000.0));
    command.add_option("--exponent", o.exponent, "power of speed, from `road calibrate` (default 0.5)")
        ->check(CLI::Range(0.0, 2.0));
    command.add_option("--location", o.location, "what the sensor was fixed to")
        ->check(CLI::IsMember({"rig", "tow_vehicle", "unknown"}));
    command.add_option("--fs", o.rate, "even samples a second to work with (default: the log's own)")
        ->check(CLI::Range(1.0, 10'000.0));
}

Result<LogRoughness> roughnessOfLogs(const std::vector<std::string> &files, const SensorOptions &options,
                                     double fallbackSpeed, double fallbackStart, const WindowSink &onWindow)
{
    LogStream stream(options, fallbackSpeed, fallbackStart, onWindow);
    SNUG_TRY(stream.open());
    for (const std::string &file : files)
        SNUG_TRY(stream.read(file));
    return stream.finish();
}

Estimate roughnessEstimate(const LogRoughness &log)
{
    Estimate e;
    e.value = log.result.median;
    const double factor = std::exp(tenth * (log.options.calibrated ? calibratedSpread : goldenScaleSpread));
    e.low = e.value / factor;
    e.high = e.value * factor;
    e.unit = "m/km";
    e.basis = "measured";
    e.source = "SAYERS-1986, common practice";
    e.warnings = log.warnings;
    e.inputsDefaulted = log.defaulted;
    return e;
}

Value roughnessValue(const LogRoughness &log)
{
    const RoughnessResult &r = log.result;
    Value out = estimateValue(roughnessEstimate(log));
    out.member("p90") = quantityOf(r.p90, "m/km");
    out.member("coverage") = r.coverage();
    out.member("analysed") = quantityOf(r.analysed.si(), "m");
    out.member("driven") = quantityOf(r.driven.si(), "m");
    out.member("duration") = quantityOf(r.seconds, "s");
    out.member("dose") = Value::Map{{"2", r.dose[0]}, {"4", r.dose[1]}, {"6", r.dose[2]}};
    out.member("consumption") = r.consumption;
    out.member("windows") =
        Value::Map{{"kept", r.windows}, {"slow", r.slow}, {"uneven_speed", r.uneven}, {"handled", r.handled}};
    Value::List along;
    for (const std::optional<double> &index : r.along)
        along.emplace_back(index);
    out.member("along") = Value::Map{{"step", quantityOf(r.alongStep.si(), "m")}, {"roughness", along}};
    out.member("gaps") = r.gaps;
    out.member("first_gap") = log.firstGap;
    out.member("clipped") = r.clipped;
    out.member("calibrated") = log.options.calibrated;
    out.member("sensor_location") = log.options.sensorLocation;
    const ClassRange c = classFromIri(r.median);
    const auto letter = [](ProfileClass one) { return std::string(1, profileClassLetter(one)); };
    out.member("class") =
        Value::Map{{"likely", letter(c.likely)}, {"low", letter(c.low)}, {"high", letter(c.high)}};
    return out;
}

std::string roughnessText(const LogRoughness &log)
{
    const RoughnessResult &r = log.result;
    const Estimate e = roughnessEstimate(log);
    std::string text = "roughness index (this rig) " + fixed(e.value, 1) + " m/km (" + fixed(e.low, 1) +
                       " to " + fixed(e.high, 1) + "), roughest tenth from " + fixed(r.p90, 1) + "\n";
    text += "analysed " + fixed(100.0 * r.coverage(), 0) + " % in " + std::to_string(r.windows) +
            " stretches; left out: " + std::to_string(r.slow) + " slow, " + std::to_string(r.uneven) +
            " uneven speed, " + std::to_string(r.handled) + " handled\n";
    for (const std::string &warning : e.warnings)
        text += "  mind: " + replaceAll(warning, "_", " ") +
                (warning == "gaps" && !log.firstGap.empty() ? ", first at " + log.firstGap : "") + "\n";
    return text;
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// road psd, rainflow.
#include <cmath>
#include <optional>

#include "base/text.hpp"
#include "cli/input_stream.hpp"
#include "cli/road_answers.hpp"
#include "road/series/comfort.hpp"
#include "road/series/damage.hpp"
#include "road/series/series_reader.hpp"
#include "road/series/welch.hpp"

namespace snugwalk::cli {
namespace {

struct PsdOptions {
    std::string file, column;
    double fs = 0.0;
    std::size_t segment = 1024;
    bool comfort = false;
};

struct RainflowOptions {
    std::string file, column, exponents = "2,4,6";
    double gate = 0.0;
};

constexpr std::size_t mostCycles = 100'000; // that an answer lists

Status feedSeries(const std::string &file, const std::string &column, const SeriesReader::Sink &sink)
{
    SeriesReader reader(column, sink);
    SNUG_TRY(readThrough(file, [&](std::string_view bytes) { return reader.feed(bytes); }));
    if (const Status finished = reader.finish(); !finished)
        return inFile(finished.error(), file);
    return done();
}

// Times must be even: a spectrum of samples at other times than assumed is a wrong one.
class EvenTimes {
public:
    Status check(const SeriesPoint &p, double rate)
    {
        if (!p.along)
            return done();
        if (m_before) {
            const double steps = (*p.along - *m_before) * rate;
            if (steps > 1.5 || steps < 0.5)
                return Error{Errc::InvalidInput,
                             (steps > 1.5 ? "a gap: " : "too early: ") + fixed(*p.along - *m_before, 4) +
                                 " s after the sample before, at " + fixed(rate, 3) + " samples a second",
                             lineText(p.line),
                             "give even samples; `road roughness` lays a log on even steps"};
        }
        m_before = p.along;
        return done();
    }

private:
    std::optional<double> m_before;
};

Result<Answer> psd(const PsdOptions &o)
{
    std::optional<Welch> welch;
    std::optional<SeriesPoint> first;
    EvenTimes times;
    double rate = o.fs;
    const auto begin = [&]() -> Status {
        Result<Welch> made = Welch::make(rate, o.segment);
        if (!made)
            return made.error();
        welch = std::move(made).value();
        return done();
    };
    const auto take = [&](const SeriesPoint &p) -> Status {
        if (!welch && rate <= 0.0) {
            if (!p.along)
                return Error{Errc::Usage, "no sampling rate", "--fs", "give samples a second, such as 100"};
            if (!first) {
                first = p;
                return done();
            }
            rate = 1.0 / (*p.along - *first->along);
        }
        if (!welch) {
            SNUG_TRY(begin());
            if (first) {
                SNUG_TRY(times.check(*first, rate));
                welch->add(first->value);
            }
        }
        SNUG_TRY(times.check(p, rate));
        welch->add(p.value);
        return done();
    };
    SNUG_TRY(feedSeries(o.file, o.column, take));
    if (!welch)
        return Error{Errc::InvalidInput, "fewer than two values", o.file, "give a longer series"};
    const Result<Spectrum> s = welch->finish();
    if (!s)
        return inFile(s.error(), o.file);
    double power = 0.0;
    std::string text = "Hz\tunit2/Hz\n";
    for (std::size_t k = 0; k < s->frequency.size(); ++k) {
        power += s->density[k] * s->frequency[1];
        text += toJson(s->frequency[k], false) + "\t" + toJson(s->density[k], false) + "\n";
    }
    Value json =
        Value::Map{{"frequency", Value::List(s->frequency.begin(), s->frequency.end())},
                   {"density", Value::List(s->density.begin(), s->density.end())},
                   {"unit", "Hz, unit2/Hz"},
                   {"segments", s->segments},
                   {"power", power},
                   {"rms", std::sqrt(power)},
                   {"basis", "computed"},
                   {"source", "WELCH-1967"},
                   {"warnings", s->tooShort ? Value::List{"shorter_than_a_segment"} : Value::List{}}};
    if (o.comfort)
        json.member("comfort") =
            Value::Map{{"value", comfortRms(*s)}, {"unit", "m/s2"}, {"source", "ISO-2631-1"}};
    return Answer{json, text};
}

Result<std::vector<double>> exponentsIn(const std::string &text)
{
    std::vector<double> exponents;
    for (const std::string_view part : split(text, ',')) {
        const auto number = parseDouble(trim(part));
        if (!number)
            return Error{Errc::Usage, "not an exponent: \"" + std::string(part) + "\"", "--exponents",
                         "write them as 2,4,6"};
        exponents.push_back(*number);
    }
    return exponents;
}

Result<Answer> rainflow(const RainflowOptions &o)
{
    const auto exponents = exponentsIn(o.exponents);
    if (!exponents)
        return exponents.error();
    Result<Damage> damage = Damage::make(*exponents);
    if (!damage)
        return damage.error();
    Rainflow counter;
    Value::List cycles;
    double counted = 0.0;
    long long left = 0;
    const auto out = [&](const Cycle &c) {
        if (c.range < o.gate)
            return;
        counted += c.count;
        damage->add(c);
        if (cycles.size() < mostCycles)
            cycles.emplace_back(Value::List{c.range, c.mean, c.count});
        else
            ++left;
    };
    SNUG_TRY(feedSeries(o.file, o.column, [&](const SeriesPoint &p) {
        counter.push(p.value, out);
        return done();
    }));
    counter.finish(out);
    Value::Map sums;
    Value::Map levels;
    Value::List warnings;
    std::string text = fixed(counted, 1) + " cycles\n";
    const auto finite = [](double v) { return std::isfinite(v) ? Value(v) : Value(); };
    for (const DamageSum &d : damage->sums()) {
        std::string key = toJson(d.exponent, false);
        if (key.ends_with(".0"))
            key.resize(key.size() - 2);
        sums[key] = finite(d.sum);
        levels[key] = finite(d.level);
        if (!std::isfinite(d.sum))
            warnings.emplace_back("sum_too_large");
        text += "exponent " + key + ": sum " + toJson(finite(d.sum), false) + ", level " +
                toJson(finite(d.level), false) + "\n";
    }
    if (left > 0)
        warnings.emplace_back("cycles_cut");
    return Answer{Value::Map{{"cycles", cycles},
                             {"cycles_left_out", left},
                             {"count", counted},
                             {"damage", sums},
                             {"level", levels},
                             {"unit", "unit of the series; sums to the power of the exponent"},
                             {"basis", "computed"},
                             {"source", "ASTM-E1049, MINER-1945"},
                             {"warnings", warnings}},
                  text};
}

} // namespace

void addRoadSeriesCommands(CLI::App &road, Registry &registry)
{
    auto p = std::make_shared<PsdOptions>();
    CLI::App *spectrum = road.add_subcommand("psd", "power spectral density by Welch's method, unit2/Hz");
    spectrum->add_option("file", p->file, "one number a line, or CSV with a header (- for standard input)")
        ->required();
    spectrum->add_option("--fs", p->fs, "samples a second (default: by the time column, in seconds)")
        ->check(CLI::PositiveNumber);
    spectrum->add_option("--segment", p->segment, "samples a segment, half of them shared (default 1024)");
    spectrum->add_option("--column", p->column, "the column of values");
    spectrum->add_flag("--comfort", p->comfort, "also the weighted rms of ISO 2631-1 Wk; the series is m/s2");
    registry.add(*spectrum, "  snugwalk road psd series.txt --fs 100 --segment 512 --json",
                 [p](Session &) { return psd(*p); });
    auto r = std::make_shared<RainflowOptions>();
    CLI::App *counting =
        road.add_subcommand("rainflow", "cycles of a load history, their damage sums and levels");
    counting->add_option("file", r->file, "one number a line, or CSV with a header (- for standard input)")
        ->required();
    counting->add_option("--exponents", r->exponents, "of the damage law, 0.5 to 20 (default 2,4,6)");
    counting
        ->add_option("--gate", r->gate,
                     "leave out cycles with a smaller range, in the series' unit (default 0)")
        ->check(CLI::NonNegativeNumber);
    counting->add_option("--column", r->column, "the column of values");
    registry.add(*counting, "  snugwalk road rainflow series.txt --exponents 3,5",
                 [r](Session &) { return rainflow(*r); });
}

} // namespace snugwalk::cli

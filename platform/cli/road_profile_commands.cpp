// SPDX-License-Identifier: Apache-2.0
// road iri, class, synth.
#include <cmath>
#include <optional>

#include "base/text.hpp"
#include "cli/input_stream.hpp"
#include "cli/road_answers.hpp"
#include "road/profile/iri.hpp"
#include "road/profile/iso8608.hpp"
#include "road/series/series_reader.hpp"

namespace snugwalk::cli {
namespace {

struct IriOptions {
    std::string file, column;
    double dx = 0.0; // 0: what the distances say
    double segment = 100.0;
};

struct SynthOptions {
    std::string profileClass = "A";
    std::uint32_t seed = 1;
    double dx = 0.25;
    double length = 2000.0;
    std::size_t bins = 0;
};

struct ClassOptions {
    std::optional<double> iri, density;
};

std::string letterOf(ProfileClass c) { return {profileClassLetter(c)}; }

Estimate iriEstimate(const IriResult &r)
{
    constexpr double sampling = 0.09; // what other points of the same road made of it
    Estimate e;
    e.value = r.iri;
    e.low = r.iri * (1.0 - sampling);
    e.high = r.iri * (1.0 + sampling);
    e.unit = "m/km";
    e.basis = "computed";
    e.source = "ASTM-E1926, SAYERS-1986";
    return e;
}

// Lays points of any spacing on even steps, and tells the meter of gaps.
class ProfileStream {
public:
    explicit ProfileStream(const IriOptions &o) : m_options(o) {}

    Status take(const SeriesPoint &p)
    {
        if (!p.along) {
            if (!m_meter && m_options.dx <= 0.0)
                return Error{Errc::Usage, "no spacing of the points", "--dx",
                             "give it in metres, such as 0.25"};
            SNUG_TRY(begin(m_options.dx));
            m_meter->add(p.value);
            return done();
        }
        if (!m_before) {
            m_before = p;
            return done();
        }
        const double step = *p.along - *m_before->along;
        if (!m_meter) {
            SNUG_TRY(begin(m_options.dx > 0.0 ? m_options.dx : step));
            start(*m_before);
        }
        if (step > longestStep) {
            if (m_gapLine == 0)
                m_gapLine = p.line;
            const double last = m_origin + static_cast<double>(m_next - 1) * m_dx;
            m_meter->gap(Distance::fromSi(*p.along - last));
            start(p);
        } else {
            m_uneven |= std::abs(step - m_dx) > evenTo * m_dx;
            fill(p, step);
        }
        m_before = p;
        return done();
    }

    Result<Answer> finish(UnitSystem units)
    {
        if (!m_meter)
            return Error{Errc::InvalidInput, "fewer than two points", m_options.file, "give a profile"};
        const Result<IriResult> result = m_meter->finish();
        if (!result)
            return inFile(result.error(), m_options.file);
        Estimate e = iriEstimate(*result);
        const auto say = [&](bool when, std::string text) {
            if (when)
                e.warnings.push_back(std::move(text));
        };
        say(result->tooShort, "short");
        say(m_uneven, "resampled");
        say(result->gaps > 0, "gap at line " + std::to_string(m_gapLine));
        return answer(*result, e, units);
    }

private:
    static constexpr double longestStep = 0.6; // metres: beyond it there is a hole in the profile
    static constexpr double evenTo = 1e-5;

    Status begin(double dx)
    {
        if (m_meter)
            return done();
        Result<IriMeter> meter = IriMeter::make(metres(dx), metres(m_options.segment));
        if (!meter)
            return meter.error();
        m_dx = dx;
        m_meter = std::move(meter).value();
        return done();
    }

    void start(const SeriesPoint &p)
    {
        m_origin = *p.along;
        m_next = 1;
        m_meter->add(p.value);
    }

    void fill(const SeriesPoint &p, double step)
    {
        const double from = *m_before->along;
        const double close = evenTo * m_dx;
        for (double at = m_origin + static_cast<double>(m_next) * m_dx; at <= *p.along + close;
             at = m_origin + static_cast<double>(++m_next) * m_dx) {
            const double share = (at - from) / step;
            const bool onPoint = std::abs(at - *p.along) <= close;
            m_meter->add(onPoint ? p.value : m_before->value + share * (p.value - m_before->value));
        }
    }

    Answer answer(const IriResult &r, const Estimate &e, UnitSystem units) const
    {
        Value json = estimateValue(e);
        Value::List segments;
        std::string text = "IRI " + fixed(r.iri, 1) + " m/km over " + format(r.analysed, units) + "\n";
        for (const IriSegment &s : r.segments) {
            segments.push_back(Value::Map{{"from", s.from.si()}, {"to", s.to.si()}, {"value", s.iri}});
            text +=
                "  " + fixed(s.from.si(), 0) + " to " + fixed(s.to.si(), 0) + " m: " + fixed(s.iri, 1) + "\n";
        }
        for (const std::string &warning : e.warnings)
            text += "  mind: " + warning + "\n";
        json.member("segments") = segments;
        json.member("analysed") = Value::Map{{"value", r.analysed.si()}, {"unit", "m"}};
        json.member("points") = r.points;
        json.member("gaps") = r.gaps;
        json.member("dx") = Value::Map{{"value", m_dx}, {"unit", "m"}};
        return {json, text};
    }

    const IriOptions &m_options;
    std::optional<IriMeter> m_meter;
    std::optional<SeriesPoint> m_before;
    double m_dx = 0.0;
    double m_origin = 0.0;
    long long m_next = 0;
    long long m_gapLine = 0;
    bool m_uneven = false;
};

Result<Answer> iri(Session &session, const IriOptions &o)
{
    ProfileStream profile(o);
    SeriesReader reader(o.column, [&](const SeriesPoint &p) { return profile.take(p); });
    SNUG_TRY(readThrough(o.file, [&](std::string_view bytes) { return reader.feed(bytes); }));
    if (const Status finished = reader.finish(); !finished)
        return inFile(finished.error(), o.file);
    return profile.finish(session.units());
}

Result<Answer> synth(const SynthOptions &o)
{
    SynthPlan plan;
    plan.density = classDensity(*findProfileClass(o.profileClass));
    plan.spacing = metres(o.dx);
    plan.points =
        o.length > 0.0 && o.length < 1e8 ? static_cast<std::size_t>(std::lround(o.length / o.dx)) : 0;
    plan.bins = o.bins;
    plan.seed = o.seed;
    const Result<SynthRoad> road = synthesise(plan);
    if (!road)
        return road.error();
    Value::List warnings;
    if (road->repeatsAfter.si() < o.length)
        warnings.emplace_back("repeats");
    Value::List elevations(road->elevations.begin(), road->elevations.end());
    std::string text;
    for (const double z : road->elevations)
        text += toJson(z, false) + "\n";
    const Value json =
        Value::Map{{"profile", elevations},
                   {"unit", "m"},
                   {"dx", Value::Map{{"value", o.dx}, {"unit", "m"}}},
                   {"class", o.profileClass},
                   {"density", Value::Map{{"value", plan.density}, {"unit", "m3"}}},
                   {"seed", static_cast<std::int64_t>(o.seed)},
                   {"bins", road->bins},
                   {"rms", Value::Map{{"value", road->rms}, {"unit", "m"}}},
                   {"iri", Value::Map{{"value", iriOfDensity(plan.density)}, {"unit", "m/km"}}},
                   {"repeats_after", Value::Map{{"value", road->repeatsAfter.si()}, {"unit", "m"}}},
                   {"source", "ISO-8608"},
                   {"warnings", warnings}};
    return Answer{json, text};
}

Result<Answer> classed(const ClassOptions &o)
{
    if (o.iri.has_value() == o.density.has_value())
        return Error{Errc::Usage, "one of --iri and --density", "road class",
                     "give the index or the density"};
    const double iri = o.iri ? *o.iri : iriOfDensity(*o.density);
    ClassRange c = classFromIri(iri);
    if (o.density)
        c = {classOf(*o.density), classOf(*o.density), classOf(*o.density)};
    const Value json =
        Value::Map{{"class", letterOf(c.likely)},
                   {"low", letterOf(c.low)},
                   {"high", letterOf(c.high)},
                   {"iri", Value::Map{{"value", iri}, {"unit", "m/km"}}},
                   {"density", Value::Map{{"value", o.density.value_or(densityOfIri(iri))}, {"unit", "m3"}}},
                   {"basis", "computed"},
                   {"source", "ISO-8608"},
                   {"warnings", o.iri ? Value::List{"class_within_one"} : Value::List{}}};
    std::string text = "class " + letterOf(c.likely);
    if (o.iri)
        text += ", known to one class: " + letterOf(c.low) + " to " + letterOf(c.high);
    return Answer{json, text + "\n"};
}

} // namespace

void addRoadProfileCommands(CLI::App &road, Registry &registry)
{
    auto i = std::make_shared<IriOptions>();
    CLI::App *index = road.add_subcommand("iri", "roughness index of a profile by the golden car, m/km");
    index
        ->add_option("file", i->file,
                     "elevations in metres, one a line, or CSV with a header (- for standard input)")
        ->required();
    index->add_option("--dx", i->dx, "metres between points, 0.01 to 0.6 (default: by the distance column)")
        ->check(CLI::PositiveNumber);
    index->add_option("--segment", i->segment, "metres of the stretches told apart (default 100)")
        ->check(CLI::PositiveNumber);
    index->add_option("--column", i->column, "the column of elevations");
    registry.add(
        *index,
        "  snugwalk road iri profile.txt --dx 0.25\n  snugwalk road iri survey.csv --segment 20 --json",
        [i](Session &s) { return iri(s, *i); });
    auto c = std::make_shared<ClassOptions>();
    CLI::App *klass = road.add_subcommand("class", "class A to H of a road by its index or its spectrum");
    klass->add_option("--iri", c->iri, "index in m/km")->check(CLI::Range(0.01, 1000.0));
    klass->add_option("--density", c->density, "m3 at 0.1 cycles a metre")->check(CLI::Range(1e-9, 1.0));
    registry.add(*klass, "  snugwalk road class --iri 4.2", [c](Session &) { return classed(*c); });
    auto y = std::make_shared<SynthOptions>();
    CLI::App *making =
        road.add_subcommand("synth", "make up a road of a class: elevations in metres, one a line");
    making->add_option("--class", y->profileClass, "A (smooth) to H")
        ->required()
        ->check(CLI::IsMember({"A", "B", "C", "D", "E", "F", "G", "H"}, CLI::ignore_case));
    making->add_option("--seed", y->seed, "of the phases (default 1)");
    making->add_option("--dx", y->dx, "metres between points (default 0.25)")->check(CLI::PositiveNumber);
    making->add_option("--length", y->length, "metres (default 2000)")->check(CLI::PositiveNumber);
    making->add_option("--bins", y->bins,
                       "waves added up, 200 or more (default: as many as keep it from repeating)");
    registry.add(*making, "  snugwalk road synth --class C --seed 7 > road.txt",
                 [y](Session &) { return synth(*y); });
}

} // namespace snugwalk::cli

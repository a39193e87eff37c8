// SPDX-License-Identifier: Apache-2.0
// due fit, due posterior: Weibull lives from a table of looks, by likelihood and with a prior.
#include <array>
#include <cmath>
#include <cstdio>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "due/first_passage.hpp"
#include "due/life/life_posterior.hpp"
#include "due/life/weibull_fit.hpp"
#include "logbook/files.hpp"

namespace snugwalk::cli {
namespace {

constexpr double level = 0.8;
constexpr std::size_t mostBytes = std::size_t{64} << 20;
constexpr std::size_t mostLives = 10'000; // of a posterior: a pass over the grid each
// Wider and finer than a rig's bands need: a table is weighed once, and its mean scale has a long tail.
constexpr LifeGridSize tableGrid{101, 161, 6.5};

std::string figures(double value)
{
    std::array<char, 40> buffer{};
    const int n = std::snprintf(buffer.data(), buffer.size(), "%.6g", value);
    return {buffer.data(), static_cast<std::size_t>(n)};
}

Result<CensoredLives> readLives(const std::string &file, ExactAges exact)
{
    const Result<std::string> bytes = readFile(file, mostBytes);
    if (!bytes)
        return bytes.error();
    return censoredLivesFromCsv(*bytes, file, exact);
}

// Value and range as every single result has them; ages are in the unit of the file.
Value::Map resultJson(double value, double low, double high, const char *basis, const char *source)
{
    return {{"value", value},     {"low", low},     {"high", high},     {"level", level},
            {"unit", "as_given"}, {"basis", basis}, {"source", source}, {"warnings", Value::List()}};
}

Value fitJson(const WeibullFit &fit)
{
    const double reach = normalQuantile(0.5 + level / 2.0) * fit.logScaleError();
    Value::Map json = resultJson(fit.scale(), fit.scale() * std::exp(-reach), fit.scale() * std::exp(reach),
                                 "fitted", "MEEKER-ESCOBAR-1998");
    Value::Map covariates;
    Value::Map errors{{"log_scale", fit.logScaleError()}, {"log_shape", fit.logShapeError()}};
    for (std::size_t i = 0; i < fit.names.size(); ++i) {
        covariates[fit.names[i]] = fit.coefficients[i];
        errors[fit.names[i]] = fit.coefficientError(i);
    }
    json["scale"] = fit.scale();
    json["shape"] = fit.shape();
    json["log_likelihood"] = fit.logLikelihood;
    json["covariates"] = std::move(covariates);
    json["standard_errors"] = std::move(errors);
    json["lives"] = fit.lives;
    json["found"] = fit.found;
    return json;
}

std::string fitText(const WeibullFit &fit)
{
    std::string text = "scale " + figures(fit.scale()) + " (standard error of its log " +
                       figures(fit.logScaleError()) + ")\nshape " + figures(fit.shape()) + " (" +
                       figures(fit.logShapeError()) + ")\n";
    for (std::size_t i = 0; i < fit.names.size(); ++i)
        text += fit.names[i] + " " + figures(fit.coefficients[i]) + " (" + figures(fit.coefficientError(i)) +
                "), each 1 of it makes ages " + figures(std::exp(fit.coefficients[i])) + " times as long\n";
    return text + "log-likelihood " + figures(fit.logLikelihood) + ", " + figures(fit.found) + " of " +
           figures(fit.lives) + " failed\n";
}

Result<Answer> fitFile(const std::string &file)
{
    const Result<CensoredLives> data = readLives(file, ExactAges::Allowed);
    if (!data)
        return data.error();
    for (const std::string &name : data->names) {
        if (name == "log_scale" || name == "log_shape")
            return Error{Errc::InvalidInput, "a covariate may not be named " + name, file,
                         "rename the column"};
    }
    const Result<WeibullFit> fit = fitWeibull(*data);
    if (!fit)
        return Error{fit.error().code, fit.error().what, fit.error().where.empty() ? file : fit.error().where,
                     fit.error().act};
    return Answer{fitJson(*fit), fitText(*fit)};
}

struct PosteriorOptions {
    std::string file;
    double interval = 0.0;
    double shape = 1.5;
    double p = 0.1;
    double spread = 0.6;
    double shapeSpread = 0.35;
    std::optional<double> age;    ///< of the one in use; else as the last line tells
    std::optional<double> within; ///< else the interval
};

Status checkOptions(const PosteriorOptions &o)
{
    const auto need = [](bool held, const char *what, const char *option) -> Status {
        return held ? done()
                    : Status(Error{Errc::OutOfRange, what, option, "see `snugwalk due posterior --help`"});
    };
    const auto positive = [](double v) { return std::isfinite(v) && v > 0.0; };
    SNUG_TRY(need(positive(o.interval), "an interval is above 0", "--interval"));
    SNUG_TRY(need(o.shape >= 0.3 && o.shape <= 8.0, "a shape lies between 0.3 and 8", "--shape"));
    SNUG_TRY(need(o.p > 0.0 && o.p < 1.0, "a chance lies between 0 and 1", "--p"));
    SNUG_TRY(need(o.spread > 0.0 && o.spread <= 3.0, "a spread lies between 0 and 3", "--spread"));
    SNUG_TRY(
        need(o.shapeSpread > 0.0 && o.shapeSpread <= 3.0, "a spread lies between 0 and 3", "--shape-spread"));
    SNUG_TRY(need(!o.age || (std::isfinite(*o.age) && *o.age >= 0.0), "an age is 0 or more", "--age"));
    return need(!o.within || positive(*o.within), "a time ahead is above 0", "--within");
}

SeenLife seenLife(const CensoredLife &life, const LookAtAge &pass)
{
    SeenLife seen;
    if (pass.age > 0.0)
        seen.looks.passes = {&pass, 1};
    if (life.found())
        seen.found = LookAtAge{life.upper, 1.0};
    seen.alarm = 0.0;
    return seen;
}

// The last line still passing is the one in use, at the age of its last pass.
double ageInUse(const CensoredLives &data, const PosteriorOptions &o)
{
    if (o.age)
        return *o.age;
    return data.lives.back().found() ? 0.0 : data.lives.back().lower;
}

struct PosteriorFigures {
    double age = 0.0;
    double within = 0.0;
    double failWithin = 0.0;
    std::array<double, 3> ahead{}; ///< 10, 50 and 90 % of the times ahead at which a life's chance is p
    std::optional<double> dueIn;   ///< time ahead at which the chance over all lives is p
};

PosteriorFigures figuresOf(LifePosterior &posterior, const PosteriorOptions &o, double age)
{
    // what is known to work now is a pass whose weight is counted already: born at its age
    posterior.setNow({{}, age});
    PosteriorFigures f;
    f.age = age;
    f.within = o.within.value_or(o.interval);
    f.failWithin = posterior.presentBy(age + f.within);
    std::vector<double> ages(posterior.weights().size());
    std::vector<std::pair<double, double>> scratch;
    posterior.agesWhenPresent(o.p, ages);
    weightedQuantiles(ages, posterior.weights(), std::array{0.1, 0.5, 0.9}, f.ahead, scratch);
    for (double &ahead : f.ahead)
        ahead -= age;
    if (const auto due = posterior.ageWhenPresent(o.p, age + 1e6 * o.interval))
        f.dueIn = *due - age;
    return f;
}

Value posteriorJson(const LifePosterior &posterior, const PosteriorFigures &f, std::size_t lives)
{
    Value::Map json = resultJson(f.ahead[1], f.ahead[0], f.ahead[2], lives > 0 ? "fitted" : "prior", "CP");
    if (posterior.conflict())
        json["warnings"] = Value::List{"prior_conflict"};
    json["mean_scale"] = posterior.meanScale();
    json["mean_shape"] = posterior.meanShape();
    json["fail_within"] = f.failWithin;
    json["within"] = f.within;
    json["age"] = f.age;
    json["due_in"] = Value(f.dueIn);
    json["prior_deviations"] = posterior.medianDeviation();
    return json;
}

std::string posteriorText(const LifePosterior &posterior, const PosteriorFigures &f, double p)
{
    std::string text = "mean scale " + figures(posterior.meanScale()) + ", mean shape " +
                       figures(posterior.meanShape()) + "\nchance to fail within " + figures(f.within) +
                       " from age " + figures(f.age) + ": " + figures(f.failWithin) + "\nreaches " +
                       figures(p) + " in " + figures(f.ahead[0]) + " to " + figures(f.ahead[2]) +
                       ", most likely " + figures(f.ahead[1]) + "\n";
    if (posterior.conflict())
        text += "what was seen lies over 2 deviations from the prior: see whether the interval is right\n";
    return text;
}

Result<Answer> posteriorFile(const PosteriorOptions &o)
{
    SNUG_TRY(checkOptions(o));
    const Result<CensoredLives> data = readLives(o.file, ExactAges::Refused);
    if (!data)
        return data.error();
    if (!data->names.empty())
        return Error{Errc::InvalidInput, "a posterior takes no covariates: " + join(data->names, ", "),
                     o.file, "take the columns out, or use `due fit`"};
    if (data->lives.size() > mostLives)
        return Error{Errc::OutOfRange, "over 10,000 lives", o.file,
                     "write lives alike on one line with their weight"};
    const LifeCells cells({LifePrior().anchor, o.spread, o.shape, o.shapeSpread}, tableGrid);
    // at the middle of the prior the share p has failed when the interval is over
    LifePosterior posterior(cells, o.interval / std::pow(-std::log1p(-o.p), 1.0 / o.shape));
    for (const CensoredLife &life : data->lives) {
        const LookAtAge pass{life.lower, 1.0};
        posterior.add(seenLife(life, pass), life.weight);
    }
    posterior.settle();
    const PosteriorFigures f = figuresOf(posterior, o, ageInUse(*data, o));
    return Answer{posteriorJson(posterior, f, data->lives.size()), posteriorText(posterior, f, o.p)};
}

constexpr const char *columns =
    "CSV with columns lower, upper, weight: passed at lower (0: never), failed by upper (empty or inf: still "
    "passing), so many alike (1 without the column); ages in any one unit";

} // namespace

void addDueFitCommands(CLI::App &due, Registry &registry)
{
    auto file = std::make_shared<std::string>();
    CLI::App *fitting = due.add_subcommand(
        "fit", "the Weibull law that a table of looks makes most likely; every other column "
               "is a covariate, a positive figure of which lengthens life");
    fitting->add_option("file", *file, columns)->required();
    registry.add(*fitting, "  snugwalk due fit lives.csv\n  snugwalk --json due fit lives.csv",
                 [file](Session &) { return fitFile(*file); });

    auto o = std::make_shared<PosteriorOptions>();
    CLI::App *weighing = due.add_subcommand(
        "posterior",
        "what a table of looks leaves of a usual interval: mean life, chance to fail, time ahead; "
        "a last line still passing is the one in use");
    weighing->add_option("file", o->file, columns)->required();
    weighing->add_option("--interval", o->interval, "usual interval, in the unit of the ages")->required();
    weighing->add_option("--shape", o->shape, "middle of the prior's shape, 0.3 to 8 (default: 1.5)");
    weighing->add_option("--p", o->p,
                         "share failed when the interval is over, and chance to look at (default: 0.10)");
    weighing->add_option("--spread", o->spread, "standard deviation of the log of the scale (default: 0.6)");
    weighing->add_option(
        "--shape-spread", o->shapeSpread,
        "standard deviation of the log of the shape (default: 0.35); shapes are held within 0.3 to 8");
    weighing->add_option("--age", o->age, "age of the one in use, in the unit of the ages");
    weighing->add_option("--within", o->within,
                         "time ahead for fail_within, in the unit of the ages (default: the interval)");
    registry.add(*weighing,
                 "  snugwalk due posterior lives.csv --interval 12 --shape 1.5\n"
                 "  snugwalk --json due posterior lives.csv --interval 12 --shape 1.5 --p 0.03 --within 6",
                 [o](Session &) { return posteriorFile(*o); });
}

} // namespace snugwalk::cli

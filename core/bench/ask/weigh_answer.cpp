// SPDX-License-Identifier: Apache-2.0
// Tickets and ratings, worked out together.
#include <algorithm>
#include <array>
#include <vector>

#include "bench/ask/show.hpp"
#include "bench/ask/weights_answers.hpp"
#include "bench/weights/ratings.hpp"
#include "bench/weights/weighing.hpp"

namespace snugwalk {
namespace {

enum class Loaded { Gross, Axles, Tire, Tongue, Front, Rear, Vehicle, Combination };

struct RatingSlug {
    std::string_view input;
    std::string_view figure;
    std::string_view binding;
    Loaded load;
    int readings; ///< that the load is made of
};
constexpr auto ratingSlugs = std::to_array<RatingSlug>({
    {"gvwr", "left-gvwr", "binding-gvwr", Loaded::Gross, 5},
    {"axles", "left-axles", "binding-axles", Loaded::Axles, 1},
    {"tire", "left-tire", "binding-tire", Loaded::Tire, 1},
    {"hitch", "left-hitch", "binding-hitch", Loaded::Tongue, 4},
    {"coupler", "left-coupler", "binding-coupler", Loaded::Gross, 5},
    {"tow", "left-tow", "binding-tow", Loaded::Gross, 5},
    {"front-axle", "left-front-axle", "binding-front-axle", Loaded::Front, 1},
    {"rear-axle", "left-rear-axle", "binding-rear-axle", Loaded::Rear, 1},
    {"vehicle", "left-vehicle", "binding-vehicle", Loaded::Vehicle, 2},
    {"combination", "left-combination", "binding-combination", Loaded::Combination, 3},
});

Result<CoupledTicket> coupledFrom(const BenchTyped &typed, const char *name)
{
    const auto list = typed.list(name);
    if (list.size() != 3)
        return Error{Errc::InvalidInput, "a coupled ticket has three weights", name,
                     "give front axle, rear axle and trailer axles, such as \"1190; 1730; 2650 kg\""};
    return CoupledTicket{Mass::fromSi(list[0]), Mass::fromSi(list[1]), Mass::fromSi(list[2])};
}

Result<Weighing> weighingFrom(const BenchTyped &typed)
{
    const auto solo = typed.list("solo");
    if (solo.size() != 2)
        return Error{Errc::InvalidInput, "the ticket of the tow vehicle alone has two weights", "solo",
                     "give front and rear axle, such as \"1240; 1480 kg\""};
    const auto coupled = coupledFrom(typed, "coupled");
    if (!coupled)
        return coupled.error();
    Weighing w{{Mass::fromSi(solo[0]), Mass::fromSi(solo[1])}, *coupled};
    if (typed.has("bars")) {
        const auto bars = coupledFrom(typed, "bars");
        if (!bars)
            return bars.error();
        w.bars = *bars;
    }
    w.trailerAlone = typed.quantity<Mass>("trailer-alone");
    w.division = typed.quantity<Mass>("division").value_or(usualDivision(typed, "coupled"));
    w.band = bandOf(typed.text("kind"));
    if (const auto low = typed.number("low")) // the maker's band
        w.band.least = w.band.low = *low;
    w.band.high = typed.number("high").value_or(w.band.high);
    if (w.band.high < w.band.low)
        return Error{Errc::InvalidInput, "the high end of the band is under its low end", "high",
                     "give the maker's two figures, such as 10 % and 15 %"};
    return w;
}

// As it is driven: with bars on when that ticket is there.
Mass loadOf(Loaded what, const Weighing &w, const Weighed &out, int tires)
{
    const CoupledTicket &driven = w.bars.value_or(w.coupled);
    switch (what) {
    case Loaded::Gross:
        return Mass::fromSi(out.gross.value);
    case Loaded::Axles:
        return driven.trailer;
    case Loaded::Tire:
        return driven.trailer / static_cast<double>(tires);
    case Loaded::Tongue:
        return Mass::fromSi(std::max(0.0, out.tongue.value));
    case Loaded::Front:
        return driven.front;
    case Loaded::Rear:
        return driven.rear;
    case Loaded::Vehicle:
        return driven.front + driven.rear;
    case Loaded::Combination:
        return driven.front + driven.rear + driven.trailer;
    }
    return {};
}

Status addMargins(const BenchTyped &typed, const Weighing &w, const Weighed &out, BenchAnswer &answer)
{
    const int tires = static_cast<int>(typed.theNumber("tires"));
    std::vector<RatedLoad> loads;
    std::vector<const RatingSlug *> slugs;
    for (const RatingSlug &s : ratingSlugs) {
        const auto rating = typed.quantity<Mass>(s.input);
        if (!rating)
            continue;
        const double shared = s.load == Loaded::Tire ? tires : 1.0;
        loads.push_back({std::string(s.input), loadOf(s.load, w, out, tires), *rating,
                         scaleDoubt(w.division, s.readings) / shared});
        slugs.push_back(&s);
    }
    if (loads.empty())
        return done();
    const auto margins = marginsOf(loads);
    if (!margins)
        return margins.error();
    Value::Map shares;
    auto &warnings = answer.figures.front().estimate.warnings;
    for (std::size_t i = 0; i < slugs.size(); ++i) {
        const Margin &m = margins->each[i];
        answer.figures.push_back({slugs[i]->figure, Dimension::Mass, m.left});
        shares[m.name] = m.share.value;
        for (const std::string &warning : m.left.warnings) {
            if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end())
                warnings.push_back(warning);
        }
    }
    const double most = margins->each[margins->binding].share.value;
    answer.lines.push_back(
        {slugs[margins->binding]->binding, {showFor(Dimension::Fraction, most, typed.units())}});
    answer.extra = Value::Map{{"binding", slugs[margins->binding]->input}, {"share_of_rating", shares}};
    return done();
}

} // namespace

Result<BenchAnswer> answerWeigh(const BenchTyped &typed)
{
    const auto tickets = weighingFrom(typed);
    if (!tickets)
        return tickets.error();
    auto weighed = weigh(*tickets);
    if (!weighed)
        return weighed.error();
    BenchAnswer answer{{{"tongue", Dimension::Mass, weighed->tongue},
                        {"share", Dimension::Fraction, weighed->share},
                        {"gross", Dimension::Mass, weighed->gross},
                        {"front-unloading", Dimension::Mass, weighed->frontUnloading}}};
    const auto add = [&](std::string_view name, Dimension dimension, const std::optional<Estimate> &e) {
        if (e)
            answer.figures.push_back({name, dimension, *e});
    };
    add("restoration", Dimension::Fraction, weighed->restoration);
    add("moved-to-axles", Dimension::Mass, weighed->movedToAxles);
    add("mismatch", Dimension::Mass, weighed->mismatch);
    SNUG_TRY(addMargins(typed, *tickets, *weighed, answer));
    if (!typed.has("division")) {
        for (BenchFigure &figure : answer.figures)
            figure.estimate.inputsDefaulted.emplace_back("division");
    }
    return answer;
}

} // namespace snugwalk

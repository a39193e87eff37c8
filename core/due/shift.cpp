// SPDX-License-Identifier: Apache-2.0
// Letting causes in one after the other, in every order.
#include "due/shift.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

#include "due/rule/life_rule.hpp"
#include "due/rules.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t useCause = ageDriverCount;
constexpr std::size_t seenCause = ageDriverCount + 1;

std::string nameOf(std::size_t cause)
{
    if (cause == useCause)
        return "use";
    return cause == seenCause ? "history" : std::string(slug(static_cast<AgeDriver>(cause)));
}

// The causes that can move this point at all.
std::vector<std::size_t> causesOf(const Point &point)
{
    std::vector<std::size_t> causes;
    const AgeWeights weights = weightsOf(point);
    const bool byDistance = point.interval.distance && *point.interval.distance > Distance();
    for (std::size_t k = 0; k < ageDriverCount; ++k) {
        const bool road = static_cast<AgeDriver>(k) == AgeDriver::Shake && byDistance;
        if (weights.gamma[k] > 0.0 || road)
            causes.push_back(k);
    }
    if (byDistance)
        causes.push_back(useCause);
    causes.push_back(seenCause);
    return causes;
}

Causes lettingIn(const std::vector<std::size_t> &causes, unsigned which)
{
    Causes in;
    in.drivers.fill(false);
    in.use = in.seen = false;
    for (std::size_t i = 0; i < causes.size(); ++i) {
        if ((which >> i & 1U) == 0U)
            continue;
        if (causes[i] == useCause)
            in.use = true;
        else if (causes[i] == seenCause)
            in.seen = true;
        else
            in.drivers[causes[i]] = true;
    }
    return in;
}

double factorial(int n) { return n < 2 ? 1.0 : n * factorial(n - 1); }

// The value of every set of causes to each cause's fair share.
std::vector<double> shares(const std::vector<double> &values, std::size_t causes)
{
    std::vector<double> out(causes, 0.0);
    const int n = static_cast<int>(causes);
    for (unsigned set = 0; set < values.size(); ++set) {
        const int size = std::popcount(set);
        for (std::size_t i = 0; i < causes; ++i) {
            if ((set >> i & 1U) != 0U)
                continue;
            const double weight = factorial(size) * factorial(n - size - 1) / factorial(n);
            out[i] += weight * (values[set | 1U << i] - values[set]);
        }
    }
    return out;
}

CivilDate dateOf(double day)
{
    return std::chrono::sys_days(std::chrono::days(static_cast<long long>(std::floor(day + 1e-6))));
}

} // namespace

std::optional<DueShift> shiftOf(DueContext &context, const DueBand &band)
{
    const Point *point = context.catalogue.find(band.point);
    if (point == nullptr || !band.likely)
        return std::nullopt;
    const PointHistory &history = context.index.of(point->slug);
    const std::vector<std::size_t> causes = causesOf(*point);
    const LikeLives like = context.like.of(*point);
    std::vector<double> values;
    for (unsigned set = 0; set < 1U << causes.size(); ++set) {
        const auto rule = LifeRule::make(context.lines, *point, history, lettingIn(causes, set), like);
        const auto day = rule ? rule->dayBy(0.5) : std::nullopt;
        if (!day)
            return std::nullopt;
        values.push_back(*day);
    }
    const auto whole = LifeRule::make(context.lines, *point, history, {}, like);
    DueShift shift;
    shift.since = civilDate(whole->lives().since);
    shift.nominal = dateOf(values.front());
    shift.likely = *band.likely;
    const std::vector<double> parts = shares(values, causes.size());
    // days are told whole, from date to date: what rounding takes goes to the limit with the rest
    double left = dayNumber(shift.likely) - dayNumber(shift.nominal);
    for (std::size_t i = 0; i < causes.size(); ++i) {
        shift.parts.push_back({nameOf(causes[i]), parts[i]});
        left -= parts[i];
    }
    const double cut = dayNumber(shift.likely) - values.back();
    if (std::abs(cut) >= 1.0) {
        shift.parts.push_back({"limit", left});
    } else {
        auto largest = std::max_element(
            shift.parts.begin(), shift.parts.end(),
            [](const ShiftPart &a, const ShiftPart &b) { return std::abs(a.days) < std::abs(b.days); });
        largest->days += left;
    }
    std::stable_sort(shift.parts.begin(), shift.parts.end(), [](const ShiftPart &a, const ShiftPart &b) {
        return std::abs(a.days) > std::abs(b.days);
    });
    const AgeLine &line = context.lines.age(weightsOf(*point))[1];
    const double today = dayNumber(civilDate(context.now));
    shift.days = std::max(today - dayNumber(shift.since), 0.0);
    shift.agedDays = line.at(dayNumber(shift.since) + shift.days) - line.at(dayNumber(shift.since));
    return shift;
}

std::optional<DueShift> shiftOf(const Catalogue &catalogue, const RigHistory &history, LocalTime now,
                                const DueBand &band, const Ahead &ahead)
{
    DueContext context(catalogue, history, now, ahead);
    return shiftOf(context, band);
}

} // namespace snugwalk

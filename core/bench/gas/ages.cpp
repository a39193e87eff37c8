// SPDX-License-Identifier: Apache-2.0
// Dates, months, what is left.
#include "bench/gas/ages.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace snugwalk {
namespace {

constexpr double day = 86400.0;
constexpr long long soonDays = 90;

struct Years {
    std::string_view slug;
    int first, last;
};
constexpr auto tests =
    std::to_array<Years>({{"made", 10, 12}, {"external", 5, 5}, {"proof", 7, 10}, {"volume", 10, 12}});

constexpr auto kinds = std::to_array<AgedKind>({
    {"smoke_alarm", 120, 120, "published", "NFPA-72"},
    {"co_alarm", 60, 120, "common_practice", "CP"},
    {"gas_alarm", 60, 84, "common_practice", "CP"},
    {"extinguisher", 144, 144, "published", "NFPA-10"},
    {"extinguisher_exam", 72, 72, "published", "NFPA-10"},
    {"extinguisher_test", 144, 144, "published", "NFPA-10"},
    {"extinguisher_look", 1, 1, "published", "NFPA-10"},
    {"gas_hose", 120, 120, "common_practice", "CP"},
    {"gas_regulator", 120, 180, "common_practice", "CP"},
    {"breakaway_battery", 36, 60, "common_practice", "CP"},
    {"house_battery_flooded", 36, 72, "common_practice", "CP"},
    {"house_battery_agm", 48, 96, "common_practice", "CP"},
    {"house_battery_lithium", 120, 120, "common_practice", "CP"},
    {"water_filter", 6, 6, "common_practice", "CP"},
    {"anode", 12, 12, "common_practice", "CP"},
    {"brake_fluid", 24, 24, "common_practice", "CP"},
});

Status checkDate(CivilDate date, const char *where)
{
    using namespace std::chrono;
    if (date.ok() && date.year() >= year(1940) && date.year() <= year(2200))
        return done();
    return Error{Errc::OutOfRange, "no such date", where, "write it as 2019-04-30; a stamp 04-19 as 2019-04"};
}

Status checkDates(CivilDate from, const char *where, CivilDate on)
{
    SNUG_TRY(checkDate(from, where));
    SNUG_TRY(checkDate(on, "on"));
    if (daysBetween(from, on) < 0)
        return Error{Errc::OutOfRange, "the stamp lies after the day asked about", where, "read it again"};
    return done();
}

Estimate span(long long value, long long high, std::string_view basis, std::string_view source)
{
    Estimate e;
    e.value = static_cast<double>(value) * day;
    e.low = e.value;
    e.high = static_cast<double>(std::max(value, high)) * day;
    e.unit = "s";
    e.basis = std::string(basis);
    e.source = std::string(source);
    return e;
}

DueBy dueBy(CivilDate from, CivilDate on, CivilDate due, CivilDate latest, std::string_view basis,
            std::string_view source)
{
    const long long left = daysBetween(on, due);
    const long long most = daysBetween(on, latest);
    const long long age = daysBetween(from, on);
    DueBy d{due, span(left, most, basis, source), span(age, age, "computed", source)};
    if (left < 0)
        d.left.warnings.emplace_back("overdue");
    else if (left <= soonDays)
        d.left.warnings.emplace_back("due_soon");
    if (left < 0 && most >= 0)
        d.left.warnings.emplace_back("sources_differ");
    return d;
}

} // namespace

std::optional<CylinderTest> parseCylinderTest(std::string_view text)
{
    for (std::size_t i = 0; i < tests.size(); ++i) {
        if (tests[i].slug == text)
            return static_cast<CylinderTest>(i);
    }
    return std::nullopt;
}

Result<DueBy> cylinderDue(CivilDate stamp, CylinderTest test, CivilDate on)
{
    SNUG_TRY(checkDates(stamp, "stamp", on));
    const Years &years = tests.at(static_cast<std::size_t>(test));
    return dueBy(stamp, on, addMonths(stamp, 12 * years.first), addMonths(stamp, 12 * years.last),
                 "published", "PHMSA-CYLINDERS; 49-CFR-180.209");
}

std::span<const AgedKind> agedKinds() { return kinds; }

const AgedKind *findAgedKind(std::string_view text)
{
    const auto *found =
        std::find_if(kinds.begin(), kinds.end(), [&](const AgedKind &k) { return k.slug == text; });
    return found == kinds.end() ? nullptr : found;
}

Result<DueBy> agedDue(const Aged &aged)
{
    const AgedKind *kind = findAgedKind(aged.kind);
    if (kind == nullptr)
        return Error{Errc::NotFound, "no such item: \"" + std::string(aged.kind.substr(0, 40)) + "\"", "item",
                     "name one of the list, such as smoke_alarm"};
    SNUG_TRY(checkDates(aged.made, "made", aged.on));
    const CivilDate ours = addMonths(aged.made, kind->months);
    if (!aged.makerEnd)
        return dueBy(aged.made, aged.on, ours, addMonths(aged.made, kind->monthsLatest), kind->basis,
                     kind->source);
    SNUG_TRY(checkDate(*aged.makerEnd, "end"));
    if (daysBetween(aged.made, *aged.makerEnd) < 0)
        return Error{Errc::OutOfRange, "the end lies before the date it was made", "end", "read both again"};
    DueBy d = dueBy(aged.made, aged.on, *aged.makerEnd, *aged.makerEnd, "maker", "maker");
    if (daysBetween(addMonths(aged.made, kind->monthsLatest), *aged.makerEnd) > 0)
        d.left.warnings.emplace_back("maker_end_later");
    return d;
}

} // namespace snugwalk

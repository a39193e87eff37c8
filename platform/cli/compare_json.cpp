// SPDX-License-Identifier: Apache-2.0
// Members as the README lists them.
#include "cli/compare_json.hpp"

#include "rig/rig_value.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk::cli {
namespace {

Value ids(const std::vector<Id> &list)
{
    Value::List out;
    for (const Id &id : list)
        out.push_back(id.text());
    return out;
}

Value strings(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value dateValue(const std::optional<CivilDate> &date) { return date ? Value(formatDate(*date)) : Value(); }

Value findingChangeJson(const FindingChange &f)
{
    return Value::Map{{"finding", f.finding.text()},
                      {"change", slug(f.change)},
                      {"reason", f.reason},
                      {"then_grade", Value(f.thenGrade)},
                      {"now_grade", Value(f.nowGrade)},
                      {"then_extent", f.thenExtent ? toValue(*f.thenExtent) : Value()},
                      {"now_extent", f.nowExtent ? toValue(*f.nowExtent) : Value()},
                      {"then_photos", ids(f.thenPhotos)},
                      {"now_photos", ids(f.nowPhotos)}};
}

Value readingChangeJson(const ReadingChange &r)
{
    return Value::Map{{"reading", r.slug},
                      {"place", r.place},
                      {"unit", siSymbol(r.dimension)},
                      {"then", r.thenSi},
                      {"now", r.nowSi},
                      {"uncertainty", r.uncertainty},
                      {"doubled_by", strings(r.doubled)},
                      {"z", r.z},
                      {"changed", r.changed},
                      {"stands", r.stands},
                      {"change", slug(r.change)},
                      {"replaced", r.replaced},
                      {"ask", r.ask},
                      {"expected", Value(r.expected)},
                      {"expected_uncertainty", r.expected ? Value(r.expectedUncertainty) : Value()},
                      {"expected_from", r.expectedFrom},
                      {"expected_z", r.expected ? Value(r.expectedZ) : Value()},
                      {"faster_than_expected", r.faster}};
}

Value pointChangeJson(const PointChange &p)
{
    Value::List findings;
    for (const FindingChange &f : p.findings)
        findings.push_back(findingChangeJson(f));
    Value::List readings;
    for (const ReadingChange &r : p.readings)
        readings.push_back(readingChangeJson(r));
    return Value::Map{{"point", p.point},
                      {"then", slug(p.then)},
                      {"then_at", p.thenAt ? Value(formatLocal(*p.thenAt)) : Value()},
                      {"now", slug(p.now)},
                      {"change", slug(p.change)},
                      {"carried", p.carried},
                      {"findings", findings},
                      {"readings", readings}};
}

Value rigChangeJson(const RigChange &c)
{
    return Value::Map{
        {"change", slug(c.kind)}, {"what", c.what}, {"name", c.name}, {"then", c.then}, {"now", c.now}};
}

Value ratesJson(const PairedRates &r)
{
    return Value::Map{{"worse", r.worse},
                      {"better", r.better},
                      {"mcnemar_p", r.mcnemarP},
                      {"chance_rate_up", r.chanceUp},
                      {"readings", r.readings},
                      {"readings_changed", r.readingsChanged},
                      {"readings_stand", r.readingsStand}};
}

Value countsJson(const ChangeCounts &counts)
{
    Value::Map out;
    for (const Change change : allChanges)
        out[std::string(slug(change))] = counts.of(change);
    return out;
}

Value trendPointJson(const TrendPoint &p)
{
    return Value::Map{{"at", formatLocal(p.at)}, {"value", p.si},
                      {"read_in", p.unit},       {"walk", p.walk.text()},
                      {"left_out", p.leftOut},   {"driven", quantityValue(p.driven)}};
}

Value trendPointsJson(const std::vector<TrendPoint> &points)
{
    Value::List out;
    for (const TrendPoint &p : points)
        out.push_back(trendPointJson(p));
    return out;
}

Value distanceTrendJson(const DistanceTrend &by)
{
    return Value::Map{{"per_metre", by.perMetreSi},
                      {"early", quantityValue(by.early)},
                      {"likely", quantityValue(by.likely)},
                      {"late", quantityValue(by.late)},
                      {"note", by.note}};
}

} // namespace

Value comparisonJson(const Comparison &c, PairedBy by)
{
    Value::List points;
    for (const PointChange &p : c.points)
        points.push_back(pointChangeJson(p));
    Value::List rig;
    for (const RigChange &change : c.rigChanges)
        rig.push_back(rigChangeJson(change));
    return Value::Map{{"then", c.thenWalk.text()},
                      {"now", c.nowWalk.text()},
                      {"paired_by", slug(by)},
                      {"points", points},
                      {"point_counts", countsJson(c.pointCounts)},
                      {"finding_counts", countsJson(c.findingCounts)},
                      {"only_then", strings(c.onlyThen)},
                      {"only_now", strings(c.onlyNow)},
                      {"no_longer_fitted", strings(c.noLongerFitted)},
                      {"fitted_since", strings(c.fittedSince)},
                      {"rig_changes", rig},
                      {"rates", ratesJson(c.rates)}};
}

Value trendJson(const Trend &t)
{
    return Value::Map{{"point", t.point},
                      {"reading", t.reading},
                      {"place", t.place},
                      {"unit", siSymbol(t.dimension)},
                      {"points", trendPointsJson(t.points)},
                      {"before", trendPointsJson(t.before)},
                      {"low", Value(t.lowSi)},
                      {"high", Value(t.highSi)},
                      {"basis", t.basis},
                      {"per_year", Value(t.perYearSi)},
                      {"early", dateValue(t.early)},
                      {"likely", dateValue(t.likely)},
                      {"late", dateValue(t.late)},
                      {"note", t.note},
                      {"by_distance", t.byDistance ? distanceTrendJson(*t.byDistance) : Value()}};
}

} // namespace snugwalk::cli

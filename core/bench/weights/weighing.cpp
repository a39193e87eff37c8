// SPDX-License-Identifier: Apache-2.0
// Sums and differences of tickets, with their doubt in quadrature.
#include "bench/weights/weighing.hpp"

#include <cmath>

#include "bench/make_estimate.hpp"
#include "bench/weights/tongue_warnings.hpp"

namespace snugwalk {
namespace {

constexpr double coverage = 2.0; // k, about 95 %
constexpr double mostKilograms = 50'000.0;
constexpr double mismatchSigmas = 3.0;
constexpr const char *scaleSource = "JCGM-100";

double sigma(Mass division) { return division.si() / std::sqrt(12.0); }

Origin weighed(const char *unit) { return {unit, "measured", scaleSource, 0.95}; }

Status checkWeight(Mass m, const char *where)
{
    return within(0.0, m.si(), mostKilograms,
                  {Errc::OutOfRange, "no axle on a ticket weighs that", where,
                   "give every weight with its unit, 0 to 50 t"});
}

Status checkCoupled(const CoupledTicket &t, const char *where)
{
    SNUG_TRY(checkWeight(t.front, where));
    SNUG_TRY(checkWeight(t.rear, where));
    SNUG_TRY(checkWeight(t.trailer, where));
    if (t.trailer.si() > 0.0)
        return done();
    return Error{Errc::OutOfRange, "the trailer's axles weigh nothing", where,
                 "give front axle, rear axle and trailer axles of the same ticket"};
}

Status checkTickets(const Weighing &w)
{
    SNUG_TRY(checkWeight(w.solo.front, "solo"));
    SNUG_TRY(checkWeight(w.solo.rear, "solo"));
    SNUG_TRY(checkCoupled(w.coupled, "coupled"));
    if (w.bars)
        SNUG_TRY(checkCoupled(*w.bars, "bars"));
    if (w.trailerAlone)
        SNUG_TRY(checkWeight(*w.trailerAlone, "trailer-alone"));
    return within(0.1, w.division.si(), 500.0,
                  {Errc::OutOfRange, "no scale has such a step", "division",
                   "give the smallest step on the ticket, such as 20 lb or 20 kg"});
}

Mass total(const CoupledTicket &t) { return t.front + t.rear + t.trailer; }

// (F2 - F1) / (F0 - F1), each reading in doubt by u.
std::optional<Estimate> restorationOf(const Weighing &w, double u)
{
    const double unloaded = (w.solo.front - w.coupled.front).si();
    if (!w.bars || !(unloaded > coverage * u * std::sqrt(2.0)))
        return std::nullopt; // a steering axle that lost no more than the doubt has no share to put back
    const double back = (w.bars->front - w.coupled.front).si();
    const double share = back / unloaded;
    const double spread = u / unloaded * std::sqrt(1.0 + share * share + (1.0 - share) * (1.0 - share));
    return around(share, coverage * spread, weighed("1"));
}

std::optional<Estimate> mismatchOf(const Weighing &w, Mass gross, Mass division)
{
    const double doubt = scaleDoubt(division, 6).si();
    if (w.bars)
        return around((total(*w.bars) - total(w.coupled)).si(), doubt, weighed("kg"));
    if (w.trailerAlone)
        return around((*w.trailerAlone - gross).si(), doubt, weighed("kg"));
    return std::nullopt;
}

bool addUp(const Weighing &w, const Weighed &out, double u)
{
    const double most = mismatchSigmas * u * std::sqrt(6.0);
    if (out.mismatch && std::fabs(out.mismatch->value) > most)
        return false;
    if (w.bars && w.trailerAlone && std::fabs((*w.trailerAlone).si() - out.gross.value) > most)
        return false;
    const bool steeringGains = out.frontUnloading.value < -mismatchSigmas * u * std::sqrt(2.0);
    return !steeringGains && out.share.value <= 0.5;
}

void addWarnings(const Weighing &w, Weighed &out, double u)
{
    auto &warnings = out.tongue.warnings;
    if (!addUp(w, out, u))
        warnings.emplace_back("tickets_do_not_add_up");
    addTongueWarnings(out.share.value, w.band, warnings);
    if (out.restoration && out.restoration->value > 1.0)
        warnings.emplace_back("bars_over_full");
    if (!w.bars)
        warnings.emplace_back("bars_unknown");
}

} // namespace

Mass scaleDoubt(Mass division, int readings)
{
    return Mass::fromSi(coverage * sigma(division) * std::sqrt(static_cast<double>(readings)));
}

Result<Weighed> weigh(const Weighing &w)
{
    SNUG_TRY(checkTickets(w));
    const double u = sigma(w.division);
    const double tongue =
        (w.coupled.front + w.coupled.rear).si() - (w.solo.front + w.solo.rear).si(); // four readings
    const double doubt = scaleDoubt(w.division, 4).si();
    if (tongue < -doubt)
        return Error{Errc::InvalidInput, "coupled, the tow vehicle weighs less than alone", "coupled",
                     "check the order front, rear, trailer; if it is so, the trailer lifts its tow vehicle: "
                     "do not tow it, move load forward and weigh again"};
    const double axles = w.coupled.trailer.si();
    const double gross = tongue + axles;
    if (!(gross > 0.0))
        return Error{Errc::InvalidInput, "the trailer comes out weightless", "coupled",
                     "read the ticket again"};
    Weighed out;
    out.tongue = around(tongue, doubt, weighed("kg"));
    out.gross = around(gross, scaleDoubt(w.division, 5).si(), weighed("kg"));
    const double shareDoubt =
        coverage * u * std::sqrt(4.0 * axles * axles + tongue * tongue) / (gross * gross);
    out.share = around(tongue / gross, shareDoubt, weighed("1"));
    out.frontUnloading =
        around((w.solo.front - w.coupled.front).si(), scaleDoubt(w.division, 2).si(), weighed("kg"));
    out.restoration = restorationOf(w, u);
    if (w.bars)
        out.movedToAxles =
            around((w.bars->trailer - w.coupled.trailer).si(), scaleDoubt(w.division, 2).si(), weighed("kg"));
    out.mismatch = mismatchOf(w, Mass::fromSi(gross), w.division);
    addWarnings(w, out, u);
    return out;
}

} // namespace snugwalk

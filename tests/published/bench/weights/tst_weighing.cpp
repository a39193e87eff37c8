// SPDX-License-Identifier: Apache-2.0
// Three tickets. Sums are arithmetic; the scale's doubt follows [JCGM-100] (a rectangular step, k = 2). Bands
// and what bars put back are common practice, no source.
#include "../sourced.hpp"

#include <algorithm>

#include "base/units.hpp"
#include "bench/weights/weighing.hpp"

using namespace snugwalk;
using snugwalk::test::half;

namespace {

constexpr double pound = 0.45359237;
Mass pounds(double v) { return kilograms(v * pound); }
bool warns(const Weighed &w, const char *slug)
{
    return std::find(w.tongue.warnings.begin(), w.tongue.warnings.end(), slug) != w.tongue.warnings.end();
}
// In kilograms, 20 kg a step.
Weighing metricTickets()
{
    return {{kilograms(1240), kilograms(1480)}, {kilograms(1190), kilograms(1730), kilograms(2650)}};
}
// In pounds, 20 lb a step.
Weighing tradeTickets()
{
    Weighing w{{pounds(3520), pounds(2980)}, {pounds(3180), pounds(4100), pounds(6140)}};
    w.bars = CoupledTicket{pounds(3400), pounds(3770), pounds(6250)};
    w.division = pounds(20);
    return w;
}

} // namespace

TEST_CASE("computed apart: 1240/1480, then 1190/1730/2650 kg: tongue 200 ± 23 kg, 7.0 ± 0.8 % of 2,850 kg")
{
    const Weighed w = weigh(metricTickets()).value();
    CHECK(w.tongue.value == doctest::Approx(200.0).epsilon(1e-12));
    CHECK(w.gross.value == doctest::Approx(2850.0).epsilon(1e-12));
    SOURCED("computed", 100.0 * w.share.value, 7.017544, half(1e-6));
    CHECK(w.frontUnloading.value == doctest::Approx(50.0));
    SOURCED("computed", w.tongue.high - w.tongue.value, 23.1, half(0.1));
    SOURCED("computed", 100.0 * (w.share.high - w.share.value), 0.8, half(0.1));
    CHECK(w.tongue.level == 0.95);
    SOURCED("computed", scaleDoubt(kilograms(20), 1).si() / 2.0, 5.7735, half(0.0001));
    SOURCED("computed", scaleDoubt(kilograms(20), 4).si() / 2.0, 11.547, half(0.001));
}

TEST_CASE("computed apart: with bars 1220/1640/2710 the total stands, 60 kg move, 0.60 is put back")
{
    Weighing tickets = metricTickets();
    tickets.bars = CoupledTicket{kilograms(1220), kilograms(1640), kilograms(2710)};
    const Weighed w = weigh(tickets).value();
    CHECK(w.mismatch->value == doctest::Approx(0.0));
    CHECK(w.movedToAxles->value == doctest::Approx(60.0));
    CHECK(w.restoration->value == doctest::Approx(0.60));
    CHECK_FALSE(warns(w, "tickets_do_not_add_up"));
    CHECK_FALSE(warns(w, "bars_unknown"));
}

TEST_CASE("the trade's example in pounds: 6,920 lb, tongue 780 lb or 11.3 %, 65 % put back, tickets agree")
{
    const Weighed w = weigh(tradeTickets()).value();
    SOURCED("CP", w.gross.value / pound, 6920, half(1));
    SOURCED("CP", w.tongue.value / pound, 780, half(1));
    SOURCED("CP", 100 * w.share.value, 11.3, half(0.1));
    SOURCED("CP", 100 * w.restoration->value, 65, half(1));
    SOURCED("CP", w.frontUnloading.value / pound, 340, half(1));
    SOURCED("CP", w.movedToAxles->value / pound, 110, half(1)); // 6,250 less 6,140
    CHECK(w.mismatch->value == doctest::Approx(0.0));
    CHECK(w.tongue.warnings.empty());
}

TEST_CASE("tickets that do not add up are told: a sum over three standard uncertainties apart")
{
    Weighing tickets = metricTickets();
    tickets.bars = CoupledTicket{kilograms(1220), kilograms(1640), kilograms(2750)}; // 40 kg: within 42.4
    CHECK_FALSE(warns(weigh(tickets).value(), "tickets_do_not_add_up"));
    tickets.bars->trailer = kilograms(2760); // 50 kg
    CHECK(warns(weigh(tickets).value(), "tickets_do_not_add_up"));
    tickets = metricTickets();
    tickets.trailerAlone = kilograms(2900);
    CHECK(warns(weigh(tickets).value(), "tickets_do_not_add_up"));
    tickets = metricTickets();
    tickets.coupled.front = kilograms(1300); // a load behind the rear axle never presses on the front
    CHECK(warns(weigh(tickets).value(), "tickets_do_not_add_up"));
}

TEST_CASE("tongue over 40 % draws a warning; one below zero is refused by the ticket's name")
{
    Weighing tickets = metricTickets();
    tickets.coupled.rear = kilograms(3300);
    CHECK(warns(weigh(tickets).value(), "tongue_over_40"));
    tickets.coupled.rear = kilograms(1480);
    const auto lifted = weigh(tickets);
    REQUIRE_FALSE(lifted);
    CHECK(lifted.error().where == "coupled");
    CHECK(lifted.error().act.find("forward") != std::string::npos);
}

TEST_CASE("bands: 10 to 15 % of a travel trailer, 15 to 25 of a fifth wheel, 4 to 7 of a light one")
{
    Weighing tickets = metricTickets(); // 7.0 %
    CHECK(warns(weigh(tickets).value(), "tongue_under_least"));
    tickets.band = lightTrailerBand;
    CHECK(warns(weigh(tickets).value(), "tongue_over_band"));
    tickets.coupled.rear = kilograms(1790); // 260 kg of 2,910: 8.9 %
    tickets.band = travelTrailerBand;
    CHECK(warns(weigh(tickets).value(), "tongue_under_band"));
    CHECK_FALSE(warns(weigh(tickets).value(), "tongue_under_least"));
    tickets.band = fifthWheelBand;
    tickets.coupled.rear = kilograms(2100); // 570 of 3,220: 17.7 %
    CHECK(weigh(tickets).value().tongue.warnings == std::vector<std::string>{"bars_unknown"});
}

TEST_CASE("bars that put back more than was taken are told; a steering axle that lost nothing has no share")
{
    Weighing tickets = tradeTickets();
    tickets.bars = CoupledTicket{pounds(3560), pounds(3580), pounds(6280)};
    CHECK(warns(weigh(tickets).value(), "bars_over_full"));
    tickets = metricTickets();
    tickets.bars = CoupledTicket{kilograms(1240), kilograms(1640), kilograms(2710)};
    tickets.coupled.front = kilograms(1235);
    CHECK_FALSE(weigh(tickets).value().restoration.has_value());
}

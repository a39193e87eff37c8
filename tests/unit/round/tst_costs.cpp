// SPDX-License-Identifier: Apache-2.0
// What people type as a cost: read where it is one plain amount, else told and never guessed.
#include <doctest/doctest.h>

#include "round/costs.hpp"

using namespace snugwalk;

namespace {

Mend mend(const char *at, const char *cost)
{
    Mend mend;
    mend.at = *parseLocal(at);
    mend.cost = cost;
    return mend;
}

void reads(const char *typed, const char *currency, double amount)
{
    CAPTURE(typed);
    const auto read = readCost(typed);
    REQUIRE(read);
    CHECK(read->currency == currency);
    CHECK(read->amount == doctest::Approx(amount));
}

} // namespace

TEST_CASE("plain amounts are read, whichever language wrote them")
{
    reads("120", "", 120.0);
    reads("$120", "$", 120.0);
    reads("120.50 EUR", "EUR", 120.5);
    reads("120,50 €", "EUR", 120.5);
    reads("€ 120,50", "EUR", 120.5);
    reads("NZD 186.00", "NZD", 186.0);
    reads("nzd 0.00", "NZD", 0.0);
    reads("NZ$ 41.80", "NZD", 41.8);
    reads("A$12", "AUD", 12.0);
    reads("1,250.00 USD", "USD", 1250.0);
    reads("1.250,00 EUR", "EUR", 1250.0);
    reads("1 250,50 EUR", "EUR", 1250.5);
    reads("1\u00a0250 kr", "kr", 1250.0);
    reads("CHF 1'250.50", "CHF", 1250.5);
    reads("£ 3", "£", 3.0);
    reads("0.125 EUR", "EUR", 0.125);
    reads("1,250,000 JPY", "JPY", 1250000.0);
}

// [ISO-4217]: currencies have no decimals or two, seven have three; from memory.
TEST_CASE("three digits behind one mark group thousands where the currency has no three decimals")
{
    reads("$1,250", "$", 1250.0);
    reads("1.250 EUR", "EUR", 1250.0);
    CHECK_FALSE(readCost("1.250"));
    CHECK_FALSE(readCost("1,250"));
    CHECK_FALSE(readCost("KWD 1.250"));
    CHECK_FALSE(readCost("1,250 TND"));
}

TEST_CASE("what is no plain amount is not read")
{
    for (const char *typed :
         {"", "free", "about 120", "20 + 30 EUR", "120 each", "-5 EUR", "EUR", "120 EUR 30", "$120 USD",
          "12.5.20 EUR", "1,2,3 USD", "120 / 2", "EUR 120 paid in two parts later on", "1e3 EUR",
          "99999999999999999999999999999999999999999999 EUR", "120 Mark", "2 h"}) {
        CAPTURE(typed);
        CHECK_FALSE(readCost(typed));
    }
}

TEST_CASE("years and currencies are kept apart, and what is left out is named")
{
    RigHistory history;
    history.mends = {
        mend("2025-12-31T23:30:00+13:00", "NZD 100"),  mend("2026-01-01T00:30:00+13:00", "NZD 20.50"),
        mend("2026-06-01T00:00:00Z", "30 EUR"),        mend("2028-06-01T00:00:00Z", "NZD 1"),
        mend("2026-07-01T00:00:00Z", "a few dollars"), mend("2026-07-02T00:00:00Z", " "),
        mend("2029-07-02T00:00:00Z", "NZD 5000")};
    const Costs costs = costsOf(history, *parseLocal("2028-12-31T00:00:00Z"));
    REQUIRE(costs.currencies.size() == 2);
    CHECK(costs.currencies[0].currency == "NZD"); // the one written most often
    const auto &years = costs.currencies[0].years;
    REQUIRE(years.size() == 4);   // 2027 too, with nothing
    CHECK(years[0].year == 2025); // by the wall where it was mended, not by UTC
    CHECK(years[0].sum == doctest::Approx(100.0));
    CHECK(years[1].sum == doctest::Approx(20.5));
    CHECK(years[2].mends == 0);
    CHECK(years[3].sum == doctest::Approx(1.0));
    CHECK(costs.currencies[1].currency == "EUR");
    REQUIRE(costs.unread.size() == 1);
    CHECK(costs.unread.front()->cost == "a few dollars");
    CHECK(costs.withoutCost == 1);
}

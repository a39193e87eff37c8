// SPDX-License-Identifier: Apache-2.0
// The question "what did it cost?": by year and by currency, and what nobody can read as an amount.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "due/rig_history.hpp"

namespace snugwalk {

struct CostAmount {
    std::string currency; ///< a code of three letters, or the sign as typed; empty where none was typed
    double amount = 0.0;
    friend bool operator==(const CostAmount &, const CostAmount &) = default;
};

/// One plain amount with one currency before or behind it, or none: "NZD 186.00", "$120", "120,50 €", "120".
///
/// Signs that stand for one currency become its code (€ EUR, NZ$ NZD, A$ AUD, US$ USD, CA$ CAD); $, £ and the
/// like stay signs, for several countries write them. A mark before exactly three digits groups thousands,
/// since currencies have two decimals or none; with no currency, or one of three decimals, it could be either
/// and is not read. Legal: "1.250,00 EUR", "1 250 kr", "0". Illegal: "about 120", "20 + 30", "120 each",
/// "-5", "1.250", "1.250 KWD". Source: [ISO-4217] for the number of decimals, from memory
[[nodiscard]] std::optional<CostAmount> readCost(std::string_view typed);

struct CostYear {
    int year = 0;
    double sum = 0.0;
    int mends = 0;
};
struct CurrencyCosts {
    std::string currency;
    std::vector<CostYear> years; ///< oldest first, without gaps
};
struct Costs {
    std::vector<CurrencyCosts> currencies; ///< the one most often written first; never added together
    std::vector<const Mend *> unread;      ///< with a cost that is no plain amount; of the history
    int withoutCost = 0;                   ///< mends with nothing written
};

/// Mends by `now`, by the year on the wall where they were made. The history must outlive it.
[[nodiscard]] Costs costsOf(const RigHistory &history, LocalTime now);

} // namespace snugwalk

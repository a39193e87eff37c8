// SPDX-License-Identifier: Apache-2.0
// How a plot speaks: words, units, and numbers and dates as they are written where it is shown.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/units.hpp"
#include "catalogue/texts.hpp"
#include "report/plot/plot_ticks.hpp"
#include "report/why_words.hpp"

namespace snugwalk {

/// Holds the texts by reference.
struct PlotVoice {
    const Texts &texts;
    UnitSystem units = UnitSystem::Si;
    WhyWriting writing = plainWriting();

    /// The phrase `plot_<slug>`.
    [[nodiscard]] std::string say(std::string_view slug,
                                  const std::vector<std::string> &arguments = {}) const;
    [[nodiscard]] std::string number(double value, int decimals) const
    {
        return writing.number(value, decimals);
    }
    /// "3 to 5", or one of them where they are written alike.
    [[nodiscard]] std::string range(double low, double high, int decimals) const;
    /// Of an estimate, with two digits that mean something: "350 000" for 348,272.
    [[nodiscard]] std::string roughly(double value) const;
    [[nodiscard]] std::string date(CivilDate date) const { return writing.date(date); }
    /// "March 2026", "Mar", "Mar 2026".
    [[nodiscard]] std::string month(CivilDate date) const;
    [[nodiscard]] std::string shortMonth(CivilDate date) const;
    [[nodiscard]] std::string shortMonthOfYear(CivilDate date) const;
    [[nodiscard]] DateWords dateWords() const;
    /// A number axis from nice end to nice end; `title` has its unit.
    [[nodiscard]] PlotAxis numberAxis(std::string title, double from, double to) const;
    /// A log axis from power of ten to power of ten; both ends above 0.
    [[nodiscard]] PlotAxis powerAxis(std::string title, double from, double to) const;
    /// A date axis over just these days.
    [[nodiscard]] PlotAxis dateAxis(double from, double to) const;
};

/// Dates by ISO 8601, a decimal comma in every language but English, as reports have it.
[[nodiscard]] PlotVoice paperVoice(const Texts &texts, UnitSystem units, std::string_view language);

/// Days since 1970-01-01.
[[nodiscard]] double plotDay(CivilDate date);
/// A number for programs: plain, as many digits as `shortest` gives.
[[nodiscard]] std::string plotData(double value);

} // namespace snugwalk

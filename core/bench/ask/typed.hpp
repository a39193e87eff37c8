// SPDX-License-Identifier: Apache-2.0
// What was typed for a question, read: numbers in SI, words checked against the list.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/time.hpp"
#include "base/units.hpp"
#include "bench/ask/question.hpp"

namespace snugwalk {

/// Texts by the name of the input; a Flag is set by any text.
using BenchTexts = std::map<std::string, std::string, std::less<>>;

class BenchTyped {
public:
    /// Reads every input of `question`, or refuses the first one that cannot be: `InvalidInput` or
    /// `OutOfRange` with its name in `where`; `Usage` for one that is missing or that nobody asks for.
    [[nodiscard]] static Result<BenchTyped> read(const BenchQuestion &question, const BenchTexts &texts,
                                                 UnitSystem units, CivilDate today);

    /// Typed, or taken as usual.
    [[nodiscard]] bool has(std::string_view name) const { return m_values.find(name) != m_values.end(); }
    /// Of a Quantity or a Count.
    [[nodiscard]] std::optional<double> number(std::string_view name) const;
    template <typename Q>
    [[nodiscard]] std::optional<Q> quantity(std::string_view name) const
    {
        const auto si = number(name);
        return si ? std::optional<Q>(Q::fromSi(*si)) : std::nullopt;
    }
    /// Of an input that is required or has a usual value.
    template <typename Q>
    [[nodiscard]] Q the(std::string_view name) const
    {
        return Q::fromSi(theNumber(name));
    }
    [[nodiscard]] double theNumber(std::string_view name) const;
    /// Of a Word or a Text; empty when not typed.
    [[nodiscard]] std::string text(std::string_view name) const;
    [[nodiscard]] bool flag(std::string_view name) const { return has(name); }
    [[nodiscard]] std::optional<CivilDate> date(std::string_view name) const;
    /// Empty when not typed.
    [[nodiscard]] std::vector<double> list(std::string_view name) const;
    /// The unit that a Quantity was typed in, of a List its last; a bare number has none.
    [[nodiscard]] std::optional<Unit> unitOf(std::string_view name) const;

    [[nodiscard]] CivilDate today() const { return m_today; }
    [[nodiscard]] UnitSystem units() const { return m_units; }
    [[nodiscard]] const std::vector<BenchUnderstood> &understood() const { return m_understood; }

private:
    using Held = std::variant<double, std::string, CivilDate, std::vector<double>>;
    [[nodiscard]] Status take(const BenchInput &input, std::string_view text, bool defaulted);
    [[nodiscard]] Status takeDate(const BenchInput &input, std::string_view text, bool defaulted);
    [[nodiscard]] Status takeWord(const BenchInput &input, std::string_view text, bool defaulted);
    [[nodiscard]] Status takeNumbers(const BenchInput &input, std::string_view text, bool defaulted);

    std::map<std::string, Held, std::less<>> m_values;
    std::map<std::string, Unit, std::less<>> m_written;
    std::vector<BenchUnderstood> m_understood;
    UnitSystem m_units = UnitSystem::Si;
    CivilDate m_today{};
};

} // namespace snugwalk

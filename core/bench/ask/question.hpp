// SPDX-License-Identifier: Apache-2.0
// A question of the bench as data: what it asks for, what it answers. Command line and app draw it from this.
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/dimension.hpp"
#include "base/estimate.hpp"
#include "base/result.hpp"
#include "base/value.hpp"

namespace snugwalk {

class BenchTyped;

/// How an input is typed. A plain number is a `Quantity` of dimension Count or Fraction; `Count` is whole.
/// A `List` holds quantities parted by semicolons, or by commas: "3,520 lb; 2,980 lb", "1240,1480 kg".
enum class AskKind { Quantity, Count, Word, Text, Date, List, Flag };

struct BenchInput {
    std::string_view name; ///< "max-load": the flag is --max-load, and its words are found by it
    AskKind kind = AskKind::Quantity;
    Dimension dimension = Dimension::Count;
    /// A usual size in SI: it says whether a bare number is millimetres or metres. Bare numbers are read in
    /// the person's unit system, and the answer says so.
    double typical = 1.0;
    /// What can be typed at all, in SI, ends included; outside is refused with the input's name.
    double low = -std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::max();
    bool required = false;
    bool positional = false;     ///< the command line takes it without a flag: `load-index 121`
    std::string_view usual = {}; ///< taken when nothing is typed, as typed; the answer names it as defaulted
    std::string_view words = {}; ///< of a Word: those that can be chosen, parted by blanks
    std::string_view at = {};    ///< the input that a second part fills: "12.45 V at 5 °C"
};

struct BenchFigure {
    std::string_view name;
    std::optional<Dimension> dimension; ///< nothing for a rate, which is told in the estimate's own unit
    Estimate estimate;
};

/// A sentence of the answer: words by `name`, with values for %1, %2 … in it.
struct BenchLine {
    std::string_view name;
    std::vector<std::string> values;
};

/// What was made of one input: "65 psi = 448.2 kPa".
struct BenchUnderstood {
    std::string_view name;
    std::string text;
    bool unitAssumed = false; ///< a bare number, read in the person's unit system
    bool defaulted = false;   ///< nobody typed it
};

struct BenchAnswer {
    std::vector<BenchFigure> figures; ///< the first is the answer
    std::vector<BenchLine> lines = {};
    Value extra = {};                             ///< a map of further members for JSON, such as `sequence`
    std::vector<BenchUnderstood> understood = {}; ///< filled by `askBench`
};

/// One question. Its words are in the texts of its subject under `name`: title, about, inputs, figures,
/// lines.
struct BenchQuestion {
    std::string_view name;
    std::string_view subject;
    std::span<const BenchInput> inputs;
    std::string_view cautions = {}; ///< slugs parted by blanks; shown with every answer
    /// Where the answer, or the typed figure it starts from, is kept: "tire-pressure/cold-pressure" of the
    /// catalogue, and the figure or input that is kept there; empty when no point has such a reading.
    std::string_view point = {};
    std::string_view reading = {};
    std::string_view kept = {};
    std::string_view example; ///< flags of a worked example, shown by --help and run by the tests
    /// Errors name an input in `where`.
    Result<BenchAnswer> (*answer)(const BenchTyped &) = nullptr;
};

} // namespace snugwalk

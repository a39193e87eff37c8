// SPDX-License-Identifier: Apache-2.0
// The hold list as data: what forbids moving, sleeping, plugging in or lighting, and what fires it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "base/units.hpp"
#include "base/value.hpp"

namespace snugwalk {

/// A defect found on a point, from `leastGrade` on.
struct DefectHold {
    std::string point;
    std::string defect;
    int leastGrade = 1;
};

/// A figure of a rule, kept as printed and in SI.
struct HoldFigure {
    std::string name; ///< below, above, or its name in a check
    double printed = 0.0;
    std::string unit; ///< as printed; empty for a count
    double si = 0.0;
    Dimension dimension = Dimension::Count;
    std::string setBy;  ///< maker, published, common_practice
    std::string source; ///< key of `Catalogue::sources`
};

/// A number read at a point: holds below `below`, above `above`. At the limit itself nothing holds.
struct ReadingHold {
    std::string point;
    std::string reading;
    std::optional<HoldFigure> below;
    std::optional<HoldFigure> above;
    std::vector<std::string> kinds;      ///< of rig; empty for any
    std::vector<std::string> places;     ///< where it was read; empty for anywhere
    std::optional<HoldFigure> grossOver; ///< only rigs rated over this, or whose rating nobody read
};

/// What needs more than one number or mark, by the name of its test in core/concern/checks.cpp.
struct HoldCheck {
    std::string name;
    std::vector<std::string> points; ///< that it looks at
    std::string reading;             ///< may be empty
    std::vector<HoldFigure> figures;
    std::vector<std::string> events;
    std::vector<std::string> consequences; ///< letters, one of which a point of the event must carry
    std::vector<std::string> except;       ///< points of the event that are left out

    /// The figure called `wanted`; a rule without it is refused when the catalogue is loaded.
    [[nodiscard]] const HoldFigure *figure(std::string_view wanted) const;
};

/// A rule of the hold list. `key` is its number, or sleep, plug, light for the lists without numbers;
/// texts give the sentence by the same key.
struct HoldRule {
    std::string key;
    std::string forbids;         ///< move, sleep, plug, light
    bool missedLookHolds = true; ///< false for what is weighed: not weighed is no hold
    std::vector<std::string> sources;
    std::vector<DefectHold> defects;
    std::vector<ReadingHold> readings;
    std::vector<HoldCheck> checks;

    [[nodiscard]] int number() const; ///< 0 for sleep, plug and light
};

/// The names of tests that a rule may ask for.
[[nodiscard]] const std::vector<std::string> &knownHoldChecks();

/// All rules, found by key or by the point that they watch.
class HoldRules {
public:
    /// From the bytes of holds.json. \returns `Corrupt` naming rule and member. Format: FORMAT.md.
    [[nodiscard]] static Result<HoldRules> load(std::string_view bytes);

    [[nodiscard]] const std::vector<HoldRule> &all() const { return m_rules; }
    [[nodiscard]] const HoldRule *find(std::string_view key) const;

    template <typename Trigger>
    struct Of {
        const HoldRule *rule = nullptr;
        const Trigger *trigger = nullptr;
    };
    [[nodiscard]] std::vector<Of<DefectHold>> defectsOf(std::string_view point) const;
    [[nodiscard]] std::vector<Of<ReadingHold>> readingsOf(std::string_view point) const;
    /// Checks that name the point; those that go by event name none.
    [[nodiscard]] std::vector<Of<HoldCheck>> checksOf(std::string_view point) const;
    [[nodiscard]] std::vector<Of<HoldCheck>> eventChecks() const;
    /// Every point named by a rule.
    [[nodiscard]] std::vector<std::string> points() const;

private:
    struct Watch {
        std::size_t rule = 0;
        std::size_t trigger = 0;
    };
    using Index = std::multimap<std::string, Watch, std::less<>>;
    void index();

    std::vector<HoldRule> m_rules;
    Index m_defects;
    Index m_readings;
    Index m_checks;
};

} // namespace snugwalk

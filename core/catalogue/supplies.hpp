// SPDX-License-Identifier: Apache-2.0
// What mends use up: items with their packs, and what a defect or a due point needs of them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "base/units.hpp"

namespace snugwalk {

struct SupplyItem {
    std::string slug;
    Dimension dimension = Dimension::Count; ///< volume, length, mass or count
    std::string unit;                       ///< people count it in, such as "mL"
    double packSi = 1.0;                    ///< one pack
    std::string packWord;                   ///< slug: cartridge, roll, box …
    std::vector<std::string> packNames;     ///< what people call a pack
    double fill = 1.0;                      ///< share of a pack that can be used
    std::vector<std::string> names;         ///< what people call the item, lower case, singular
    std::vector<std::string> cautions;
    std::string sourceTag;
    std::vector<std::string> sourceKeys;
};

/// How an amount follows from a finding or a due point.
enum class SupplyRule {
    ByBead,   ///< cross-section by the joint's length
    ByLength, ///< the joint's length
    ByCount,  ///< `each` a piece counted
    ByWheel,  ///< `each` a wheel
    Fixed     ///< `each` a finding or point
};

/// Which length a joint has when the finding does not tell: the rig's width, the perimeter of the opening
/// that the place names, or `wholeM` alone.
enum class WholeJoint { Metres, RigWidth, Opening };

struct SupplyNeed {
    std::string item;
    SupplyRule rule = SupplyRule::Fixed;
    std::vector<std::string> points;
    std::vector<std::string> defects; ///< of a finding; empty for a due point
    bool due = false;
    int fromGrade = 1;
    std::string beadShape;
    Length beadWidth;
    Length beadHeight;
    WholeJoint whole = WholeJoint::Metres;
    Length wholeM;
    double eachSi = 0.0; ///< in the item's SI unit
    double spareSi = 0.0;
    double waste = 0.0;
};

class SupplyList {
public:
    /// From the bytes of supplies.json; format: core/catalogue/FORMAT.md. \returns `Corrupt` naming what is
    /// wrong.
    [[nodiscard]] static Result<SupplyList> load(std::string_view bytes);

    [[nodiscard]] const std::vector<SupplyItem> &items() const { return m_items; }
    [[nodiscard]] const std::vector<SupplyNeed> &needs() const { return m_needs; }
    [[nodiscard]] const SupplyItem *find(std::string_view slug) const;
    /// The item a person means by a name, in either language: by its slug, or by the longest of its names
    /// that stands in what they wrote; nothing when none does.
    [[nodiscard]] const SupplyItem *named(std::string_view typed) const;

private:
    std::vector<SupplyItem> m_items;
    std::vector<SupplyNeed> m_needs;
};

/// "2 cartridges", "450 mL", "12": a bare number is pieces of what is counted, packs of all else; a unit is
/// one of the item's dimension or a word for its pack. Nothing when the unit is neither.
[[nodiscard]] std::optional<double> amountOf(const SupplyItem &item, double quantity, std::string_view unit);

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The shopping list in words.
#include "words/supply_words.hpp"

#include <set>

#include "walk/mend_part.hpp"

namespace snugwalk {

std::string supplyAmount(const SupplyItem &item, double si, UnitSystem units)
{
    if (item.dimension == Dimension::Count)
        return amountText(si);
    if (si == 0.0) // nothing has no size to pick a unit by
        return formatSi(displayUnit(item.dimension, units, item.packSi), 0.0, 0);
    return formatFor(item.dimension, si, units);
}

std::string packWords(const SupplyItem &item, const Texts &texts, UnitSystem units)
{
    const std::string word = texts.word("packs", item.packWord);
    if (item.dimension == Dimension::Count && item.packSi == 1.0)
        return word;
    return texts.phrase("supply_pack", {word, supplyAmount(item, item.packSi, units)});
}

std::string supplyWords(const SupplyLine &line, const SupplyList &list, const Texts &texts, UnitSystem units)
{
    const SupplyItem *item = list.find(line.item);
    if (item == nullptr)
        return {};
    const auto amount = [&](double si) { return supplyAmount(*item, si, units); };
    std::string out =
        texts.phrase("supply_line",
                     {texts.word("supplies", line.item), amount(line.neededSi), amount(line.onHandSi)}) +
        "; " +
        (line.packs == 0
             ? texts.phrase("supply_enough")
             : texts.phrase("supply_buy", {std::to_string(line.packs), packWords(*item, texts, units)})) +
        "\n";
    for (const SupplyUse &use : line.uses) {
        const std::string what =
            texts.point(use.point).title +
            (use.finding.isNull() ? ", " + texts.phrase("due_word") : " " + use.finding.shortText()) + ": " +
            amount(use.si);
        out += "  " + texts.phrase("supply_for", {what}) +
               (use.assumed ? ", " + texts.phrase("supply_assumed") : "") + "\n";
    }
    return out;
}

std::string supplyCautions(const std::vector<SupplyLine> &lines, const SupplyList &list, const Texts &texts)
{
    std::set<std::string> codes;
    for (const SupplyLine &line : lines) {
        if (const SupplyItem *item = list.find(line.item))
            codes.insert(item->cautions.begin(), item->cautions.end());
    }
    std::string out;
    for (const std::string &code : codes)
        out += texts.cautionShort(code) + "\n";
    return out;
}

} // namespace snugwalk

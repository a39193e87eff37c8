// SPDX-License-Identifier: Apache-2.0
// Reading supplies.json, and knowing an item by what people call it.
#include "catalogue/supplies.hpp"

#include <algorithm>
#include <set>

#include "base/text.hpp"
#include "base/value.hpp"

namespace snugwalk {
namespace {

Error corrupt(const std::string &what, const std::string &where)
{
    return {Errc::Corrupt, "supplies.json: " + what, where, "correct the catalogue's data"};
}

std::vector<std::string> strings(const Value &v)
{
    std::vector<std::string> out;
    for (const Value &item : v.list())
        out.push_back(item.asString().value_or(""));
    return out;
}

std::string text(const Value &v) { return v.asString().value_or(""); }

Result<SupplyItem> itemFrom(const Value &v)
{
    SupplyItem item;
    item.slug = text(v["slug"]);
    const auto dimension = findDimension(text(v["quantity"]));
    item.unit = text(v["unit"]);
    const auto unit = dimension ? findUnit(*dimension, item.unit) : std::nullopt;
    const bool counts = dimension == Dimension::Count;
    const auto pack = v["pack"].asDouble();
    if (item.slug.empty() || !dimension || (!unit && !counts) || !pack || !(*pack > 0.0))
        return corrupt("an item without slug, quantity, unit or pack", item.slug);
    item.dimension = *dimension;
    item.packSi = counts ? *pack : toSi(*unit, *pack);
    item.packWord = text(v["pack_word"]);
    item.packNames = strings(v["pack_names"]);
    item.fill = v["fill"].asDouble().value_or(1.0);
    if (!(item.fill > 0.0 && item.fill <= 1.0))
        return corrupt("a fill outside 0 to 1", item.slug);
    item.names = strings(v["names"]);
    item.cautions = strings(v["cautions"]);
    item.sourceTag = text(v["basis"]["tag"]);
    item.sourceKeys = strings(v["basis"]["keys"]);
    return item;
}

std::optional<SupplyRule> ruleFrom(const std::string &slug)
{
    static const std::map<std::string, SupplyRule> rules = {{"bead", SupplyRule::ByBead},
                                                            {"length", SupplyRule::ByLength},
                                                            {"count", SupplyRule::ByCount},
                                                            {"hub", SupplyRule::ByWheel},
                                                            {"fixed", SupplyRule::Fixed}};
    const auto found = rules.find(slug);
    return found == rules.end() ? std::nullopt : std::optional(found->second);
}

std::optional<WholeJoint> wholeFrom(const std::string &slug)
{
    static const std::map<std::string, WholeJoint> joints = {{"", WholeJoint::Metres},
                                                             {"metres", WholeJoint::Metres},
                                                             {"rig_width", WholeJoint::RigWidth},
                                                             {"opening", WholeJoint::Opening}};
    const auto found = joints.find(slug);
    return found == joints.end() ? std::nullopt : std::optional(found->second);
}

// A number of the item's own unit, in SI.
double inItemSi(const SupplyItem &item, const Value &v)
{
    const double number = v.asDouble().value_or(0.0);
    const auto unit = findUnit(item.dimension, item.unit);
    return item.dimension == Dimension::Count || !unit ? number : toSi(*unit, number);
}

Result<SupplyNeed> needFrom(const Value &v, const SupplyList &list)
{
    SupplyNeed need;
    need.item = text(v["item"]);
    const SupplyItem *item = list.find(need.item);
    const auto rule = ruleFrom(text(v["rule"]));
    const auto whole = wholeFrom(text(v["whole"]));
    need.points = strings(v["points"]);
    if (item == nullptr || !rule || !whole || need.points.empty())
        return corrupt("a need without a known item, rule, joint or point", need.item);
    need.rule = *rule;
    need.whole = *whole;
    need.defects = strings(v["defects"]);
    need.due = v["due"].asBool().value_or(false);
    if (need.due != need.defects.empty())
        return corrupt("a need is for defects, or for what is due", need.item);
    need.fromGrade = static_cast<int>(v["from_grade"].asInt().value_or(1));
    need.beadShape = text(v["bead"]["shape"]);
    need.beadWidth = millimetres(v["bead"]["width_mm"].asDouble().value_or(0.0));
    need.beadHeight = millimetres(v["bead"]["height_mm"].asDouble().value_or(0.0));
    need.wholeM = metres(v["whole_m"].asDouble().value_or(0.0));
    need.eachSi = inItemSi(*item, v["each"]);
    need.spareSi = inItemSi(*item, v["spare"]);
    need.waste = v["waste"].asDouble().value_or(0.0);
    const bool byLength = need.rule == SupplyRule::ByBead || need.rule == SupplyRule::ByLength;
    if (byLength ? !(need.wholeM > Length()) : !(need.eachSi > 0.0))
        return corrupt("a need of nothing", need.item);
    return need;
}

// "Lap-Sealant cartridges" as words: lower case, dashes as blanks, a blank at both ends.
std::string asWords(std::string_view typed)
{
    std::string out = " " + lowerAscii(typed) + " ";
    for (char &c : out) {
        if (c == '-' || c == '_' || c == ',' || c == '(' || c == ')')
            c = ' ';
    }
    return out;
}

// A name stands in the words as it is, or with the ending of a plural.
bool standsIn(const std::string &words, const std::string &name)
{
    const std::string wanted = " " + asWords(name).substr(1, name.size());
    for (const char *ending : {" ", "s ", "es ", "n ", "en "}) {
        if (words.find(wanted + ending) != std::string::npos)
            return true;
    }
    return false;
}

} // namespace

Result<SupplyList> SupplyList::load(std::string_view bytes)
{
    const Result<Value> root = parseJson(bytes);
    if (!root)
        return corrupt(root.error().what, root.error().where);
    SupplyList list;
    for (const Value &v : (*root)["items"].list()) {
        const Result<SupplyItem> item = itemFrom(v);
        if (!item)
            return item.error();
        if (list.find(item->slug) != nullptr)
            return corrupt("an item twice", item->slug);
        list.m_items.push_back(*item);
    }
    for (const Value &v : (*root)["needs"].list()) {
        const Result<SupplyNeed> need = needFrom(v, list);
        if (!need)
            return need.error();
        list.m_needs.push_back(*need);
    }
    if (list.m_items.empty() || list.m_needs.empty())
        return corrupt("no items or no needs", "");
    return list;
}

const SupplyItem *SupplyList::find(std::string_view slug) const
{
    const auto found =
        std::find_if(m_items.begin(), m_items.end(), [&](const SupplyItem &i) { return i.slug == slug; });
    return found == m_items.end() ? nullptr : &*found;
}

const SupplyItem *SupplyList::named(std::string_view typed) const
{
    const std::string words = asWords(typed);
    const SupplyItem *best = nullptr;
    std::size_t longest = 0;
    const auto take = [&](const SupplyItem &item, const std::string &name) {
        if (name.size() > longest && standsIn(words, name)) {
            best = &item;
            longest = name.size();
        }
    };
    for (const SupplyItem &item : m_items) {
        take(item, item.slug);
        for (const std::string &name : item.names)
            take(item, name);
    }
    return best;
}

std::optional<double> amountOf(const SupplyItem &item, double quantity, std::string_view unit)
{
    const std::string word = lowerAscii(trim(unit));
    const bool counts = item.dimension == Dimension::Count;
    if (word.empty())
        return counts ? quantity : quantity * item.packSi;
    for (const std::string &name : item.packNames) {
        if (word == name || word == name + "s" || word == name + "es")
            return quantity * item.packSi;
    }
    if (word == "pack" || word == "packs")
        return quantity * item.packSi;
    if (counts) {
        static const std::set<std::string_view> pieces = {"piece", "pieces", "pcs",   "pieza", "piezas",
                                                          "pièce", "pièces", "stück", "stk"};
        return pieces.contains(word) ? std::optional(quantity) : std::nullopt;
    }
    // grams are too small for anything else that is weighed here
    if (item.dimension == Dimension::Mass && (word == "g" || word == "gram" || word == "grams"))
        return quantity * 1e-3;
    const auto known = findUnit(item.dimension, word);
    return known ? std::optional(toSi(*known, quantity)) : std::nullopt;
}

} // namespace snugwalk

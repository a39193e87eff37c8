// SPDX-License-Identifier: Apache-2.0
// supplies, supplies have, supplies items.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "round/history.hpp"
#include "round/supplies.hpp"
#include "walk/mend_part.hpp"
#include "walk/walk_value.hpp"
#include "words/supply_words.hpp"

namespace snugwalk::cli {
namespace {

Value quantity(Dimension dimension, double si)
{
    return Value::Map{{"value", si}, {"unit", siSymbol(dimension)}};
}

Value lineJson(const SupplyLine &line)
{
    Value::List uses;
    for (const SupplyUse &use : line.uses)
        uses.push_back(Value::Map{{"point", use.point},
                                  {"finding", use.finding.isNull() ? Value() : Value(use.finding.text())},
                                  {"needed", quantity(line.dimension, use.si)},
                                  {"assumed", use.assumed}});
    return Value::Map{
        {"item", line.item},
        {"needed", quantity(line.dimension, line.neededSi)},
        {"on_hand", quantity(line.dimension, line.onHandSi)},
        {"pack", quantity(line.dimension, line.packSi)},
        {"packs", line.packs},
        {"basis", replaceAll(productSupplies().find(line.item)->sourceTag, "CP", "common_practice")},
        {"uses", uses}};
}

Result<Answer> shopping(Session &session, int days)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const auto lines = suppliesFor(productSupplies(), now->history, now->bands, now->now, days);
    Value::List json;
    std::string text;
    for (const SupplyLine &line : lines) {
        json.push_back(lineJson(line));
        text += supplyWords(line, productSupplies(), session.texts(), session.units());
    }
    if (lines.empty())
        text = session.texts().phrase("supply_none") + "\n";
    else
        text += session.texts().phrase("supply_basis") + "\n" +
                supplyCautions(lines, productSupplies(), session.texts());
    return Answer{Value::Map{{"days", days}, {"supplies", json}}, text};
}

Error unknownItem(const std::string &typed)
{
    std::vector<std::string> slugs;
    for (const SupplyItem &item : productSupplies().items())
        slugs.push_back(item.slug);
    return {Errc::NotFound, "no such supply: \"" + typed.substr(0, 60) + "\"", "item",
            "use one of " + join(slugs, ", ")};
}

// "2 cartridges", "450 mL", "12".
Result<double> amountTyped(const SupplyItem &item, const std::string &typed)
{
    const auto digits = typed.find_first_not_of("0123456789.,/ ");
    const std::string number = typed.substr(0, digits);
    const std::string unit = digits == std::string::npos ? "" : typed.substr(digits);
    const Result<double> count = parseSi(Dimension::Count, number);
    const auto si = count ? amountOf(item, *count, unit) : std::nullopt;
    if (si)
        return *si;
    return Error{Errc::InvalidInput, "not an amount of " + item.slug + ": \"" + typed.substr(0, 60) + "\"",
                 "quantity",
                 item.dimension == Dimension::Count
                     ? "write a count, or \"2 packs\""
                     : "write \"2 packs\", or an amount such as \"12 " + item.unit + "\""};
}

Result<Answer> have(Session &session, const std::string &typed, const std::string &amount)
{
    const SupplyItem *item = productSupplies().named(typed);
    if (item == nullptr)
        return unknownItem(typed);
    const Result<double> si = amountTyped(*item, amount);
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    const Result<LocalTime> now = session.now();
    if (!si || !rig)
        return si ? rig.error() : si.error();
    if (!doer || !now)
        return doer ? now.error() : doer.error();
    const Stock stock{Id{}, rig->id, item->slug, item->dimension, *si, item->unit, *now, doer->by};
    const Result<Id> id = setStock(**session.book(), stock, *doer);
    if (!id)
        return id.error();
    Value json = toValue(stock);
    json.member("id") = id->text();
    return Answer{json, session.texts().word("supplies", item->slug) + ": " +
                            supplyAmount(*item, *si, session.units()) + " on hand from now on\n"};
}

Result<Answer> items(Session &session)
{
    const Result<Rig> rig = session.rig();
    const Result<LocalTime> now = session.now();
    if (!rig || !now)
        return rig ? now.error() : rig.error();
    Result<RigHistory> history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    const auto onHand = onHandOf(productSupplies(), *history, *now);
    Value::List json;
    std::string text;
    for (const SupplyItem &item : productSupplies().items()) {
        Value one = Value::Map{{"item", item.slug},
                               {"title", session.texts().word("supplies", item.slug)},
                               {"pack", quantity(item.dimension, item.packSi)},
                               {"on_hand", Value()}};
        std::string hand;
        for (const OnHand &h : onHand) {
            if (h.item != item.slug)
                continue;
            one.member("on_hand") = quantity(item.dimension, h.si);
            hand = ", " + supplyAmount(item, h.si, session.units()) + " on hand";
        }
        json.push_back(one);
        text += item.slug + ": " + session.texts().word("supplies", item.slug) + ", " +
                packWords(item, session.texts(), session.units()) + hand + "\n";
    }
    return Answer{Value::Map{{"items", json}}, text};
}

} // namespace

void addSupplyCommands(CLI::App &app, Registry &registry)
{
    CLI::App *supplies =
        app.add_subcommand("supplies", "what open findings and due points need from the shop");
    auto days = std::make_shared<int>(30);
    supplies->add_option("--days", *days, "also what may fall due within so many days (default: 30)")
        ->check(CLI::Range(0, 3650));
    registry.add(*supplies,
                 "  snugwalk supplies --days 60\n  snugwalk supplies have lap-sealant \"2 cartridges\"",
                 [days](Session &s) { return shopping(s, *days); });
    auto item = std::make_shared<std::string>();
    auto amount = std::make_shared<std::string>();
    CLI::App *having = supplies->add_subcommand("have", "say how much is on hand; mends take from it");
    having->add_option("item", *item, "a supply, see `snugwalk supplies items`")->required();
    having->add_option("quantity", *amount, "\"2 cartridges\", \"450 mL\", \"12\"")->required();
    registry.add(*having,
                 "  snugwalk supplies have lap-sealant \"2 cartridges\"\n  snugwalk supplies have rivets 40",
                 [=](Session &s) { return have(s, *item, *amount); });
    registry.add(*supplies->add_subcommand("items", "every supply, its pack, and what is on hand"),
                 "  snugwalk supplies items", [](Session &s) { return items(s); });
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// plot: how it went over time, as a picture, as a table, or in words.
#include <algorithm>

#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "html/plot_svg.hpp"
#include "logbook/files.hpp"
#include "report/plot/plot_ask.hpp"

namespace snugwalk::cli {
namespace {

struct PlotOptions {
    std::string kind;
    std::string format = "text";
    std::string point;
    std::string finding;
    std::string only;
    std::string file;
    int months = 0;
};

Result<PlotAsk> askOf(Session &session, const PlotOptions &o)
{
    PlotAsk ask{*parsePlotKind(o.kind), o.point, {}, o.months};
    if (!o.point.empty() && session.catalogue().find(o.point) == nullptr)
        return Error{Errc::NotFound, "no such point", o.point, "see `snugwalk points`"};
    const bool takesPoint = ask.kind != PlotKind::Shake && ask.kind != PlotKind::Cost;
    if (!o.point.empty() && !takesPoint)
        return Error{Errc::Usage, "this plot is of the whole rig", "--point", "leave --point out"};
    if (o.finding.empty())
        return ask;
    if (ask.kind != PlotKind::Concern || !o.point.empty())
        return Error{Errc::Usage, "a finding has concern alone, and its own point", "--finding",
                     "take --kind concern without --point"};
    const Result<Id> id = idOf(**session.book(), "finding", o.finding);
    if (!id)
        return id.error();
    ask.finding = *id;
    return ask;
}

std::string titlesOf(const std::vector<Plot> &plots)
{
    std::vector<std::string> titles;
    for (const Plot &plot : plots)
        titles.push_back("\"" + plot.title + "\"");
    return join(titles, "; ");
}

std::string plotText(const Plot &plot)
{
    std::string out = plot.title + "\n" + (plot.empty.empty() ? plot.about : plot.empty) + "\n";
    for (const PlotRow &row : plot.rows)
        out += "  " + rowWords(plot, row) + "\n";
    for (const std::string &note : plot.notes)
        out += note + "\n";
    return out;
}

Value plotJson(const Plot &plot)
{
    Value::List rows;
    for (const PlotRow &row : plot.rows) {
        Value::Map map;
        for (std::size_t i = 0; i < row.data.size() && i < plot.dataHead.size(); ++i) {
            const auto number = parseDouble(row.data[i]);
            map[plot.dataHead[i]] = number ? Value(*number) : Value(row.data[i]);
        }
        rows.push_back(std::move(map));
    }
    return Value::Map{{"title", plot.title},
                      {"about", plot.empty.empty() ? plot.about : plot.empty},
                      {"notes", Value::List(plot.notes.begin(), plot.notes.end())},
                      {"rows", rows}};
}

// A table holds several; a picture is of one.
Result<std::string> made(const std::vector<Plot> &plots, const PlotOptions &o)
{
    std::string text;
    if (o.format == "csv") {
        CsvTable table{plots.front().dataHead, {}};
        for (const Plot &plot : plots) {
            const CsvTable one = plotTable(plot);
            table.rows.insert(table.rows.end(), one.rows.begin(), one.rows.end());
        }
        return csvText(table);
    }
    if (o.format == "svg") {
        if (plots.size() > 1)
            return Error{Errc::Usage, "there are several such plots, and a picture is of one",
                         titlesOf(plots), "choose one by words of its title with --only"};
        html::PlotLook look;
        look.titled = true;
        return html::plotSvg(plots.front(), look);
    }
    for (const Plot &plot : plots)
        text += (text.empty() ? "" : "\n") + plotText(plot);
    return text;
}

Result<Answer> plot(Session &session, const PlotOptions &o)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Result<PlotAsk> ask = askOf(session, o);
    if (!ask)
        return ask.error();
    const PlotVoice voice = paperVoice(session.texts(), session.units(), session.globals().language);
    std::vector<Plot> plots = plotsFor(*ask, session.catalogue(), now->history, now->now, voice);
    if (!o.only.empty()) {
        const std::string all = titlesOf(plots);
        std::erase_if(plots, [&](const Plot &one) {
            return lowerAscii(one.title).find(lowerAscii(o.only)) == std::string::npos;
        });
        if (plots.empty())
            return Error{Errc::NotFound, "no plot has these words in its title", o.only, "there are " + all};
    }
    const Result<std::string> text = made(plots, o);
    if (!text)
        return text.error();
    Value::List json;
    for (const Plot &one : plots)
        json.push_back(plotJson(one));
    if (o.file.empty())
        return Answer{Value::Map{{"plots", json}}, *text};
    SNUG_TRY(replaceFile(o.file, *text));
    return Answer{Value::Map{{"plot", o.file}, {"kind", o.kind}, {"format", o.format}, {"plots", json}},
                  "written to " + o.file + "\n"};
}

std::vector<std::string> kindSlugs()
{
    std::vector<std::string> slugs;
    for (const PlotKind kind : allPlotKinds())
        slugs.emplace_back(slug(kind));
    return slugs;
}

} // namespace

void addPlotCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub =
        app.add_subcommand("plot", "how it went: weathering, shake, cost, concern or readings over time");
    auto o = std::make_shared<PlotOptions>();
    sub->add_option("--kind", o->kind, join(kindSlugs(), ", "))
        ->required()
        ->check(CLI::IsMember(kindSlugs()));
    sub->add_option("--format", o->format, "text (default), svg or csv; PNG is the app's")
        ->check(CLI::IsMember({"text", "svg", "csv"}));
    sub->add_option("--point", o->point, "of weathering, concern and reading: this point");
    sub->add_option("--finding", o->finding, "of concern: this finding");
    sub->add_option("--months", o->months, "of weathering and shake: the last so many (default: all)")
        ->check(CLI::Range(1, 1200));
    sub->add_option("--only", o->only, "only plots with these words in their title, such as \"wheel 1L\"");
    sub->add_option("--out", o->file, "where to write it (default: it is printed)");
    registry.add(*sub,
                 "  snugwalk plot --kind weathering\n"
                 "  snugwalk --units us plot --kind shake --format svg --out shake.svg\n"
                 "  snugwalk plot --kind reading --point tread-depth --only \"wheel 1L\" --format csv",
                 [o](Session &s) { return plot(s, *o); });
}

} // namespace snugwalk::cli

// SPDX-License-Identifier: Apache-2.0
// One element an ink.
#include "html/plot_svg.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "html/html_text.hpp"
#include "report/plot/sheet_labels.hpp"

namespace snugwalk::html {
namespace {

constexpr double roughRoom = 1.06; ///< fonts that may stand in are a little wider

std::string n(double v) { return fixed(v, 2); }

std::string_view colour(SheetTone tone)
{
    switch (tone) {
    case SheetTone::Ink:
        return "#1B1F23";
    case SheetTone::Quiet:
        return "#565B60";
    case SheetTone::Faint:
        return "#C8CCD0";
    case SheetTone::Shade:
        return "#E3E6E9";
    case SheetTone::Paper:
        return "#fff";
    case SheetTone::Watch:
        return "#0072B2";
    case SheetTone::Mend:
        return "#CC79A7";
    case SheetTone::Hold:
        return "#D55E00";
    }
    return "#1B1F23";
}

std::string pathOf(const std::vector<SheetSpot> &spots, bool closed)
{
    std::string out;
    for (const SheetSpot &spot : spots)
        out += (out.empty() ? "M" : "L") + n(spot.x) + " " + n(spot.y);
    return out + (closed ? "Z" : "");
}

std::string quoted(std::string_view name, const std::string &value)
{
    return " " + std::string(name) + "='" + value + "'";
}

struct InkWriter {
    double stroke;

    std::string operator()(const SheetArea &area) const
    {
        return "<path fill='" + std::string(colour(area.tone)) + "' d='" + pathOf(area.spots, true) + "'/>";
    }
    std::string operator()(const SheetLine &line) const
    {
        std::string dash;
        for (const double part : line.dash)
            dash += (dash.empty() ? "" : ",") + n(part);
        return "<path fill='none' stroke-linejoin='round' stroke='" + std::string(colour(line.tone)) + "'" +
               quoted("stroke-width", n(line.width)) +
               (dash.empty() ? "" : quoted("stroke-dasharray", dash)) + " d='" + pathOf(line.spots, false) +
               "'/>";
    }
    std::string operator()(const SheetShape &shape) const
    {
        const double r = shape.size / 2.0;
        const double x = shape.at.x;
        const double y = shape.at.y;
        const std::string ink(colour(SheetTone::Ink));
        const std::string edge = quoted("stroke", ink) + quoted("stroke-width", n(stroke * 0.8));
        const auto circle = [&](const std::string &fill) {
            return "<circle" + quoted("cx", n(x)) + quoted("cy", n(y)) + quoted("r", n(r)) +
                   quoted("fill", fill) + edge + "/>";
        };
        const auto path = [&](SheetTone tone, const std::string &d) {
            return "<path" + quoted("fill", std::string(colour(tone))) + edge + quoted("d", d) + "/>";
        };
        switch (shape.shape) {
        case PlotShape::Dot:
            return circle(ink);
        case PlotShape::Ring:
            return circle("#fff");
        case PlotShape::Square:
            return path(SheetTone::Paper,
                        pathOf({{x - r, y - r}, {x + r, y - r}, {x + r, y + r}, {x - r, y + r}}, true));
        case PlotShape::Half:
            return path(SheetTone::Watch, "M" + n(x - r) + " " + n(y + r / 2.0) + "A" + n(r) + " " + n(r) +
                                              " 0 0 1 " + n(x + r) + " " + n(y + r / 2.0) + "Z");
        case PlotShape::Wedge:
            return path(SheetTone::Mend,
                        pathOf({{x - r, y + r * 0.8}, {x + r, y - r * 0.8}, {x + r, y + r * 0.8}}, true));
        case PlotShape::Block:
            return path(SheetTone::Hold,
                        pathOf({{x - r, y - r}, {x + r, y - r}, {x + r, y + r}, {x - r, y + r}}, true)) +
                   "<path stroke='#fff'" + quoted("stroke-width", n(r * 0.45)) +
                   quoted("d", "M" + n(x - r) + " " + n(y) + "L" + n(x + r) + " " + n(y)) + "/>";
        }
        return circle(ink);
    }
};

// Where they could lie on lines, words lie on a white box: SVG Tiny has no halo.
std::string wordsSvg(const SheetWords &words, const PlotSheet &sheet)
{
    const double left = words.side == SheetSide::Start    ? words.at.x
                        : words.side == SheetSide::Middle ? words.at.x - words.width / 2.0
                                                          : words.at.x - words.width;
    std::string out;
    if (words.bold)
        out += "<rect fill='#fff'" + quoted("x", n(left - 2.0)) + quoted("y", n(words.at.y)) +
               quoted("width", n(words.width + 4.0)) + quoted("height", n(sheet.lineHeight)) + "/>";
    const char *anchor = words.side == SheetSide::Start    ? "start"
                         : words.side == SheetSide::Middle ? "middle"
                                                           : "end";
    return out + "<text" + quoted("x", n(words.at.x)) + quoted("y", n(words.at.y + sheet.letter)) +
           quoted("text-anchor", anchor) + quoted("fill", std::string(colour(words.tone))) +
           (words.bold ? " font-weight='bold'" : "") + ">" + escape(words.text) + "</text>";
}

/// Lines of words one below another, for the surroundings of a plot that stands alone.
struct Column {
    const PlotLook &look;
    const WordWidth &width;
    double y = 0.0;
    std::string out = {};

    void add(const std::string &text, double scale, SheetTone tone, bool bold)
    {
        for (const std::string &line : wrappedWords(text, look.size.width / scale, width, bold)) {
            const double letter = look.size.letter * scale;
            out += "<text x='0'" + quoted("y", n(y + letter)) + quoted("font-size", n(letter)) +
                   quoted("fill", std::string(colour(tone))) + (bold ? " font-weight='bold'" : "") + ">" +
                   escape(line) + "</text>";
            y += letter * 1.3;
        }
    }
};

} // namespace

std::string plotSvg(const Plot &plot, const PlotLook &look)
{
    if (!plot.empty.empty() && !look.titled)
        return {};
    const WordWidth width = look.wordWidth ? look.wordWidth : roughWordWidth(look.size.letter * roughRoom);
    Column column{look, width};
    if (look.titled) {
        column.add(plot.title, 1.2, SheetTone::Ink, true);
        column.add(plot.empty.empty() ? plot.about : plot.empty, 1.0, SheetTone::Ink, false);
        column.y += look.size.letter * 0.6;
    }
    std::string body;
    double height = column.y;
    if (plot.empty.empty()) {
        const PlotSheet sheet = layPlot(plot, look.size, width);
        for (const SheetInk &ink : sheet.inks)
            body += std::visit(InkWriter{look.size.stroke}, ink) + "\n";
        for (const SheetWords &words : sheet.words)
            body += wordsSvg(words, sheet) + "\n";
        body = "<g transform='translate(0 " + n(column.y) + ")'" + quoted("font-size", n(sheet.letter)) +
               ">\n" + body + "</g>";
        height += sheet.height;
    }
    if (look.titled) {
        column.y = height + look.size.letter * 0.4;
        for (const std::string &note : plot.notes)
            column.add(note, 0.85, SheetTone::Quiet, false);
        height = column.y + look.size.letter * 0.2;
    }
    const double margin = look.titled ? look.size.letter : 0.0;
    const double wholeWidth = look.size.width + 2.0 * margin;
    const double wholeHeight = height + 2.0 * margin;
    const std::string spoken = plot.title + ": " + (plot.empty.empty() ? plot.about : plot.empty);
    std::string out = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + n(wholeWidth) + " " +
                      n(wholeHeight) + "' role='img' aria-label='" + escape(spoken) + "' font-family='" +
                      svgFonts + "'";
    if (look.titled) // a size of its own, white behind: it may be put anywhere
        out += quoted("width", n(wholeWidth)) + quoted("height", n(wholeHeight)) + "><title>" +
               escape(plot.title) + "</title><desc>" + escape(spoken) + "</desc><rect fill='#fff'" +
               quoted("width", n(wholeWidth)) + quoted("height", n(wholeHeight)) +
               "/><g transform='translate(" + n(margin) + " " + n(margin) + ")'>" + column.out + body +
               "</g></svg>\n";
    else
        out += ">" + body + "</svg>\n";
    return out;
}

} // namespace snugwalk::html

// SPDX-License-Identifier: Apache-2.0
// One function a kind of block.
#include "html/block_html.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "html/html_text.hpp"
#include "html/map_svg.hpp"
#include "html/photo_svg.hpp"
#include "html/plot_svg.hpp"
#include "html/signature_svg.hpp"
#include "rig/names.hpp"
#include "rig/outline/usual_tanks.hpp"

namespace snugwalk::html {
namespace {

std::string classed(std::string_view tag, std::string_view name, const std::string &inner)
{
    return "<" + std::string(tag) + " class='" + std::string(name) + "'>" + inner + "</" + std::string(tag) +
           ">\n";
}

std::string paragraphs(const std::vector<std::string> &lines)
{
    std::string out;
    for (const std::string &line : lines)
        out += element("p", line);
    return out;
}

class Writer {
public:
    explicit Writer(const PageParts &parts) : m_parts(parts) {}

    std::string operator()(const HeadingBlock &b) const
    {
        return element(b.level <= 2 ? "h2" : "h3", b.text);
    }

    std::string operator()(const TextBlock &b) const
    {
        const char *name = b.tone == TextTone::State   ? "state"
                           : b.tone == TextTone::Quiet ? "quiet"
                                                       : "plain";
        return classed("p", name, escape(b.text));
    }

    std::string operator()(const TableBlock &b) const
    {
        const auto cell = [&](const char *tag, const char *scope, std::size_t column,
                              const std::string &text) {
            const bool numeric = column < b.numeric.size() && b.numeric[column];
            return "<" + std::string(tag) + scope + (numeric ? " class='number'>" : ">") + escape(text) +
                   "</" + tag + ">";
        };
        std::string out = "<div class='table'><table><thead><tr>";
        for (std::size_t i = 0; i < b.head.size(); ++i)
            out += cell("th", " scope='col'", i, b.head[i]);
        out += "</tr></thead><tbody>\n";
        for (const auto &row : b.rows) {
            out += "<tr>";
            for (std::size_t i = 0; i < row.size(); ++i)
                out += cell("td", "", i, row[i]);
            out += "</tr>\n";
        }
        return out + "</tbody></table></div>\n";
    }

    std::string operator()(const FindingBlock &b) const
    {
        const std::string number = b.number > 0 ? classed("span", "no", std::to_string(b.number)) : "";
        return "<section class='finding'><h3>" + number + glyphSvg(b.call) + "<span>" + escape(b.title) +
               "</span></h3>\n" + paragraphs(b.lines) + "</section>\n";
    }

    std::string operator()(const TickBlock &b) const
    {
        std::string out;
        for (const std::string &line : b.lines)
            out += "<li><span class='box' aria-hidden='true'></span><span>" + escape(line) + "</span></li>\n";
        return classed("ul", "ticks", out);
    }

    std::string operator()(const CautionBlock &b) const
    {
        return classed("section", "caution",
                       "<h3>" + escape(m_parts.texts.phrase("page_cautions")) + "</h3>\n" +
                           paragraphs(b.lines));
    }

    std::string operator()(const PhotosBlock &b) const
    {
        std::string out;
        for (const PhotoPicture &picture : b.photos)
            out += figure(picture, "one");
        return classed("div", "photos", out);
    }

    std::string operator()(const PairBlock &b) const
    {
        const bool both = b.then && b.now;
        const Texts &texts = m_parts.texts;
        std::string out = "<section class='pair" + std::string(both ? " both" : "") + "'>\n";
        if (!b.title.empty())
            out += element("h3", b.title);
        if (both) // the script shows it: without one, both stand side by side
            out += "<button type='button' hidden data-then='" + escape(texts.phrase("page_show_then")) +
                   "' data-now='" + escape(texts.phrase("page_show_now")) + "'></button>\n";
        out += "<div class='two'>";
        if (b.then)
            out += figure(*b.then, "then");
        if (b.now)
            out += figure(*b.now, "now");
        return out + "</div></section>\n";
    }

    std::string operator()(const RigDrawingBlock &b) const
    {
        std::string out;
        for (const DrawingSheet &sheet : drawingSheets(b, drawingWords(b, m_parts.texts)))
            out += sheet.svg;
        const std::string legend = drawingLegend(b, m_parts.texts);
        return classed("figure", "drawing", out + (legend.empty() ? "" : element("figcaption", legend)));
    }

    std::string operator()(const MapBlock &b) const
    {
        const Texts &texts = m_parts.texts;
        const std::string spoken = texts.phrase("page_map") + (b.caption.empty() ? "" : ": " + b.caption);
        const std::string map = mapSvg(b, {m_parts.coast, m_parts.places, m_parts.units}, spoken);
        if (map.empty())
            return {};
        std::string spots;
        for (const MapSpot &spot : b.spots) {
            if (!spot.text.empty())
                spots += element("p", std::to_string(spot.number) + ": " + spot.text);
        }
        return classed("figure", "map", map + element("figcaption", spoken + "." + mapSources(m_parts))) +
               spots;
    }

    std::string operator()(const PlotBlock &b) const
    {
        const Plot &plot = b.plot;
        std::string notes;
        for (const std::string &note : plot.notes)
            notes += classed("p", "quiet", escape(note));
        const std::string words = plot.empty.empty() ? plot.about : plot.empty;
        return element("h3", plot.title) +
               classed("figure", "plot", plotSvg(plot) + element("figcaption", words)) + notes;
    }

    std::string operator()(const BlankBlock &b) const
    {
        std::string rows;
        for (int i = 0; i < b.rows; ++i)
            rows += "<span class='row'></span>";
        return classed("div", "blank", (b.label.empty() ? "" : element("p", b.label)) + rows);
    }

    std::string operator()(const SignatureBlock &b) const
    {
        const auto line = [&](const std::string &words) {
            return classed("div", "line", "<span class='row'></span>" + element("p", words));
        };
        const Texts &texts = m_parts.texts;
        if (!b.drawn)
            return classed("section", "sign",
                           element("p", b.who) + line(texts.phrase("page_place_date")) +
                               line(texts.phrase("page_signature")));
        const std::string spoken = texts.phrase("paper_signed_on_screen");
        return classed("section", "sign",
                       element("p", b.who) + classed("div", "line", element("p", b.drawn->placeAndDate)) +
                           classed("div", "line", signatureSvg(*b.drawn, spoken) + element("p", spoken)));
    }

    std::string operator()(const PageBreakBlock &) const { return "<hr class='break'>\n"; }

private:
    [[nodiscard]] std::string figure(const PhotoPicture &picture, const char *name) const
    {
        const auto photo = m_parts.photos ? m_parts.photos(picture.photo) : std::nullopt;
        if (!photo)
            return classed("figure", name,
                           classed("p", "away", escape(m_parts.texts.phrase("page_photo_elsewhere"))) +
                               element("figcaption", picture.caption));
        const ImageSize size = sizeOf(picture.photo);
        const std::string shape =
            " style='--w:" + std::to_string(size.width) + ";--h:" + std::to_string(size.height) + "'";
        const std::string over =
            picture.drawing ? drawnSvg(*picture.drawing, size, m_parts.units) : std::string();
        return classed("figure", name,
                       "<div class='photo'" + shape + "><img alt='" + escape(picture.caption) +
                           "' src='data:" + photo->mime + ";base64," + base64(photo->bytes) + "'>" + over +
                           "</div>" + element("figcaption", picture.caption));
    }

    const PageParts &m_parts;
};

} // namespace

std::string mapSources(const PageParts &parts)
{
    std::string out;
    if (parts.coast != nullptr)
        out += " " + parts.texts.phrase("page_coast");
    if (parts.places != nullptr)
        out += " " + parts.texts.phrase("page_places");
    return out;
}

std::string drawingSpoken(const RigDrawingBlock &block, const Texts &texts)
{
    std::vector<std::string> numbers;
    numbers.reserve(block.spots.size());
    for (const RigSpot &spot : block.spots)
        numbers.push_back(std::to_string(spot.number));
    const std::string spots =
        numbers.empty() ? std::string() : texts.phrase("page_drawing_spots") + " " + join(numbers, ", ");
    return texts.phrase("page_drawing_of", {block.rig.name, spots});
}

DrawingWords drawingWords(const RigDrawingBlock &block, const Texts &texts)
{
    const bool kerbLeft = kerbIsLeft(block.rig);
    return {drawingSpoken(block, texts), [kerbLeft, &texts](Face face) {
                if (face == Face::Top)
                    return texts.phrase("from_above");
                if (face == Face::Left || face == Face::Right)
                    return texts.word("places", (face == Face::Left) == kerbLeft ? "kerb_side" : "road_side");
                return texts.word("places", slug(face));
            }};
}

std::string drawingLegend(const RigDrawingBlock &block, const Texts &texts)
{
    const std::vector<Face> faces = otherFaces(block);
    if (std::find(faces.begin(), faces.end(), Face::Underside) == faces.end())
        return {};
    std::vector<std::string> words;
    for (const outline::UsualTank &tank : outline::usualTanks(block.rig)) {
        std::string one = std::string(1, tank.letter) + " " + texts.word("tanks", slug(tank.kind));
        if (words.empty() || words.back() != one)
            words.push_back(std::move(one));
    }
    return words.empty() ? std::string() : texts.phrase("page_tanks", {join(words, ", ")});
}

std::string blockHtml(const Block &block, const PageParts &parts) { return std::visit(Writer(parts), block); }

} // namespace snugwalk::html

// SPDX-License-Identifier: Apache-2.0
// One block after another in lines.
#include "papers/plain_text.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "papers/text_lines.hpp"

namespace snugwalk::papers {
namespace {

class TextPage {
public:
    TextPage(const Texts &texts, std::size_t columns) : m_texts(texts), m_columns(columns) {}

    void operator()(const HeadingBlock &b)
    {
        const std::vector<std::string> lines = wrapped(b.text, m_columns);
        std::size_t longest = 0;
        m_underHeading = false;
        gap();
        for (const std::string &line : lines) {
            out += line + "\n";
            longest = std::max(longest, charactersIn(line));
        }
        out += b.level <= 2 ? std::string(longest, b.level == 1 ? '=' : '-') + "\n" : "";
        m_underHeading = true;
    }
    void operator()(const TextBlock &b) { lines(b.text, "", ""); }
    void operator()(const TableBlock &b)
    {
        gap();
        out += tableLines(b, m_columns);
    }
    void operator()(const FindingBlock &b)
    {
        gap();
        const std::string number = b.number > 0 ? std::to_string(b.number) + ". " : "";
        lines(b.title, number, std::string(number.size(), ' '));
        for (const std::string &line : b.lines)
            lines(line, "   - ", "     ");
    }
    void operator()(const TickBlock &b)
    {
        gap();
        for (const std::string &line : b.lines)
            lines(line, "[ ] ", "    ");
    }
    void operator()(const CautionBlock &b)
    {
        gap();
        for (const std::string &line : b.lines)
            lines(line, "|| ", "|| ");
    }
    void operator()(const PhotosBlock &b)
    {
        for (const PhotoPicture &photo : b.photos)
            lines(m_texts.phrase("paper_photo", {photo.caption}), "   ", "     ");
    }
    void operator()(const PairBlock &b)
    {
        lines(b.title, "", "");
        for (const auto &side : {b.then, b.now}) {
            if (side)
                lines(m_texts.phrase("paper_photo", {side->caption}), "   ", "     ");
        }
    }
    void operator()(const RigDrawingBlock &) {} // each finding says its place in words
    void operator()(const MapBlock &b)
    {
        lines(b.caption, "", "");
        for (const MapSpot &spot : b.spots)
            lines(spot.text, std::to_string(spot.number) + ". ", "   ");
    }
    void operator()(const PlotBlock &b)
    {
        const Plot &plot = b.plot;
        (*this)(HeadingBlock{3, plot.title});
        lines(plot.empty.empty() ? plot.about : plot.empty, "", "");
        if (!plot.rows.empty()) {
            TableBlock table{plot.head, std::vector<bool>(plot.head.size(), true), {}};
            table.numeric.front() = false;
            for (const PlotRow &row : plot.rows)
                table.rows.push_back(row.cells);
            (*this)(table);
        }
        for (const std::string &note : plot.notes)
            lines(note, "", "");
    }
    void operator()(const BlankBlock &b)
    {
        const std::string label = b.label.empty() ? "" : b.label + ": ";
        const std::vector<std::string> words = wrapped(label, m_columns - shortestBlank);
        for (std::size_t i = 0; i + 1 < words.size(); ++i)
            out += words[i] + "\n";
        const std::string last = words.back().empty() ? "" : words.back() + " ";
        out += last + blank(m_columns - charactersIn(last));
        for (int row = 1; row < b.rows; ++row)
            out += blank(m_columns);
        m_underHeading = false;
    }
    void operator()(const SignatureBlock &b)
    {
        gap();
        if (b.drawn) {
            (*this)(TextBlock{b.who + ": " + m_texts.phrase("paper_signed_on_screen") + ", " +
                                  b.drawn->placeAndDate,
                              TextTone::Plain});
            return;
        }
        (*this)(BlankBlock{b.who, 1});
        (*this)(BlankBlock{m_texts.phrase("paper_place_and_date"), 1});
    }
    void operator()(const PageBreakBlock &) { gap(); }

    // One empty line, but none under a heading.
    void gap()
    {
        if (!m_underHeading && !out.empty() && !out.ends_with("\n\n"))
            out += "\n";
        m_underHeading = false;
    }

    void lines(const std::string &text, const std::string &first, const std::string &rest)
    {
        std::string before = first;
        for (const std::string_view paragraph : split(text, '\n')) {
            for (const std::string &line : wrapped(paragraph, m_columns - charactersIn(rest))) {
                out += before + line + "\n";
                before = rest;
            }
        }
        m_underHeading = false;
    }

    std::string out;

private:
    static constexpr std::size_t shortestBlank = 12;
    static std::string blank(std::size_t width) { return std::string(width, '_') + "\n"; }

    const Texts &m_texts;
    std::size_t m_columns;
    bool m_underHeading = false;
};

} // namespace

std::string plainText(const Document &document, const Texts &texts, std::size_t columns)
{
    TextPage page(texts, columns);
    page(HeadingBlock{1, document.title});
    page.lines(document.subtitle, "", "");
    page.out += "\n";
    for (const Block &block : document.blocks)
        std::visit(page, block);
    page.gap();
    page.lines(document.footer, "", "");
    return std::move(page.out);
}

} // namespace snugwalk::papers

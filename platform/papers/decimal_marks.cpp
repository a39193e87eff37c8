// SPDX-License-Identifier: Apache-2.0
// Points before a unit become commas.
#include "papers/decimal_marks.hpp"

namespace snugwalk::papers {
namespace {

constexpr std::string_view noBreakSpace = "\u00a0";

bool isDigit(char letter) { return letter >= '0' && letter <= '9'; }

// Whether the point at `at` stands within one number that a unit follows.
bool isBeforeUnit(std::string_view text, std::size_t at)
{
    std::size_t first = at;
    while (first > 0 && isDigit(text[first - 1]))
        --first;
    std::size_t end = at + 1;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    const bool isLone = first == 0 || (text[first - 1] != '.' && text[first - 1] != ':');
    return first < at && end > at + 1 && isLone && text.substr(end, noBreakSpace.size()) == noBreakSpace;
}

class Marker {
public:
    explicit Marker(std::string_view language) : m_language(language) {}

    void mark(std::string &text) const { text = withDecimalMark(std::move(text), m_language); }
    void mark(std::vector<std::string> &texts) const
    {
        for (std::string &text : texts)
            mark(text);
    }

    void operator()(HeadingBlock &block) const { mark(block.text); }
    void operator()(TextBlock &block) const { mark(block.text); }
    void operator()(TableBlock &block) const
    {
        for (std::vector<std::string> &row : block.rows)
            mark(row);
    }
    void operator()(FindingBlock &block) const
    {
        mark(block.title);
        mark(block.lines);
    }
    void operator()(TickBlock &block) const { mark(block.lines); }
    void operator()(CautionBlock &block) const { mark(block.lines); }
    void operator()(PhotosBlock &block) const
    {
        for (PhotoPicture &one : block.photos)
            mark(one.caption);
    }
    void operator()(PairBlock &block) const
    {
        mark(block.title);
        for (std::optional<PhotoPicture> *one : {&block.then, &block.now}) {
            if (*one)
                mark((*one)->caption);
        }
    }
    void operator()(RigDrawingBlock &block) const { mark(block.caption); }
    void operator()(MapBlock &block) const
    {
        mark(block.caption);
        for (MapSpot &spot : block.spots)
            mark(spot.text);
    }
    void operator()(PlotBlock &) const {} // speaks its language already
    void operator()(BlankBlock &block) const { mark(block.label); }
    void operator()(SignatureBlock &) const {}
    void operator()(PageBreakBlock &) const {}

private:
    std::string_view m_language;
};

} // namespace

std::string withDecimalMark(std::string text, std::string_view language)
{
    if (language == "en")
        return text;
    for (std::size_t at = text.find('.'); at != std::string::npos; at = text.find('.', at + 1)) {
        if (isBeforeUnit(text, at))
            text[at] = ',';
    }
    return text;
}

void putDecimalMarks(Document &document)
{
    const std::string language = document.language;
    const Marker marker(language);
    marker.mark(document.subtitle);
    for (Block &block : document.blocks)
        std::visit(marker, block);
}

} // namespace snugwalk::papers

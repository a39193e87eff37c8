// SPDX-License-Identifier: Apache-2.0
// Shape words first, then one or two sizes.
#include "bench/joints/bead_text.hpp"

#include <array>
#include <string>
#include <vector>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {
namespace {

struct ShapeWord {
    std::string_view word;
    BeadShape shape;
};
// longer words first: "half round" holds "round"
constexpr auto shapeWords = std::to_array<ShapeWord>({
    {"half ellipse", BeadShape::HalfEllipse},
    {"half_ellipse", BeadShape::HalfEllipse},
    {"half round", BeadShape::HalfRound},
    {"half_round", BeadShape::HalfRound},
    {"half-round", BeadShape::HalfRound},
    {"rectangle", BeadShape::Rectangle},
    {"triangle", BeadShape::Fillet},
    {"square", BeadShape::Rectangle},
    {"fillet", BeadShape::Fillet},
    {"round", BeadShape::Round},
    {"flat", BeadShape::Rectangle},
    {"lap", BeadShape::Rectangle},
});

Error notABead(std::string_view text)
{
    return {Errc::InvalidInput, "not a bead: \"" + std::string(text.substr(0, 40)) + "\"", "bead",
            "write its size with a unit and its shape, such as \"1/4 in round\", \"3/8 in fillet\", \"6 x 3 "
            "mm\""};
}

std::optional<BeadShape> takeShape(std::string &text)
{
    for (const ShapeWord &known : shapeWords) {
        const auto at = text.find(known.word);
        if (at != std::string::npos) {
            text.erase(at, known.word.size());
            return known.shape;
        }
    }
    return std::nullopt;
}

} // namespace

Result<Bead> parseBead(std::string_view typed, std::string_view shapeWord)
{
    if (typed.size() > 80)
        return notABead(typed);
    std::string text = replaceAll(lowerAscii(typed), "×", "x");
    std::optional<BeadShape> shape = takeShape(text);
    if (!shape && !shapeWord.empty()) {
        std::string word = lowerAscii(shapeWord);
        shape = takeShape(word);
        if (!shape)
            return notABead(shapeWord);
    }
    const std::vector<std::string_view> parts = split(text, 'x');
    if (parts.size() > 2)
        return notABead(typed);
    const auto unit = unitWritten(Dimension::Length, trim(parts.back()));
    Length sizes[2];
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto si = parseSi(Dimension::Length, trim(parts[i]), unit);
        if (!si)
            return notABead(typed);
        sizes[i] = Length::fromSi(*si);
    }
    Bead bead;
    bead.shape = shape.value_or(parts.size() == 2 ? BeadShape::Rectangle : BeadShape::Round);
    bead.width = sizes[0];
    bead.height = parts.size() == 2 ? sizes[1] : sizes[0];
    if (const auto area = beadArea(bead.shape, bead.width, bead.height); !area)
        return Error{area.error().code, area.error().what, "bead", area.error().act};
    return bead;
}

} // namespace snugwalk

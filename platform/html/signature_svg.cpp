// SPDX-License-Identifier: Apache-2.0
// One polyline a stroke; a stroke of one spot is a dot, which round caps draw.
#include "html/signature_svg.hpp"

#include "base/text.hpp"
#include "html/html_text.hpp"

namespace snugwalk::html {
namespace {

constexpr double across = 1000.0; // user units of the line's width
constexpr int decimals = 1;

std::string pathOf(const std::vector<Signature::Spot> &line)
{
    std::string out;
    for (const Signature::Spot &spot : line)
        out += (out.empty() ? "M" : "L") + fixed(spot.across * across, decimals) + " " +
               fixed(spot.down * across, decimals);
    return line.size() == 1 ? out + "h0.1" : out;
}

} // namespace

std::string signatureSvg(const Signature &signature, const std::string &spoken)
{
    std::string out = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 " + fixed(across, 0) + " " +
                      fixed(across * signatureHeight, 0) + "' role='img' aria-label='" + escape(spoken) +
                      "' fill='none' stroke='#1B1F23' stroke-width='7' stroke-linecap='round' "
                      "stroke-linejoin='round'>";
    for (const std::vector<Signature::Spot> &line : signature.lines)
        out += "<path d='" + pathOf(line) + "'/>";
    return out + "</svg>\n";
}

} // namespace snugwalk::html

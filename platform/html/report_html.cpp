// SPDX-License-Identifier: Apache-2.0
// The page around the report's parts.
#include "html/report_html.hpp"

#include "base/text.hpp"
#include "html/drawing_svg.hpp"
#include "html/html_text.hpp"
#include "html/report_sections.hpp"

namespace snugwalk::html {
namespace {

constexpr const char *style =
    "body{font:17px/1.5 'Atkinson Hyperlegible Next',system-ui,sans-serif;color:#1B1F23;background:#fff;"
    "max-width:56rem;margin:2rem auto;padding:0 "
    "1rem}h1{font-size:1.8rem;margin:0}h2{font-size:1.25rem;margin:2rem 0 .5rem;"
    "border-top:2px solid #1B1F23;padding-top:.5rem}.quiet{color:#555}.state{font-size:1.15rem;margin:1rem 0}"
    "table{border-collapse:collapse;width:100%}td{padding:.35rem .6rem .35rem "
    "0;vertical-align:top;border-bottom:1px solid #C8CCD0}"
    "td.no{font-family:'B612 Mono',monospace;width:2rem}figure{display:inline-block;margin:.5rem 1rem .5rem "
    "0;max-width:47%}"
    "figure "
    "img{max-width:100%;height:auto;display:block}figcaption{font-size:.9rem;color:#555}svg{max-width:100%;"
    "height:auto}td svg{max-width:none;display:block}"
    ".photo{position:relative;display:inline-block}.photo "
    "svg{position:absolute;inset:0;width:100%;height:100%}"
    ".caution{border:2px solid #E69F00;padding:.6rem 1rem;margin:1rem 0}.caution p{margin:.3rem 0}"
    "@media print{body{margin:0;max-width:none}h2{break-after:avoid}tr,figure{break-inside:avoid}}";

std::string cautions(const PageContext &c)
{
    if (c.report.cautions.empty())
        return {};
    std::string out = element("h2", c.texts.phrase("cautions")) + "<section class='caution'>\n";
    for (const std::string &code : c.report.cautions)
        out += element("p", c.texts.cautionFull(code));
    return out + "</section>\n";
}

} // namespace

std::string reportPage(const Report &report, const Texts &texts, const Thumbnails &thumbnails,
                       const PageOptions &options)
{
    const PageContext c{report, texts, thumbnails, options};
    const Rig &rig = report.standing.history.rig;
    std::string out = "<!doctype html>\n<html lang='" + options.language + "'><head><meta charset='utf-8'>" +
                      "<meta name='viewport' content='width=device-width, initial-scale=1'><title>" +
                      escape(rig.name) + "</title><style>" + style + "</style></head><body>\n";
    out += element("h1", rig.name);
    out += "<p class='quiet'>" + escape(formatLocalShort(report.standing.now)) + "</p>\n";
    out += stateSection(c);
    out += drawingSvg(rig, report.findings, texts.phrase("kerb_side"), texts.phrase("from_above"));
    out += findingsSection(c) + cautions(c) + changesSection(c) + dueSection(c) + walkSection(c);
    const std::string who = report.standing.state.by.empty() ? "?" : report.standing.state.by;
    out += "<footer class='quiet'><p>" + escape(replaceAll(texts.text("report_footer"), "{who}", who)) +
           "</p></footer>\n</body></html>\n";
    return out;
}

} // namespace snugwalk::html

// SPDX-License-Identifier: Apache-2.0
// The page around the blocks.
#include "html/document_html.hpp"

#include "base/text.hpp"
#include "html/html_text.hpp"
#include "html/page_style.hpp"

namespace snugwalk::html {
namespace {

// Nothing but what is in the page itself.
constexpr const char *policy =
    "default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'unsafe-inline'; base-uri "
    "'none'; form-action 'none'";

// A CSS string that cannot end its style element either.
std::string cssString(std::string_view text)
{
    std::string out = "\"";
    for (const char c : text) {
        const bool isPlain =
            c != '"' && c != '\\' && c != '<' && c != '&' && static_cast<unsigned char>(c) >= ' ';
        out += isPlain ? std::string(1, c) : "\\" + toHex(std::string(1, c)) + " ";
    }
    return out + "\"";
}

// "page %1 of %2" with the browser's counters.
std::string pageCount(const Texts &texts)
{
    const std::string words = texts.phrase("page_of", {"\x01", "\x02"});
    const std::size_t first = words.find('\x01');
    const std::size_t second = words.find('\x02');
    if (first == std::string::npos || second == std::string::npos || second < first)
        return "counter(page)";
    return cssString(words.substr(0, first)) + " counter(page) " +
           cssString(words.substr(first + 1, second - first - 1)) + " counter(pages) " +
           cssString(words.substr(second + 1));
}

std::string paper(const Document &document, const Texts &texts)
{
    const std::string words = "font:8pt/1.3 'Atkinson Hyperlegible Next',system-ui,sans-serif;color:#565B60;"
                              "vertical-align:top;padding-top:3mm;";
    return "@page{margin:16mm 16mm 24mm;@bottom-left{" + words +
           "width:80%;text-align:start;content:" + cssString(document.footer) + "}@bottom-right{" + words +
           "width:20%;text-align:end;content:" + pageCount(texts) + "}}";
}

} // namespace

std::string documentPage(const Document &document, const PageParts &parts)
{
    std::string out = "<!doctype html>\n<html lang='" + escape(document.language) +
                      "'><head><meta charset='utf-8'>"
                      "<meta http-equiv='Content-Security-Policy' content=\"" +
                      std::string(policy) +
                      "\"><meta name='viewport' content='width=device-width, initial-scale=1'>"
                      "<link rel='icon' href='data:,'><title>" +
                      escape(document.title + (document.subtitle.empty() ? "" : ", " + document.subtitle)) +
                      "</title><style>" + pageStyle + paper(document, parts.texts) +
                      "</style></head><body>\n";
    out += "<header>" + element("h1", document.title);
    if (!document.subtitle.empty())
        out += "<p class='quiet'>" + escape(document.subtitle) + "</p>\n";
    out += "</header>\n<main>\n";
    for (const Block &block : document.blocks)
        out += blockHtml(block, parts);
    return out + "</main>\n<footer><p>" + escape(document.footer) + "</p></footer>\n<script>" + pageScript +
           "</script></body></html>\n";
}

} // namespace snugwalk::html

// SPDX-License-Identifier: Apache-2.0
// Escaping, and base64 as in RFC 4648 section 4.
#include "html/html_text.hpp"

namespace snugwalk::html {

std::string escape(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

std::string element(std::string_view tag, std::string_view text)
{
    const std::string name(tag);
    return "<" + name + ">" + escape(text) + "</" + name + ">\n";
}

std::string base64(std::string_view bytes)
{
    constexpr std::string_view digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        unsigned block = 0;
        for (std::size_t j = 0; j < 3; ++j)
            block = block << 8 | (i + j < bytes.size() ? static_cast<unsigned char>(bytes[i + j]) : 0U);
        for (std::size_t j = 0; j < 4; ++j)
            out += i + j <= bytes.size() ? digits[block >> (18 - 6 * j) & 63U] : '=';
    }
    return out;
}

} // namespace snugwalk::html

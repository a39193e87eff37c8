// SPDX-License-Identifier: Apache-2.0
// Simple damage; depth comes from the corpus.
#include "mutations.hpp"

#include <algorithm>

namespace {

constexpr std::size_t maxSize = 8192;

std::size_t below(std::mt19937 &rng, std::size_t limit) { return limit == 0 ? 0 : rng() % limit; }

std::string piece(const std::string &text, std::mt19937 &rng)
{
    const std::size_t from = below(rng, text.size());
    return text.substr(from, 1 + below(rng, 64));
}

void change(std::string &text, const std::string &other, std::mt19937 &rng)
{
    static const std::string odd = std::string("\0\xff\x80\n\r\"'<>&;$*,.-+0189{}[]:/ \xc2\xb5", 30);
    const std::size_t at = below(rng, text.size());
    switch (rng() % 8) {
    case 0:
        if (!text.empty())
            text[at] = static_cast<char>(static_cast<unsigned char>(text[at]) ^ (1U << (rng() % 8)));
        break;
    case 1:
        if (!text.empty())
            text[at] = odd[below(rng, odd.size())];
        break;
    case 2:
        text.insert(at, 1, odd[below(rng, odd.size())]);
        break;
    case 3:
        text.erase(at, 1 + below(rng, 16));
        break;
    case 4:
        text.insert(at, piece(text, rng));
        break;
    case 5:
        text.insert(at, piece(other, rng));
        break;
    case 6:
        if (rng() % 4 == 0)
            text.resize(at);
        break;
    default: // a digit for a digit keeps the form and changes the meaning
        if (!text.empty() && text[at] >= '0' && text[at] <= '9')
            text[at] = static_cast<char>('0' + rng() % 10);
    }
}

} // namespace

std::string mutate(const std::vector<std::string> &corpus, std::mt19937 &rng)
{
    std::string text = corpus[below(rng, corpus.size())];
    const std::size_t changes = 1 + below(rng, 8);
    for (std::size_t i = 0; i < changes; ++i)
        change(text, corpus[below(rng, corpus.size())], rng);
    text.resize(std::min(text.size(), maxSize));
    return text;
}

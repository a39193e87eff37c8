// SPDX-License-Identifier: Apache-2.0
// Eleven bits a word.
#include "sync/words.hpp"

#include <vector>

#include "base/contract.hpp"
#include "base/text.hpp"
#include "keys/hash.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view consonants = "bdfghjklmnprstvz";
constexpr std::string_view vowels = "aiou";
constexpr std::size_t maxBytes = 1024;
constexpr unsigned dataBits = 11;

unsigned checkOf(std::size_t place, unsigned data)
{
    const std::string text = "snugwalk word " + std::to_string(place) + " " + std::to_string(data);
    return blake2b(text).bytes[0] & 31U;
}

std::string wordOf(unsigned bits)
{
    return {consonants[bits >> 12U & 15U], vowels[bits >> 10U & 3U], consonants[bits >> 6U & 15U],
            vowels[bits >> 4U & 3U], consonants[bits & 15U]};
}

std::optional<unsigned> bitsOf(std::string_view word)
{
    if (word.size() != 5)
        return std::nullopt;
    unsigned bits = 0;
    for (std::size_t i = 0; i < word.size(); ++i) {
        const std::size_t at = (i % 2 == 0 ? consonants : vowels).find(word[i]);
        if (at == std::string_view::npos)
            return std::nullopt;
        bits = bits << (i % 2 == 0 ? 4U : 2U) | static_cast<unsigned>(at);
    }
    return bits;
}

char checkByte(std::string_view bytes) { return static_cast<char>(blake2b(bytes).bytes[0]); }

std::vector<std::string> wordsIn(std::string_view text)
{
    std::vector<std::string> words(1);
    for (const char c : lowerAscii(text)) {
        if (c >= 'a' && c <= 'z')
            words.back() += c;
        else if (!words.back().empty())
            words.emplace_back();
    }
    if (words.back().empty())
        words.pop_back();
    return words;
}

// The last word may have room for one more byte. Filled with zeros it reads as a longer row whose check byte
// is zero; where that would agree, the first bit of the filling is set.
bool fillingStarts(std::string_view whole) { return checkByte(whole) == '\0'; }

// The first `size` bytes of a row of bits; nothing unless the filling and the check byte agree.
std::optional<std::string> taken(const std::vector<bool> &bits, std::size_t size)
{
    std::string bytes(size + 1, '\0');
    const std::size_t filled = bytes.size() * 8;
    for (std::size_t i = 0; i < filled; ++i) {
        if (bits[i])
            bytes[i / 8] = static_cast<char>(static_cast<unsigned char>(bytes[i / 8]) | 0x80U >> i % 8);
    }
    for (std::size_t i = filled; i < bits.size(); ++i) {
        const bool isSet = i == filled && bits.size() - filled >= 8 && fillingStarts(bytes);
        if (bits[i] != isSet)
            return std::nullopt;
    }
    const char check = bytes.back();
    bytes.pop_back();
    return check == checkByte(bytes) ? std::optional(bytes) : std::nullopt;
}

} // namespace

std::string wordsFrom(std::string_view bytes)
{
    SNUG_ASSERT(bytes.size() <= maxBytes);
    const std::string whole = std::string(bytes) + checkByte(bytes);
    const std::size_t filled = whole.size() * 8;
    const bool hasRoom = (dataBits - filled % dataBits) % dataBits >= 8;
    const auto bitAt = [&](std::size_t i) -> unsigned {
        if (i >= filled)
            return i == filled && hasRoom && fillingStarts(whole) ? 1 : 0;
        return static_cast<unsigned char>(whole[i / 8]) >> (7 - i % 8) & 1U;
    };
    std::vector<std::string> words;
    for (std::size_t at = 0; at < whole.size() * 8; at += dataBits) {
        unsigned data = 0;
        for (unsigned i = 0; i < dataBits; ++i)
            data = data << 1U | bitAt(at + i);
        words.push_back(wordOf(data << 5U | checkOf(words.size(), data)));
    }
    return join(words, " ");
}

Result<std::string> bytesFromWords(std::string_view text)
{
    const std::vector<std::string> words = wordsIn(text);
    if (words.empty() || words.size() > maxBytes)
        return Error{Errc::InvalidInput, "these are no words of ours", "", "type all the words as printed"};
    std::vector<bool> bits;
    for (std::size_t place = 0; place < words.size(); ++place) {
        const auto word = bitsOf(words[place]);
        if (!word || (*word & 31U) != checkOf(place, *word >> 5U))
            return Error{Errc::InvalidInput, "a word is not as printed",
                         "word " + std::to_string(place + 1) + ", " + words[place],
                         "look at this word again"};
        for (unsigned i = dataBits; i-- > 0;)
            bits.push_back((*word >> (5 + i) & 1U) != 0);
    }
    const std::size_t most = bits.size() / 8;
    for (std::size_t size = most; size > 0 && size + 2 > most; --size) {
        if (auto bytes = taken(bits, size - 1))
            return *bytes;
    }
    return Error{Errc::InvalidInput, "words are missing or from two sets",
                 std::to_string(words.size()) + " words", "type all the words as printed"};
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// A bundle is read in one way only; every flipped bit and every cut is refused.
#include <doctest/doctest.h>

#include "sync/bundle_format.hpp"

using namespace snugwalk;

namespace {

BundleFiles sample()
{
    using namespace std::string_literals;
    return {{"snugwalk1/a/000001.seg", "first\0segment"s}, {"snugwalk1/a/000002.seg", ""}, {"z", "last"}};
}

// An index written by hand around contents, as a stranger would.
std::string withIndex(const std::string &contents, const std::string &index)
{
    std::string length(8, '\0');
    for (std::size_t i = 0; i < 8; ++i)
        length[7 - i] = static_cast<char>(index.size() >> (8 * i) & 0xFF);
    return std::string(bundleHead) + contents + index + std::string(blake2b(index).view()) + length +
           std::string(bundleTail);
}

std::string line(const std::string &bytes, const std::string &name)
{
    return blake2b(bytes).text() + " " + std::to_string(bytes.size()) + " " + name + "\n";
}

} // namespace

TEST_CASE("files come back as they were, from none to several")
{
    for (const BundleFiles &files : {BundleFiles{}, BundleFiles{{"a", "b"}}, sample()}) {
        const std::string bytes = bundleBytes(files);
        const auto back = readBundle(bytes);
        REQUIRE(back);
        CHECK(*back == files);
        CHECK(bundleBytes(*back) == bytes);
    }
    CHECK(bundleBytes({{"a", "b"}}) == withIndex("b", line("b", "a")));
}

TEST_CASE("any bit flipped, any cut, anything added")
{
    const std::string whole = bundleBytes(sample());
    int taken = 0;
    for (std::size_t bit = 0; bit < whole.size() * 8; ++bit) {
        std::string bytes = whole;
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << bit % 8));
        taken += readBundle(bytes) ? 1 : 0;
    }
    for (std::size_t length = 0; length < whole.size(); ++length)
        taken += readBundle(std::string_view(whole).substr(0, length)) ? 1 : 0;
    taken += readBundle(whole + "x") ? 1 : 0;
    taken += readBundle("x" + whole) ? 1 : 0;
    MESSAGE(whole.size() * 8, " flips and ", whole.size(), " cuts: ", taken, " taken");
    CHECK(taken == 0);
}

TEST_CASE("an index that a stranger wrote")
{
    REQUIRE(readBundle(withIndex("bb", line("b", "a") + line("b", "b"))));
    for (const std::string &index :
         {line("b", "b") + line("b", "a"), line("b", "a") + line("b", "a"), line("b", "../a"),
          line("b", "/a"), line("b", "a/../b"), line("b", "A"), line("b", "a b"), line("b", ""),
          line("b", "a/"), line("b", "c:a"), line("b", std::string(101, 'a')),
          blake2b("b").text() + " 01 a\n", blake2b("b").text() + " -1 a\n", blake2b("b").text() + " 1  a\n",
          blake2b("b").text() + " 2 a\n", blake2b("b").text() + " 1 a", std::string("\n"), std::string("x\n"),
          line("b", std::string("a\0b", 3))}) {
        CAPTURE(index);
        const auto answer = readBundle(withIndex("b", index));
        REQUIRE_FALSE(answer);
        CHECK(answer.error().code == Errc::Corrupt);
    }
    CHECK(readBundle(withIndex("", blake2b("").text() + " 67108865 a\n")).error().code == Errc::OutOfRange);
    std::string far = bundleBytes({});
    far[far.size() - 13] = '\x7F'; // a length of the index beyond any limit
    CHECK(readBundle(far).error().code == Errc::OutOfRange);
}

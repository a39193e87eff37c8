// SPDX-License-Identifier: Apache-2.0
// BLAKE2b of known messages. [RFC7693] appendix A prints "abc" with 64 bytes of output only; the
// digests of 32 bytes are those that implementations publish as their known answers (BLAKE2b-256).
// tests/unit/keys/tst_hash.cpp checks the same function against b2sum, byte for byte.
#include <doctest/doctest.h>

#include "keys/hash.hpp"

using namespace snugwalk;

TEST_CASE("BLAKE2b-256 of nothing, of abc and of the pangram")
{
    CHECK(blake2b("").text() == "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
    CHECK(blake2b("abc").text() == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
    CHECK(blake2b("The quick brown fox jumps over the lazy dog").text() ==
          "01718cec35cd3d796dd00020e0bfecb473ad23457d063b75eff29c0ffa2e58a9");
}

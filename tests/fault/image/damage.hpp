// SPDX-License-Identifier: Apache-2.0
// What the fault tests share: refusals that leave the folder as it was.
#pragma once

#include <doctest/doctest.h>

#include "image/plain_codec.hpp"
#include "logbook/photo_store.hpp"
#include "pictures.hpp"

namespace snugwalk::test {

/// Adds, wants `code`, and wants no file or folder to be left.
inline Error refused(std::string_view photo, Errc code)
{
    const ScratchFolder scratch;
    PhotoStore store(scratch.path());
    const auto added = store.add(photo, PlainCodec());
    REQUIRE_FALSE(added);
    CHECK(added.error().code == code);
    CHECK_FALSE(added.error().what.empty());
    CHECK_FALSE(added.error().act.empty());
    CHECK(scratch.content().empty());
    return added.error();
}

} // namespace snugwalk::test

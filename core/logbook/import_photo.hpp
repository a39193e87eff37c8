// SPDX-License-Identifier: Apache-2.0
// A photo's way into the logbook: bytes to the folder first, then the entry that names them.
#pragma once

#include <string>
#include <string_view>

#include "logbook/acts.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {

/// What a photo shows; both ids may be null.
struct PhotoOf {
    Id rig;
    Id finding;
    Id look;
    std::string caption;
};

/// Keeps the bytes as they are, reads time and position from them, makes the thumbnail, enters it.
/// A photo without a position of its own takes the doer's. \returns the errors of `PhotoStore::add`
/// and of `addPhoto`; a refused photo leaves nothing behind.
[[nodiscard]] Result<Photo> importPhoto(Logbook &book, std::string_view bytes, const ImageCodec &codec,
                                        const PhotoOf &of, const Doer &doer);

/// The same from a file of at most 64 MiB.
[[nodiscard]] Result<Photo> importPhotoFile(Logbook &book, const std::string &file, const ImageCodec &codec,
                                            const PhotoOf &of, const Doer &doer);

/// The latest look at a finding: what a photo added later belongs to. `NotFound` without one.
[[nodiscard]] Result<Id> latestLook(Logbook &book, const Id &finding);

} // namespace snugwalk

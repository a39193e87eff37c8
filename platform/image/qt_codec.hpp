// SPDX-License-Identifier: Apache-2.0
// The app's picture codec: what the Qt of the phone can decode anyway.
#pragma once

#include "logbook/image_codec.hpp"

namespace snugwalk {

/// Behaves as `PlainCodec` does, but Qt fills flipped bits inside a JPEG with grey where libjpeg would
/// have told us; `readPhotoFacts` finds what is cut short for both.
class QtCodec final : public ImageCodec {
public:
    [[nodiscard]] Result<ImageSize> probe(std::string_view bytes) const override;
    [[nodiscard]] Result<std::string> thumbnail(std::string_view bytes, int orientation,
                                                int maxEdge) const override;
    /// The same with the most bytes it may have: the quality goes down until they suffice.
    [[nodiscard]] static Result<std::string> shrunk(std::string_view bytes, int orientation, int maxEdge,
                                                    std::size_t maxBytes);
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The command line's picture codec: libjpeg-turbo and libpng, no Qt.
#pragma once

#include "logbook/image_codec.hpp"

namespace snugwalk {

/// Has no state; one may serve several threads. Needs up to 512 MiB for a photo at the limit.
class PlainCodec final : public ImageCodec {
public:
    [[nodiscard]] Result<ImageSize> probe(std::string_view bytes) const override;
    [[nodiscard]] Result<std::string> thumbnail(std::string_view bytes, int orientation,
                                                int maxEdge) const override;
    /// The same with the most bytes it may have: the quality goes down until they suffice.
    [[nodiscard]] static Result<std::string> shrunk(std::string_view bytes, int orientation, int maxEdge,
                                                    std::size_t maxBytes);
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Picks the decoder by the first byte; a wrong guess is that decoder's error.
#include "image/plain_codec.hpp"

#include "base/contract.hpp"
#include "image/jpeg_decode.hpp"
#include "image/jpeg_encode.hpp"
#include "image/png_decode.hpp"

namespace snugwalk {
namespace {

bool looksLikePng(std::string_view bytes) { return bytes.starts_with("\x89PNG"); }

} // namespace

Result<ImageSize> PlainCodec::probe(std::string_view bytes) const
{
    return looksLikePng(bytes) ? probePng(bytes) : probeJpeg(bytes);
}

Result<std::string> PlainCodec::thumbnail(std::string_view bytes, int orientation, int maxEdge) const
{
    return shrunk(bytes, orientation, maxEdge, maxThumbnailBytes);
}

Result<std::string> PlainCodec::shrunk(std::string_view bytes, int orientation, int maxEdge,
                                       std::size_t maxBytes)
{
    SNUG_ASSERT(maxEdge >= 1);
    const auto small = looksLikePng(bytes) ? shrinkPng(bytes, maxEdge) : shrinkJpeg(bytes, maxEdge);
    if (!small)
        return small.error();
    return encodeJpeg(turnedUpright(*small, orientation), maxBytes);
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// The size is looked at first, and the buffer is never larger than it says.
#include "sync/squeeze.hpp"

#include <memory>
#include <zstd.h>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr int level = 3;
constexpr int windowLog = 23; // 8 MiB

struct FreeContext {
    void operator()(ZSTD_DCtx *context) const { ZSTD_freeDCtx(context); }
};

} // namespace

std::string squeeze(std::string_view plain)
{
    std::string out(ZSTD_compressBound(plain.size()), '\0');
    const std::size_t size = ZSTD_compress(out.data(), out.size(), plain.data(), plain.size(), level);
    SNUG_ASSERT(ZSTD_isError(size) == 0); // the bound is enough by its own promise
    out.resize(size);
    return out;
}

Result<std::string> unsqueeze(std::string_view squeezed, std::size_t limit)
{
    const Error broken{Errc::Corrupt, "compressed bytes that cannot be read", "", ""};
    const unsigned long long told = ZSTD_getFrameContentSize(squeezed.data(), squeezed.size());
    if (told == ZSTD_CONTENTSIZE_ERROR || told == ZSTD_CONTENTSIZE_UNKNOWN)
        return broken;
    if (told > limit)
        return Error{Errc::OutOfRange, "compressed bytes that would grow beyond the limit",
                     std::to_string(told) + " bytes", ""};
    if (ZSTD_findFrameCompressedSize(squeezed.data(), squeezed.size()) != squeezed.size())
        return broken;
    const std::unique_ptr<ZSTD_DCtx, FreeContext> context(ZSTD_createDCtx());
    SNUG_ASSERT(context != nullptr);
    ZSTD_DCtx_setParameter(context.get(), ZSTD_d_windowLogMax, windowLog);
    std::string plain(static_cast<std::size_t>(told), '\0');
    const std::size_t size =
        ZSTD_decompressDCtx(context.get(), plain.data(), plain.size(), squeezed.data(), squeezed.size());
    if (ZSTD_isError(size) != 0 || size != plain.size())
        return broken;
    return plain;
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Area average: an output pixel is the mean of the part of the picture that it covers.
#include "image/box_scaler.hpp"

#include <algorithm>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t channels = 3;

std::size_t count(int side) { return static_cast<std::size_t>(side); }

} // namespace

BoxScaler::BoxScaler(ImageSize from, ImageSize to)
    : m_from(from), m_to(to), m_row(count(to.width) * channels), m_sums(count(to.width) * channels)
{
    SNUG_ASSERT(to.width >= 1 && to.height >= 1 && to.width <= from.width && to.height <= from.height);
    m_rgb.reserve(count(to.width) * count(to.height) * channels);
}

// Lengths in units of 1/to.width of a pixel: an input pixel is to.width long, an output one from.width.
void BoxScaler::squeeze(const std::uint8_t *rgb)
{
    std::fill(m_row.begin(), m_row.end(), 0U);
    const auto inLength = static_cast<std::uint32_t>(m_to.width);
    const auto outLength = static_cast<std::uint32_t>(m_from.width);
    std::uint32_t room = outLength; // left in the output pixel at hand
    std::size_t out = 0;
    for (int x = 0; x < m_from.width; ++x, rgb += channels) {
        const std::uint32_t here = std::min(inLength, room);
        const std::uint32_t beyond = inLength - here;
        for (std::size_t c = 0; c < channels; ++c)
            m_row[out + c] += here * rgb[c];
        room -= here;
        if (room > 0)
            continue;
        out += channels;
        room = outLength - beyond;
        for (std::size_t c = 0; beyond > 0 && c < channels; ++c)
            m_row[out + c] += beyond * rgb[c];
    }
}

void BoxScaler::pour(std::size_t outRow, std::uint64_t weight)
{
    SNUG_ASSERT(outRow == m_outRow);
    for (std::size_t i = 0; i < m_sums.size(); ++i)
        m_sums[i] += weight * m_row[i];
}

void BoxScaler::finishRow()
{
    const std::uint64_t area =
        static_cast<std::uint64_t>(m_from.width) * static_cast<std::uint64_t>(m_from.height);
    for (std::uint64_t &sum : m_sums) {
        m_rgb.push_back(static_cast<std::uint8_t>((sum + area / 2) / area));
        sum = 0;
    }
    ++m_outRow;
}

void BoxScaler::addRow(const std::uint8_t *rgb)
{
    squeeze(rgb);
    const auto inLength = static_cast<std::uint64_t>(m_to.height);
    const auto outLength = static_cast<std::uint64_t>(m_from.height);
    const std::uint64_t start = m_rowsIn * inLength;
    const std::uint64_t end = start + inLength;
    const std::uint64_t border = (m_outRow + 1) * outLength;
    pour(m_outRow, std::min(end, border) - start);
    ++m_rowsIn;
    if (end < border)
        return;
    finishRow();
    if (end > border)
        pour(m_outRow, end - border);
}

Pixels BoxScaler::take()
{
    SNUG_ASSERT(m_outRow == count(m_to.height));
    return {m_to, std::move(m_rgb)};
}

Pixels turnedUpright(const Pixels &stored, int orientation)
{
    const int w = stored.size.width;
    const int h = stored.size.height;
    const auto source = [&](int x, int y) -> std::pair<int, int> {
        switch (orientation) {
        case 2:
            return {w - 1 - x, y};
        case 3:
            return {w - 1 - x, h - 1 - y};
        case 4:
            return {x, h - 1 - y};
        case 5:
            return {y, x};
        case 6:
            return {y, h - 1 - x};
        case 7:
            return {w - 1 - y, h - 1 - x};
        case 8:
            return {w - 1 - y, x};
        default:
            return {x, y};
        }
    };
    Pixels turned{upright(stored.size, orientation), {}};
    turned.rgb.reserve(stored.rgb.size());
    for (int y = 0; y < turned.size.height; ++y) {
        for (int x = 0; x < turned.size.width; ++x) {
            const auto [sx, sy] = source(x, y);
            const auto at = static_cast<std::ptrdiff_t>((count(sy) * count(w) + count(sx)) * channels);
            turned.rgb.insert(turned.rgb.end(), stored.rgb.begin() + at, stored.rgb.begin() + at + 3);
        }
    }
    return turned;
}

} // namespace snugwalk

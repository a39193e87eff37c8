// SPDX-License-Identifier: Apache-2.0
// Makes a picture smaller by exact area average, row by row, so that the large one is never held whole.
#pragma once

#include <cstdint>
#include <vector>

#include "logbook/image_codec.hpp"

namespace snugwalk {

/// 8-bit RGB, rows without padding.
struct Pixels {
    ImageSize size;
    std::vector<std::uint8_t> rgb;
};

/// Integers only: the same bytes come out on every processor.
class BoxScaler {
public:
    /// \param from, to both at least 1 x 1; no side of `to` is longer than that of `from`.
    BoxScaler(ImageSize from, ImageSize to);

    /// Takes the next row, `from.width` pixels of RGB, of `from.height` in all.
    void addRow(const std::uint8_t *rgb);
    /// The picture, once every row has been added.
    [[nodiscard]] Pixels take();

private:
    void squeeze(const std::uint8_t *rgb);
    void pour(std::size_t outRow, std::uint64_t weight);
    void finishRow();

    ImageSize m_from;
    ImageSize m_to;
    std::vector<std::uint32_t> m_row;  // the row at hand, squeezed; weights add up to from.width
    std::vector<std::uint64_t> m_sums; // the output row at hand
    std::uint64_t m_rowsIn = 0;
    std::size_t m_outRow = 0;
    std::vector<std::uint8_t> m_rgb;
};

/// Turns a picture upright. Source: CIPA DC-008 (Exif 2.3), tag 0x0112, table of orientations 1 to 8.
[[nodiscard]] Pixels turnedUpright(const Pixels &stored, int orientation);

} // namespace snugwalk

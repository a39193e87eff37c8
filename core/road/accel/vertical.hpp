// SPDX-License-Identifier: Apache-2.0
// The part of an acceleration along gravity, however the sensor lies.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

namespace snugwalk {

/// Half a second of even samples, by axis, and what is made of them.
struct VerticalBlock {
    explicit VerticalBlock(std::size_t size)
        : x(size), y(size), z(size), vertical(size), gravityX(size), gravityY(size), gravityZ(size)
    {}
    std::vector<double> x, y, z;  ///< m/s^2
    std::vector<double> vertical; ///< m/s^2, upward positive
    std::vector<double> gravityX, gravityY, gravityZ;
    std::size_t filled = 0;
};

/// Gravity is what a first-order low-pass with a time constant of 10 s lets through, begun at the mean of
/// the first block; the vertical is (a - g) . g / |g|.
class Vertical {
public:
    explicit Vertical(double rate);
    void reset() { m_begun = false; }
    void run(VerticalBlock &block);
    /// Unit vector of gravity after the last block; zero where there is none.
    [[nodiscard]] std::array<double, 3> direction() const;

private:
    double m_share; ///< of a new sample in the low-pass
    std::array<double, 3> m_gravity{};
    bool m_begun = false;
};

} // namespace snugwalk

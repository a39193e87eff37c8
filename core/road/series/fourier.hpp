// SPDX-License-Identifier: Apache-2.0
// Discrete Fourier transforms of many blocks of one length.
#pragma once

#include <cstddef>
#include <memory>
#include <vector>

namespace snugwalk {

/// Transforms of a fixed length, kept real and imaginary parts apart. Powers of two from 4 on go through
/// a radix-4 transform whose passes the compiler turns into vector instructions; all else through kissfft.
///
/// Accuracy: 1e-13 of the largest line, both ways the same
/// Tests:    tests/unit/road/tst_fourier.cpp
class Fourier {
public:
    explicit Fourier(std::size_t length);
    ~Fourier();
    Fourier(Fourier &&) noexcept;
    Fourier &operator=(Fourier &&) noexcept;
    Fourier(const Fourier &) = delete;
    Fourier &operator=(const Fourier &) = delete;

    [[nodiscard]] std::size_t length() const { return m_length; }
    /// In place: `re` and `im` hold `length` numbers each.
    void forward(std::vector<double> &re, std::vector<double> &im);

private:
    struct General;
    std::size_t m_length;
    std::vector<double> m_turns; ///< three twiddles for each butterfly of each pass
    std::vector<double> m_spareRe, m_spareIm;
    std::unique_ptr<General> m_general; ///< null where the fast one serves
};

} // namespace snugwalk

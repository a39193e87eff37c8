// SPDX-License-Identifier: Apache-2.0
// Stockham's self-sorting radix-4 passes for powers of two, kissfft for the rest.
#include "road/series/fourier.hpp"

#include <bit>
#include <cmath>
#include <numbers>
#include <utility>

#include <kissfft/kissfft.hh>

#include "base/contract.hpp"
#include "road/series/wide.hpp"

namespace snugwalk {
namespace {

struct Parts {
    double *__restrict re;
    double *__restrict im;
};
struct ConstParts {
    const double *__restrict re;
    const double *__restrict im;
};

// One butterfly of four, a quarter of the length apart, twiddled by w, w^2 and w^3.
[[gnu::always_inline]] inline void butterfly(const ConstParts &x, const Parts &y, std::size_t from,
                                             std::size_t quarter, std::size_t to, std::size_t stride,
                                             const double *__restrict w)
{
    const double aRe = x.re[from];
    const double aIm = x.im[from];
    const double bRe = x.re[from + quarter];
    const double bIm = x.im[from + quarter];
    const double cRe = x.re[from + 2 * quarter];
    const double cIm = x.im[from + 2 * quarter];
    const double dRe = x.re[from + 3 * quarter];
    const double dIm = x.im[from + 3 * quarter];
    const double sumRe = aRe + cRe;
    const double sumIm = aIm + cIm;
    const double lessRe = aRe - cRe;
    const double lessIm = aIm - cIm;
    const double oddRe = bRe + dRe;
    const double oddIm = bIm + dIm;
    const double turnRe = -(bIm - dIm); // j (b - d)
    const double turnIm = bRe - dRe;
    y.re[to] = sumRe + oddRe;
    y.im[to] = sumIm + oddIm;
    const double oneRe = lessRe - turnRe;
    const double oneIm = lessIm - turnIm;
    y.re[to + stride] = w[0] * oneRe - w[1] * oneIm;
    y.im[to + stride] = w[0] * oneIm + w[1] * oneRe;
    const double twoRe = sumRe - oddRe;
    const double twoIm = sumIm - oddIm;
    y.re[to + 2 * stride] = w[2] * twoRe - w[3] * twoIm;
    y.im[to + 2 * stride] = w[2] * twoIm + w[3] * twoRe;
    const double threeRe = lessRe + turnRe;
    const double threeIm = lessIm + turnIm;
    y.re[to + 3 * stride] = w[4] * threeRe - w[5] * threeIm;
    y.im[to + 3 * stride] = w[4] * threeIm + w[5] * threeRe;
}

// Twiddles of the first pass lie in six planes, since there the loop runs over butterflies.
[[gnu::always_inline]] inline void firstPass(std::size_t quarter, ConstParts x, Parts y,
                                             const double *__restrict w)
{
    for (std::size_t p = 0; p < quarter; ++p) {
        const double turn[6] = {w[p],
                                w[p + quarter],
                                w[p + 2 * quarter],
                                w[p + 3 * quarter],
                                w[p + 4 * quarter],
                                w[p + 5 * quarter]};
        butterfly(x, y, p, quarter, 4 * p, 1, turn);
    }
}

template <std::size_t Fixed>
[[gnu::always_inline]] inline void pass(std::size_t butterflies, std::size_t stride, ConstParts x, Parts y,
                                        const double *__restrict w)
{
    const std::size_t s = Fixed > 0 ? Fixed : stride;
    for (std::size_t p = 0; p < butterflies; ++p) {
        for (std::size_t q = 0; q < s; ++q)
            butterfly(x, y, q + s * p, s * butterflies, q + 4 * s * p, s, w + 6 * p);
    }
}

// Gives whether the result lies in `b`.
SNUG_WIDE bool transform(std::size_t n, Parts a, Parts b, const double *w)
{
    std::size_t length = n;
    std::size_t stride = 1;
    bool inB = false;
    while (length >= 4) {
        const std::size_t quarter = length / 4;
        const ConstParts from = inB ? ConstParts{b.re, b.im} : ConstParts{a.re, a.im};
        const Parts to = inB ? a : b;
        if (stride == 1)
            firstPass(quarter, from, to, w);
        else if (stride == 4)
            pass<4>(quarter, stride, from, to, w);
        else
            pass<0>(quarter, stride, from, to, w);
        w += 6 * quarter;
        inB = !inB;
        length = quarter;
        stride *= 4;
    }
    if (length == 2) {
        const ConstParts from = inB ? ConstParts{b.re, b.im} : ConstParts{a.re, a.im};
        const Parts to = inB ? a : b;
        for (std::size_t q = 0; q < stride; ++q) {
            to.re[q] = from.re[q] + from.re[q + stride];
            to.im[q] = from.im[q] + from.im[q + stride];
            to.re[q + stride] = from.re[q] - from.re[q + stride];
            to.im[q + stride] = from.im[q] - from.im[q + stride];
        }
        inB = !inB;
    }
    return inB;
}

std::vector<double> twiddles(std::size_t n)
{
    std::vector<double> w;
    for (std::size_t length = n; length >= 4; length /= 4) {
        const std::size_t quarter = length / 4;
        const std::size_t from = w.size();
        w.resize(from + 6 * quarter);
        for (std::size_t p = 0; p < quarter; ++p) {
            for (std::size_t k = 1; k <= 3; ++k) {
                const double angle =
                    -2.0 * std::numbers::pi * static_cast<double>(k * p) / static_cast<double>(length);
                const std::size_t part = 2 * (k - 1);
                const std::size_t re = length == n ? part * quarter + p : 6 * p + part;
                const std::size_t im = length == n ? (part + 1) * quarter + p : 6 * p + part + 1;
                w[from + re] = std::cos(angle);
                w[from + im] = std::sin(angle);
            }
        }
    }
    return w;
}

} // namespace

struct Fourier::General {
    explicit General(std::size_t n) : plan(n, false), in(n), out(n) {}
    kissfft<double> plan;
    std::vector<std::complex<double>> in, out;
};

Fourier::Fourier(std::size_t length) : m_length(length)
{
    SNUG_ASSERT(length >= 1);
    if (length >= 4 && std::has_single_bit(length)) {
        m_turns = twiddles(length);
        m_spareRe.resize(length);
        m_spareIm.resize(length);
    } else {
        m_general = std::make_unique<General>(length);
    }
}

Fourier::~Fourier() = default;
Fourier::Fourier(Fourier &&) noexcept = default;
Fourier &Fourier::operator=(Fourier &&) noexcept = default;

void Fourier::forward(std::vector<double> &re, std::vector<double> &im)
{
    SNUG_ASSERT(re.size() == m_length && im.size() == m_length);
    if (m_general == nullptr) {
        if (transform(m_length, {re.data(), im.data()}, {m_spareRe.data(), m_spareIm.data()},
                      m_turns.data())) {
            std::swap(re, m_spareRe);
            std::swap(im, m_spareIm);
        }
        return;
    }
    for (std::size_t i = 0; i < m_length; ++i)
        m_general->in[i] = {re[i], im[i]};
    m_general->plan.transform(m_general->in.data(), m_general->out.data());
    for (std::size_t i = 0; i < m_length; ++i) {
        re[i] = m_general->out[i].real();
        im[i] = m_general->out[i].imag();
    }
}

} // namespace snugwalk

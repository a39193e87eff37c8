// SPDX-License-Identifier: Apache-2.0
// Windowing, transforming and averaging pairs of segments.
#include "road/series/welch.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "road/series/wide.hpp"

namespace snugwalk {
namespace {

std::vector<double> hann(std::size_t length)
{
    std::vector<double> window(length);
    for (std::size_t i = 0; i < length; ++i)
        window[i] = 0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * static_cast<double>(i) /
                                         static_cast<double>(length));
    return window;
}

// Eight running sums, which the compiler may add side by side without changing any.
double meanOf(const double *values, std::size_t count)
{
    std::array<double, 8> sums{};
    std::size_t i = 0;
    for (; i + 8 <= count; i += 8) {
        for (std::size_t lane = 0; lane < 8; ++lane)
            sums[lane] += values[i + lane];
    }
    double sum = ((sums[0] + sums[1]) + (sums[2] + sums[3])) + ((sums[4] + sums[5]) + (sums[6] + sums[7]));
    for (; i < count; ++i)
        sum += values[i];
    return sum / static_cast<double>(count);
}

SNUG_WIDE void weigh(const double *__restrict values, const double *__restrict window, double mean,
                     std::size_t count, double *__restrict out)
{
    for (std::size_t i = 0; i < count; ++i)
        out[i] = (values[i] - mean) * window[i];
}

void windowed(const double *values, const std::vector<double> &window, std::vector<double> &out)
{
    weigh(values, window.data(), meanOf(values, window.size()), window.size(), out.data());
}

SNUG_WIDE void addPower(const double *__restrict re, const double *__restrict im, std::size_t count,
                        double *__restrict power)
{
    for (std::size_t i = 0; i < count; ++i)
        power[i] += re[i] * re[i] + im[i] * im[i];
}

} // namespace

Result<Welch> Welch::make(double rate, std::size_t segment)
{
    if (!(rate > 0.0 && rate <= 1e7))
        return Error{Errc::OutOfRange, "no such sampling rate", "fs", "give samples a second, such as 100"};
    if (segment < 8 || segment > (std::size_t{1} << 22))
        return Error{Errc::OutOfRange, "a segment outside 8 to 4,194,304 samples", "segment",
                     "give samples a segment, such as 512"};
    return Welch(rate, segment);
}

Welch::Welch(double rate, std::size_t segment)
    : m_rate(rate),
      m_segment(segment),
      m_hop(segment - segment / 2),
      m_window(hann(segment)),
      m_buffer(segment + m_hop),
      m_fourier(segment),
      m_re(segment),
      m_im(segment),
      m_power(segment)
{}

void Welch::add(std::span<const double> values)
{
    while (!values.empty()) {
        const std::size_t part = std::min(values.size(), m_buffer.size() - m_filled);
        std::copy_n(values.begin(), part, m_buffer.begin() + static_cast<std::ptrdiff_t>(m_filled));
        m_filled += part;
        values = values.subspan(part);
        if (m_filled == m_buffer.size())
            takePair();
    }
}

void Welch::takePair()
{
    windowed(m_buffer.data(), m_window, m_re);
    windowed(m_buffer.data() + m_hop, m_window, m_im);
    m_fourier.forward(m_re, m_im);
    addPower(m_re.data(), m_im.data(), m_segment, m_power.data());
    m_segments += 2;
    std::copy(m_buffer.begin() + static_cast<std::ptrdiff_t>(2 * m_hop), m_buffer.end(), m_buffer.begin());
    m_filled = m_buffer.size() - 2 * m_hop;
}

void Welch::takeLast(std::size_t length)
{
    windowed(m_buffer.data(), m_window, m_re);
    std::fill(m_im.begin(), m_im.end(), 0.0);
    m_fourier.forward(m_re, m_im);
    addPower(m_re.data(), m_im.data(), m_segment, m_power.data());
    ++m_segments;
    m_filled = std::min(m_filled, length);
}

Result<Spectrum> Welch::finish()
{
    if (m_segments == 0 && m_filled < m_segment) {
        if (m_filled < 2)
            return Error{Errc::InvalidInput, "fewer than two values", "", "give a longer series"};
        Welch shorter(m_rate, m_filled);
        shorter.m_buffer.assign(m_buffer.begin(), m_buffer.begin() + static_cast<std::ptrdiff_t>(m_filled));
        shorter.takeLast(m_filled);
        Spectrum s = shorter.spectrum(m_filled);
        s.tooShort = true;
        return s;
    }
    if (m_filled >= m_segment)
        takeLast(m_segment);
    return spectrum(m_segment);
}

Spectrum Welch::spectrum(std::size_t length) const
{
    double squares = 0.0;
    for (const double w : m_window)
        squares += w * w;
    const double scale = 1.0 / (m_rate * squares * static_cast<double>(m_segments));
    Spectrum s;
    s.segments = m_segments;
    for (std::size_t k = 0; k <= length / 2; ++k) {
        const bool single = k == 0 || 2 * k == length;
        const double both = (m_power[k] + m_power[(length - k) % length]) / 2.0;
        s.frequency.push_back(static_cast<double>(k) * m_rate / static_cast<double>(length));
        s.density.push_back(both * scale * (single ? 1.0 : 2.0));
    }
    return s;
}

} // namespace snugwalk

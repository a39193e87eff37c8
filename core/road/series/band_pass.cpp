// SPDX-License-Identifier: Apache-2.0
// From the poles of the analogue low-pass to digital sections.
#include "road/series/band_pass.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace snugwalk {
namespace {

using Complex = std::complex<double>;
constexpr double pi = std::numbers::pi;

// Both band poles of each low-pass pole in the upper half plane; an odd order's real pole gives a pair.
std::vector<Complex> upperBandPoles(int order, double centre, double width)
{
    std::vector<Complex> poles;
    for (int k = 0; k < order; ++k) {
        const double angle = pi * (2.0 * k + order + 1.0) / (2.0 * order);
        const Complex p = std::polar(1.0, angle) * (width / 2.0);
        const Complex root = std::sqrt(p * p - centre * centre);
        for (const Complex pole : {p + root, p - root}) {
            if (pole.imag() > 0.0)
                poles.push_back(pole);
        }
    }
    return poles;
}

// Magnitude of one section without its gain at the angle `w`.
double sectionGain(const BandSection &s, double w)
{
    const Complex z = std::polar(1.0, -w);
    return std::abs((1.0 - z * z) / (1.0 + s.a1 * z + s.a2 * z * z));
}

} // namespace

Result<std::vector<BandSection>> bandPass(int order, double low, double high, double rate)
{
    if (order < 1 || order > 8)
        return Error{Errc::OutOfRange, "a filter order outside 1 to 8", "order", "give 4"};
    if (!(low > 0.0 && low < high && high < rate / 2.0))
        return Error{Errc::OutOfRange, "a band that does not fit below half the sampling rate", "band",
                     "give 0 < low < high < half the rate"};
    const double lowEdge = 2.0 * rate * std::tan(pi * low / rate);
    const double highEdge = 2.0 * rate * std::tan(pi * high / rate);
    const double centre = std::sqrt(lowEdge * highEdge);
    std::vector<BandSection> sections;
    for (const Complex pole : upperBandPoles(order, centre, highEdge - lowEdge)) {
        const Complex z = (2.0 * rate + pole) / (2.0 * rate - pole);
        sections.push_back({1.0, -2.0 * z.real(), std::norm(z)});
    }
    // a wide odd band has a pair of real poles, which the upper half plane does not show
    if (sections.size() != static_cast<std::size_t>(order))
        return Error{Errc::Unsupported, "so wide a band of odd order", "order", "give an even order"};
    // the gain is 1 at the centre, where each section gets its part
    const double middle = 2.0 * std::atan(centre / (2.0 * rate));
    for (BandSection &section : sections)
        section.gain = 1.0 / sectionGain(section, middle);
    return sections;
}

Result<BandPass4> BandPass4::make(double low, double high, double rate)
{
    const auto sections = bandPass(4, low, high, rate);
    if (!sections)
        return sections.error();
    BandPass4 filter;
    std::transform(sections->begin(), sections->end(), filter.m_stages.begin(), [](const BandSection &s) {
        return Stage{s.gain, s.a1, s.a2};
    });
    return filter;
}

void BandPass4::filter(std::span<double> values)
{
    BandPass4 local = *this; // in registers
    for (double &value : values)
        value = local.next(value);
    *this = local;
}

void BandPass4::reset()
{
    for (Stage &stage : m_stages)
        stage.first = stage.second = 0.0;
}

} // namespace snugwalk

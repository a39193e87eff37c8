// SPDX-License-Identifier: Apache-2.0
// Halving for the one code, whole numbers to base 20 for the other.
#include "trip/place_code.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string_view>

#include "base/contract.hpp"

namespace snugwalk {
namespace {

constexpr int bitsPerCharacter = 5;
constexpr int longestGeohash = 12;
constexpr int longestLocationCode = 10;
constexpr std::size_t digitsBeforePlus = 8;

// Degrees from -180 up to, not including, 180.
double eastOf(double longitude) { return longitude >= 180.0 ? longitude - 360.0 : longitude; }

/// One coordinate, narrowed to the half it lies in again and again.
struct Halving {
    double low;
    double high;
    double at;
    bool upper()
    {
        const double middle = (low + high) / 2.0;
        (at >= middle ? low : high) = middle;
        return at >= middle;
    }
};

// Cells of the finest code from the south pole or the antimeridian; on a border despite rounding.
std::int64_t finestCell(double degrees, std::int64_t last)
{
    constexpr double perDegree = 8000.0;
    constexpr double border = 1e6; // parts of a cell that a place may be off by rounding
    const double cell = std::floor(std::round(degrees * perDegree * border) / border);
    return std::min(static_cast<std::int64_t>(cell), last);
}

} // namespace

std::string geohash(const GeoPoint &place, int length)
{
    SNUG_ASSERT(isValid(place) && length >= 1 && length <= longestGeohash);
    constexpr std::string_view alphabet = "0123456789bcdefghjkmnpqrstuvwxyz";
    Halving east{-180.0, 180.0, eastOf(place.longitude)};
    Halving north{-90.0, 90.0, place.latitude};
    std::string code;
    std::size_t character = 0;
    for (int bit = 0; bit < bitsPerCharacter * length; ++bit) {
        character = 2 * character + (bit % 2 == 0 ? east.upper() : north.upper());
        if (bit % bitsPerCharacter == bitsPerCharacter - 1) {
            code += alphabet[character];
            character = 0;
        }
    }
    return code;
}

CellSpan geohashSpan(int length)
{
    SNUG_ASSERT(length >= 1 && length <= longestGeohash);
    const int bits = bitsPerCharacter * length;
    return {std::ldexp(180.0, -(bits / 2)), std::ldexp(360.0, -((bits + 1) / 2))};
}

std::string openLocationCode(const GeoPoint &place, int digits)
{
    SNUG_ASSERT(isValid(place) && digits >= 2 && digits <= longestLocationCode && digits % 2 == 0);
    constexpr std::string_view alphabet = "23456789CFGHJMPQRVWX";
    constexpr std::int64_t base = 20;
    std::int64_t north = finestCell(place.latitude + 90.0, 180 * 8000 - 1);
    std::int64_t east = finestCell(eastOf(place.longitude) + 180.0, 360 * 8000 - 1);
    std::string code(longestLocationCode, '0');
    for (int at = longestLocationCode - 2; at >= 0; at -= 2) {
        if (at < digits) {
            code[static_cast<std::size_t>(at)] = alphabet[static_cast<std::size_t>(north % base)];
            code[static_cast<std::size_t>(at) + 1] = alphabet[static_cast<std::size_t>(east % base)];
        }
        north /= base;
        east /= base;
    }
    code.resize(std::max(static_cast<std::size_t>(digits), digitsBeforePlus));
    return code.insert(digitsBeforePlus, "+");
}

} // namespace snugwalk

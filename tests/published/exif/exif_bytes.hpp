// SPDX-License-Identifier: Apache-2.0
// Exif blocks written by hand, byte by byte, from the published layout; shares no code with the reader.
// Source: TIFF 6.0 section 2 (header, IFD, 12-byte entries); CIPA DC-008 (Exif 2.3) sections 4.5 and 4.6.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace snugwalk::test {

enum class Endian { Little, Big };
enum class Ifd { Zero, Exif, Gps };
using Fraction = std::pair<std::uint32_t, std::uint32_t>; ///< numerator, denominator

class ExifBytes {
public:
    explicit ExifBytes(Endian endian = Endian::Big) : m_endian(endian) {}

    ExifBytes &ascii(Ifd ifd, int tag, const std::string &text);
    ExifBytes &byte(Ifd ifd, int tag, int value);
    ExifBytes &number(Ifd ifd, int tag, int value); ///< SHORT
    ExifBytes &fractions(Ifd ifd, int tag, const std::vector<Fraction> &values);
    /// Latitude and longitude in whole degrees, minutes and hundredths of a second, with their letters.
    ExifBytes &position(const std::vector<Fraction> &latitude, char northOrSouth,
                        const std::vector<Fraction> &longitude, char eastOrWest);

    [[nodiscard]] std::string tiff() const;    ///< the block alone, as PNG's eXIf holds it
    [[nodiscard]] std::string segment() const; ///< as JPEG's APP1 holds it

private:
    struct Entry {
        int type;
        std::uint32_t count;
        std::string value;
    };
    using Entries = std::map<int, Entry>;

    [[nodiscard]] std::string word(std::uint32_t value, int bytes) const;
    [[nodiscard]] std::string written(const Entries &entries, std::uint32_t at) const;

    Endian m_endian;
    std::map<Ifd, Entries> m_ifds;
};

/// The photo with the segment right behind its start, where Exif 2.3 section 4.5.4 wants it.
[[nodiscard]] inline std::string withSegment(const std::string &jpeg, const std::string &segment)
{
    return jpeg.substr(0, 2) + segment + jpeg.substr(2);
}

// Tags by their published numbers (CIPA DC-008, tables 4 to 8 and 15).
namespace tag {
inline constexpr int orientation = 0x0112;
inline constexpr int exifPointer = 0x8769;
inline constexpr int gpsPointer = 0x8825;
inline constexpr int dateTimeOriginal = 0x9003;
inline constexpr int offsetTimeOriginal = 0x9011;
inline constexpr int subSecTimeOriginal = 0x9291;
inline constexpr int gpsLatitudeRef = 1;
inline constexpr int gpsLatitude = 2;
inline constexpr int gpsLongitudeRef = 3;
inline constexpr int gpsLongitude = 4;
inline constexpr int gpsAltitudeRef = 5;
inline constexpr int gpsAltitude = 6;
inline constexpr int gpsTimeStamp = 7;
inline constexpr int gpsMapDatum = 0x12;
inline constexpr int gpsDateStamp = 0x1d;
inline constexpr int gpsHPositioningError = 0x1f;
} // namespace tag

} // namespace snugwalk::test

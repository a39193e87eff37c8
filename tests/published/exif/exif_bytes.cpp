// SPDX-License-Identifier: Apache-2.0
// TIFF 6.0: header "II" or "MM", 42, offset of the first IFD; values over four bytes lie behind their IFD.
#include "exif_bytes.hpp"

#include <algorithm>

namespace snugwalk::test {
namespace {

// TIFF 6.0 section 2, "Types"
constexpr int typeByte = 1;
constexpr int typeAscii = 2;
constexpr int typeShort = 3;
constexpr int typeLong = 4;
constexpr int typeRational = 5;

constexpr std::uint32_t headerSize = 8;

std::uint32_t sizeOf(const std::string &bytes) { return static_cast<std::uint32_t>(bytes.size()); }

} // namespace

ExifBytes &ExifBytes::ascii(Ifd ifd, int tag, const std::string &text)
{
    m_ifds[ifd][tag] = {typeAscii, sizeOf(text) + 1, text + '\0'};
    return *this;
}

ExifBytes &ExifBytes::byte(Ifd ifd, int tag, int value)
{
    m_ifds[ifd][tag] = {typeByte, 1, std::string(1, static_cast<char>(value))};
    return *this;
}

ExifBytes &ExifBytes::number(Ifd ifd, int tag, int value)
{
    m_ifds[ifd][tag] = {typeShort, 1, word(static_cast<std::uint32_t>(value), 2)};
    return *this;
}

ExifBytes &ExifBytes::fractions(Ifd ifd, int tag, const std::vector<Fraction> &values)
{
    std::string bytes;
    for (const auto &[numerator, denominator] : values)
        bytes += word(numerator, 4) + word(denominator, 4);
    m_ifds[ifd][tag] = {typeRational, static_cast<std::uint32_t>(values.size()), bytes};
    return *this;
}

ExifBytes &ExifBytes::position(const std::vector<Fraction> &latitude, char northOrSouth,
                               const std::vector<Fraction> &longitude, char eastOrWest)
{
    return fractions(Ifd::Gps, tag::gpsLatitude, latitude)
        .ascii(Ifd::Gps, tag::gpsLatitudeRef, std::string(1, northOrSouth))
        .fractions(Ifd::Gps, tag::gpsLongitude, longitude)
        .ascii(Ifd::Gps, tag::gpsLongitudeRef, std::string(1, eastOrWest));
}

std::string ExifBytes::word(std::uint32_t value, int bytes) const
{
    std::string out;
    for (int i = 0; i < bytes; ++i)
        out += static_cast<char>(value >> (8 * i) & 0xffU);
    if (m_endian == Endian::Big)
        std::reverse(out.begin(), out.end());
    return out;
}

std::string ExifBytes::written(const Entries &entries, std::uint32_t at) const
{
    const auto count = static_cast<std::uint32_t>(entries.size());
    const std::uint32_t behind = at + 2 + 12 * count + 4;
    std::string table = word(count, 2);
    std::string values;
    for (const auto &[tag, entry] : entries) {
        table += word(static_cast<std::uint32_t>(tag), 2) + word(static_cast<std::uint32_t>(entry.type), 2) +
                 word(entry.count, 4);
        if (entry.value.size() <= 4) {
            table += entry.value + std::string(4 - entry.value.size(), '\0');
        } else {
            table += word(behind + sizeOf(values), 4);
            values += entry.value + std::string(entry.value.size() % 2, '\0');
        }
    }
    return table + word(0, 4) + values;
}

std::string ExifBytes::tiff() const
{
    auto zero = m_ifds.contains(Ifd::Zero) ? m_ifds.at(Ifd::Zero) : Entries{};
    for (const auto &[ifd, pointer] :
         {std::pair(Ifd::Exif, tag::exifPointer), std::pair(Ifd::Gps, tag::gpsPointer)})
        if (m_ifds.contains(ifd))
            zero[pointer] = {typeLong, 1, word(0, 4)};
    std::uint32_t next =
        headerSize + sizeOf(written(zero, headerSize)); // its size does not depend on pointers
    std::string behind;
    for (const auto &[ifd, pointer] :
         {std::pair(Ifd::Exif, tag::exifPointer), std::pair(Ifd::Gps, tag::gpsPointer)}) {
        if (!m_ifds.contains(ifd))
            continue;
        zero[pointer].value = word(next + sizeOf(behind), 4);
        behind += written(m_ifds.at(ifd), next + sizeOf(behind));
    }
    const std::string mark = m_endian == Endian::Big ? "MM" : "II";
    return mark + word(42, 2) + word(headerSize, 4) + written(zero, headerSize) + behind;
}

std::string ExifBytes::segment() const
{
    const std::string content = std::string("Exif\0\0", 6) + tiff();
    const std::uint32_t length = sizeOf(content) + 2; // always big-endian in JPEG (T.81 B.1.1.1)
    return std::string("\xff\xe1") + static_cast<char>(length >> 8U) + static_cast<char>(length & 0xffU) +
           content;
}

} // namespace snugwalk::test

// SPDX-License-Identifier: Apache-2.0
// The wrapper round libexif: it finds the fields, their meaning is read here.
#include "logbook/photo_exif.hpp"

#include <array>
#include <cmath>
#include <cstddef>
#include <libexif/exif-data.h>
#include <memory>

#include "base/text.hpp"
#include "logbook/photo_exif_time.hpp"

namespace snugwalk {
namespace {

using namespace std::string_literals;

struct Release {
    void operator()(ExifData *data) const { exif_data_unref(data); }
};
using Data = std::unique_ptr<ExifData, Release>;

// Longer blocks do not fit a JPEG; PNG would allow gigabytes.
constexpr std::size_t largestBlock = 65'536;

Data load(std::string_view tiff)
{
    Data data(exif_data_new());
    if (!data)
        return data;
    // by default libexif adds the fields that the standard wants; we read only what is there
    exif_data_unset_option(data.get(), EXIF_DATA_OPTION_FOLLOW_SPECIFICATION);
    const std::string block = "Exif\0\0"s.append(tiff);
    exif_data_load_data(data.get(), reinterpret_cast<const unsigned char *>(block.data()),
                        static_cast<unsigned>(block.size()));
    return data;
}

// One field, read with its size checked: the stored count may lie.
class Field {
public:
    Field(const Data &data, ExifIfd ifd, int tag)
        : m_entry(exif_content_get_entry(data->ifd[ifd], static_cast<ExifTag>(tag))),
          m_order(exif_data_get_byte_order(data.get()))
    {}

    [[nodiscard]] std::string text() const
    {
        if (!holds(EXIF_FORMAT_ASCII, 1, 0))
            return {};
        const std::string_view all(reinterpret_cast<const char *>(m_entry->data), m_entry->size);
        return std::string(trim(all.substr(0, all.find('\0'))));
    }

    [[nodiscard]] std::optional<int> integer() const
    {
        if (holds(EXIF_FORMAT_SHORT, 2, 0))
            return exif_get_short(m_entry->data, m_order);
        if (holds(EXIF_FORMAT_BYTE, 1, 0))
            return m_entry->data[0];
        return std::nullopt;
    }

    // nothing for n/0; `ifUnknown` for 0/0, which the standard's users write for "not known"
    [[nodiscard]] std::optional<double> rational(std::size_t index,
                                                 std::optional<double> ifUnknown = {}) const
    {
        if (!holds(EXIF_FORMAT_RATIONAL, 8, index))
            return std::nullopt;
        const ExifRational r = exif_get_rational(m_entry->data + 8 * index, m_order);
        if (r.denominator == 0)
            return r.numerator == 0 ? ifUnknown : std::nullopt;
        return static_cast<double>(r.numerator) / static_cast<double>(r.denominator);
    }

private:
    [[nodiscard]] bool holds(ExifFormat format, std::size_t width, std::size_t index) const
    {
        return m_entry != nullptr && m_entry->data != nullptr && m_entry->format == format &&
               m_entry->size >= width * (index + 1) && m_entry->components > index;
    }

    const ExifEntry *m_entry;
    ExifByteOrder m_order;
};

Field gps(const Data &data, int tag) { return {data, EXIF_IFD_GPS, tag}; }

// Degrees, minutes, seconds with the hemisphere's letter.
std::optional<double> angle(const Data &data, int tag, int letterTag, char positive, char negative)
{
    const Field field = gps(data, tag);
    const auto degrees = field.rational(0);
    const auto minutes = field.rational(1, 0.0);
    const auto seconds = field.rational(2, 0.0);
    const std::string letter = gps(data, letterTag).text();
    if (!degrees || !minutes || !seconds || letter.size() != 1)
        return std::nullopt;
    if (*minutes > 60.0 || *seconds > 60.0 || (letter[0] != positive && letter[0] != negative))
        return std::nullopt;
    const double size = *degrees + *minutes / 60.0 + *seconds / 3600.0;
    return letter[0] == negative ? -size : size;
}

std::optional<double> altitude(const Data &data)
{
    const auto metres = gps(data, EXIF_TAG_GPS_ALTITUDE).rational(0);
    const int reference = gps(data, EXIF_TAG_GPS_ALTITUDE_REF).integer().value_or(0);
    if (!metres || *metres > 20'000.0 || reference > 1) // 2 and 3 are heights over the ellipsoid
        return std::nullopt;
    return reference == 1 ? -*metres : *metres;
}

std::optional<GeoPoint> place(const Data &data)
{
    const auto latitude = angle(data, EXIF_TAG_GPS_LATITUDE, EXIF_TAG_GPS_LATITUDE_REF, 'N', 'S');
    const auto longitude = angle(data, EXIF_TAG_GPS_LONGITUDE, EXIF_TAG_GPS_LONGITUDE_REF, 'E', 'W');
    if (!latitude || !longitude || (*latitude == 0.0 && *longitude == 0.0))
        return std::nullopt;
    if (gps(data, EXIF_TAG_GPS_MAP_DATUM).text() == "TOKYO")
        return std::nullopt;
    GeoPoint point{*latitude, *longitude, altitude(data), std::nullopt};
    if (const auto metres = gps(data, EXIF_TAG_GPS_H_POSITIONING_ERROR).rational(0))
        point.accuracy = Length::fromSi(*metres);
    return isValid(point) ? std::optional(point) : std::nullopt;
}

std::optional<Instant> gpsInstant(const Data &data)
{
    const Field time = gps(data, EXIF_TAG_GPS_TIME_STAMP);
    const std::array parts = {time.rational(0), time.rational(1), time.rational(2)};
    if (!parts[0] || !parts[1] || !parts[2])
        return std::nullopt;
    return readGpsInstant(gps(data, EXIF_TAG_GPS_DATE_STAMP).text(), *parts[0], *parts[1], *parts[2]);
}

std::string exifText(const Data &data, int tag) { return Field(data, EXIF_IFD_EXIF, tag).text(); }

void readTime(const Data &data, ExifFacts &facts)
{
    const auto clock = readCameraClock(exifText(data, EXIF_TAG_DATE_TIME_ORIGINAL),
                                       exifText(data, EXIF_TAG_SUB_SEC_TIME_ORIGINAL));
    if (clock)
        facts.takenText = clockText(*clock);
    facts.taken = settleTime(clock, exifText(data, EXIF_TAG_OFFSET_TIME_ORIGINAL), gpsInstant(data));
}

} // namespace

ExifFacts readExif(std::string_view tiff)
{
    ExifFacts facts;
    if (tiff.empty() || tiff.size() > largestBlock)
        return facts;
    const Data data = load(tiff);
    if (!data)
        return facts;
    const int orientation = Field(data, EXIF_IFD_0, EXIF_TAG_ORIENTATION).integer().value_or(1);
    if (orientation >= 1 && orientation <= 8)
        facts.orientation = orientation;
    readTime(data, facts);
    facts.place = place(data);
    return facts;
}

} // namespace snugwalk

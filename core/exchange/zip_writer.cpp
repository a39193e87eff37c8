// SPDX-License-Identifier: Apache-2.0
// Members in the order given, without compression, dated alike.
#include "exchange/zip_writer.hpp"

#include <zip.h>

#include "logbook/files.hpp"

namespace snugwalk {
namespace {

struct DosTime {
    zip_uint16_t time = 0;
    zip_uint16_t date = 0;
};

// APPNOTE 4.4.6: two seconds, minutes, hours; days, months, years from 1980 on.
DosTime dosTime(Instant when)
{
    const auto day = std::chrono::floor<std::chrono::days>(when);
    const std::chrono::year_month_day date(day);
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(when - day).count();
    const int year = static_cast<int>(date.year()) - 1980;
    if (year < 0 || year > 127)
        return {0, 0x21}; // 1 January 1980
    const auto months = static_cast<unsigned>(date.month());
    const auto days = static_cast<unsigned>(date.day());
    return {static_cast<zip_uint16_t>(seconds / 3600 << 11 | seconds / 60 % 60 << 5 | seconds % 60 / 2),
            static_cast<zip_uint16_t>(static_cast<unsigned>(year) << 9 | months << 5 | days)};
}

} // namespace

void ZipWriter::Discard::operator()(zip *archive) const { zip_discard(archive); }

Error ZipWriter::lastError() const
{
    zip_error_t *fault = zip_get_error(m_archive.get());
    const int number = zip_error_code_system(fault);
    if (zip_error_system_type(fault) == ZIP_ET_SYS && number != 0)
        return systemError(number, m_file);
    return {Errc::Io, std::string("the archive cannot be written: ") + zip_error_strerror(fault), m_file,
            "try again, or choose another disk"};
}

Result<ZipWriter> ZipWriter::create(const std::string &file, Instant when)
{
    ZipWriter writer;
    writer.m_file = file;
    writer.m_when = when;
    int code = 0;
    writer.m_archive.reset(zip_open(file.c_str(), ZIP_CREATE | ZIP_EXCL, &code));
    if (!writer.m_archive && code == ZIP_ER_EXISTS)
        return Error{Errc::Conflict, "something is there already", file, "give a name that is not taken"};
    if (!writer.m_archive)
        return systemError(errno, file);
    return writer;
}

Status ZipWriter::settle(std::int64_t index)
{
    if (index < 0)
        return lastError();
    const auto at = static_cast<zip_uint64_t>(index);
    const DosTime when = dosTime(m_when);
    const bool isSet = zip_set_file_compression(m_archive.get(), at, ZIP_CM_STORE, 0) == 0 &&
                       zip_file_set_dostime(m_archive.get(), at, when.time, when.date, 0) == 0;
    return isSet ? done() : Status(lastError());
}

Status ZipWriter::addBytes(const std::string &name, std::string bytes)
{
    m_bytes.push_back(std::move(bytes));
    zip_source_t *source =
        zip_source_buffer(m_archive.get(), m_bytes.back().data(), m_bytes.back().size(), 0);
    if (source == nullptr)
        return lastError();
    const zip_int64_t index = zip_file_add(m_archive.get(), name.c_str(), source, ZIP_FL_ENC_UTF_8);
    if (index < 0)
        zip_source_free(source);
    return settle(index);
}

Status ZipWriter::addFile(const std::string &name, const std::filesystem::path &source)
{
    zip_source_t *file = zip_source_file(m_archive.get(), source.c_str(), 0, -1);
    if (file == nullptr)
        return lastError();
    const zip_int64_t index = zip_file_add(m_archive.get(), name.c_str(), file, ZIP_FL_ENC_UTF_8);
    if (index < 0)
        zip_source_free(file);
    return settle(index);
}

Status ZipWriter::close(const std::string &comment)
{
    if (zip_set_archive_comment(m_archive.get(), comment.data(), static_cast<zip_uint16_t>(comment.size())) !=
        0)
        return lastError();
    if (zip_close(m_archive.get()) != 0)
        return lastError();                 // the archive is still open and is thrown away with this object
    static_cast<void>(m_archive.release()); // closing freed it
    m_bytes.clear();
    return done();
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Choosing the class behind each maker.
#include "position/make_position.hpp"

#include <QFile>
#include <QGeoPositionInfoSource>
#include <QNmeaPositionInfoSource>

#include "logbook/files.hpp"
#include "position/qt_position.hpp"
#include "position/recorded_position.hpp"
#include "trip/nmea.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxLogBytes = 64U * 1024 * 1024;

} // namespace

std::unique_ptr<PositionSource> systemPosition()
{
    std::unique_ptr<QGeoPositionInfoSource> source(QGeoPositionInfoSource::createDefaultSource(nullptr));
    if (!source)
        return nullptr;
    return std::make_unique<QtPosition>(std::move(source), QStringLiteral("receiver"));
}

Result<std::unique_ptr<PositionSource>> nmeaPosition(const std::string &file)
{
    auto log = std::make_unique<QFile>(QString::fromStdString(file));
    if (!log->open(QIODevice::ReadOnly))
        return Error{log->exists() ? Errc::Io : Errc::NotFound, "the position log cannot be read", file,
                     "name a file of NMEA sentences"};
    auto source = std::make_unique<QNmeaPositionInfoSource>(QNmeaPositionInfoSource::SimulationMode);
    log->setParent(source.get());
    source->setDevice(log.release());
    return std::unique_ptr<PositionSource>(
        std::make_unique<QtPosition>(std::move(source), QStringLiteral("log")));
}

std::unique_ptr<PositionSource> recordedPosition(std::vector<Fix> fixes)
{
    return std::make_unique<RecordedPosition>(std::move(fixes));
}

Result<std::unique_ptr<PositionSource>> lastOfNmea(const std::string &file)
{
    const Result<std::string> bytes = readFile(file, maxLogBytes);
    if (!bytes)
        return bytes.error();
    const Result<ParsedTrack> track = parseNmea(*bytes);
    if (!track)
        return track.error();
    return recordedPosition({track->fixes.back()});
}

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Any bytes as a receiver's log, as they are and with every checksum put right, so that fields are
// reached too. Damage before a log never costs one of its fixes.
#include <string>

#include "base/text.hpp"
#include "fuzz.hpp"
#include "track_laws.hpp"
#include "trip/nmea.hpp"

namespace {

using namespace snugwalk;

std::string withChecksums(std::string_view log)
{
    std::string out;
    for (const std::string_view line : split(log, '\n')) {
        const auto dollar = line.rfind('$');
        if (dollar == std::string_view::npos)
            continue;
        const std::string_view body = line.substr(dollar + 1, line.find('*', dollar) - dollar - 1);
        unsigned sum = 0;
        for (const char c : body)
            sum ^= static_cast<unsigned char>(c);
        out += "$" + std::string(body) + "*" + toHex(std::string(1, static_cast<char>(sum))) + "\n";
    }
    return out;
}

void check(const std::string &log)
{
    const auto track = parseNmea(log);
    const auto after = parseNmea("$GPRMC,cut$$GPGGA,*00\n\xff" + log);
    SNUG_ASSERT(track.has_value() == after.has_value());
    if (!track) {
        SNUG_ASSERT(!track.error().what.empty() && !track.error().act.empty());
        return;
    }
    SNUG_ASSERT(track->fixes.size() == after->fixes.size());
    checkTrackLaws(*track);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view log = asText(data, size);
    check(std::string(log));
    check(withChecksums(log));
    return 0;
}

// SPDX-License-Identifier: Apache-2.0
// Reads questions about climate and coast, a line each, and writes the figures, for the scripts beside it.
#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>
#include <string>

#include "weather/climate.hpp"
#include "weather/coast.hpp"

namespace {

std::string bytesOf(const char *name)
{
    std::ifstream file(std::string(SNUGWALK_SOURCE_DIR "/core/weather/data/") + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

snugwalk::GeoPoint readPlace(std::istringstream &words)
{
    snugwalk::GeoPoint place;
    words >> place.latitude >> place.longitude;
    return place;
}

/// `normals LAT LON [ALTITUDE]`: altitude, land, then mean low high rain humidity of the twelve months.
void answerNormals(const snugwalk::Climate &climate, std::istringstream &words)
{
    const auto place = readPlace(words);
    std::optional<double> altitude;
    if (double given = 0.0; words >> given)
        altitude = given;
    if (const auto normals = climate.normalsAt(place, altitude)) {
        std::cout << normals->elevation << ' ' << normals->landData;
        for (const auto &m : normals->months)
            std::cout << ' ' << m.meanC << ' ' << m.lowC << ' ' << m.highC << ' ' << m.rainMm << ' '
                      << m.humidityPct;
    } else {
        std::cout << "none";
    }
}

} // namespace

int main()
{
    const auto climate = snugwalk::Climate::fromBytes(bytesOf("climate.bin"));
    const auto coast = snugwalk::Coast::fromBytes(bytesOf("coast.bin"));
    if (!climate || !coast) {
        std::cerr << (climate ? coast.error().what : climate.error().what) << '\n';
        return 1;
    }
    std::cout.precision(12);
    for (std::string line; std::getline(std::cin, line);) {
        std::istringstream words(line);
        std::string question;
        words >> question;
        if (question == "normals") {
            answerNormals(*climate, words);
        } else if (question == "dew") { // LOW HIGH EVAPORATION RAIN
            double low = 0.0, high = 0.0, evaporation = 0.0, rain = 0.0;
            words >> low >> high >> evaporation >> rain;
            std::cout << snugwalk::inlandDewPoint(low, high, evaporation, rain);
        } else if (question == "coast") { // LAT LON: metres to the sea, 1 on land
            const auto place = readPlace(words);
            std::cout << coast->distanceTo(place).si() << ' ' << coast->isLand(place);
        } else if (question == "error") {
            constexpr auto e = snugwalk::normalError;
            std::cout << e.meanC << ' ' << e.halfRangeC << ' ' << e.rainFactor << ' ' << e.humidityPct;
        } else {
            std::cerr << "no such question: " << line << '\n';
            return 1;
        }
        std::cout << '\n';
    }
    return 0;
}

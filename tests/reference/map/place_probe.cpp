// SPDX-License-Identifier: Apache-2.0
// Answers "latitude longitude" lines with the nearest named place, its distance and bearing, and where the
// point lies on a map that looks at 40 N 20 E, 60 degrees across.
#include <cstdio>
#include <fstream>
#include <iostream>
#include <iterator>

#include "map/frame.hpp"
#include "map/gazetteer.hpp"

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    std::ifstream file(argv[1], std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    const auto places = snugwalk::Gazetteer::fromBytes(bytes);
    if (!places)
        return 1;
    const auto frame = snugwalk::MapFrame::looking({40.0, 20.0}, 60.0, 1.0);
    snugwalk::GeoPoint here;
    while (std::cin >> here.latitude >> here.longitude) {
        const auto near = places->nearest(here);
        const auto flat = frame.at(here);
        std::printf("%.3f\t%.3f\t%.6f\t%.9f\t%.9f\t%.9f\t%s\n", near.named.place.latitude,
                    near.named.place.longitude, near.distance.si(), near.bearing, flat.x, flat.y,
                    near.named.name.c_str());
    }
    return 0;
}

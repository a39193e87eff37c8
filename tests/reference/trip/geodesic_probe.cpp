// SPDX-License-Identifier: Apache-2.0
// Distance in metres and bearing in degrees for lines of "latitude longitude latitude longitude".
#include <cstdio>
#include <iostream>

#include "trip/geodesic.hpp"

int main()
{
    snugwalk::GeoPoint a;
    snugwalk::GeoPoint b;
    while (std::cin >> a.latitude >> a.longitude >> b.latitude >> b.longitude)
        std::printf("%.17g %.17g\n", snugwalk::distanceBetween(a, b).si(), snugwalk::bearing(a, b));
    return 0;
}

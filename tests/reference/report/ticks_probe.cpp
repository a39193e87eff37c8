// SPDX-License-Identifier: Apache-2.0
// Ticks of our own for ranges read from standard input, "from to count" a line; %.17g, parted by spaces.
#include <cstdio>
#include <iostream>

#include "report/plot/plot_ticks.hpp"

int main()
{
    double from = 0.0;
    double to = 0.0;
    int count = 0;
    while (std::cin >> from >> to >> count) {
        for (const double tick : snugwalk::niceTicks(from, to, count))
            std::printf("%.17g ", tick);
        std::printf("\n");
    }
    return 0;
}

// SPDX-License-Identifier: Apache-2.0
// The line that each row of the table prints.
#pragma once

#include <cstdio>
#include <string>

inline void row(int number, const std::string &figure)
{
    std::printf("fault row %d: %s\n", number, figure.c_str());
}

// SPDX-License-Identifier: Apache-2.0
// Modules to text.
#include "places/qr_rows.hpp"

#include "qr/qr_code.hpp"

namespace snugwalk {

std::vector<std::string> qrRows(std::string_view bytes)
{
    const auto code = qrFrom(bytes);
    std::vector<std::string> rows;
    for (int y = 0; code && y < code->size; ++y) {
        std::string row;
        for (int x = 0; x < code->size; ++x)
            row += code->isDark(x, y) ? '1' : '0';
        rows.push_back(row);
    }
    return rows;
}

} // namespace snugwalk

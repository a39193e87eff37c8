// SPDX-License-Identifier: Apache-2.0
// The code in a picture, as the app's pages ask for it.
#pragma once

#include <optional>
#include <string>

#include <QImage>

namespace snugwalk {

[[nodiscard]] std::optional<std::string> qrBytes(const QImage &picture);

} // namespace snugwalk

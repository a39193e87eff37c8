// SPDX-License-Identifier: Apache-2.0
// Fixes known beforehand.
#pragma once

#include <vector>

#include "position_source.hpp"

namespace snugwalk {

class RecordedPosition final : public PositionSource {
    Q_OBJECT
public:
    explicit RecordedPosition(std::vector<Fix> fixes) : m_fixes(std::move(fixes)) {}
    [[nodiscard]] QString kind() const override { return QStringLiteral("log"); }
    void start() override;
    void stop() override {}

private:
    std::vector<Fix> m_fixes;
};

} // namespace snugwalk

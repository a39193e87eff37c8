// SPDX-License-Identifier: Apache-2.0
// Pictures known beforehand.
#pragma once

#include <QStringList>

#include "camera_source.hpp"

namespace snugwalk {

class RecordedCamera final : public CameraSource {
    Q_OBJECT
public:
    explicit RecordedCamera(QStringList files) : m_files(std::move(files)) {}
    [[nodiscard]] bool isThere() const override { return true; }
    void start() override;
    void stop() override {}
    void take(const QString &file) override;

private:
    QStringList m_files; ///< at least one
    qsizetype m_next = 0;
};

} // namespace snugwalk

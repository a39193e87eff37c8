// SPDX-License-Identifier: Apache-2.0
// The machine's camera by Qt Multimedia. Nothing of it is loaded before someone asks.
#pragma once

#include <memory>

#include <QElapsedTimer>

#include "camera_source.hpp"

namespace snugwalk {

class QtCamera final : public CameraSource {
    Q_OBJECT
public:
    QtCamera();
    ~QtCamera() override;
    [[nodiscard]] bool isThere() const override;
    void start() override;
    void stop() override;
    [[nodiscard]] bool hasTorch() const override;
    void setTorch(bool on) override;
    void take(const QString &file) override;

private:
    struct Parts;

    void watchDevices() const;
    void show();

    mutable std::unique_ptr<QObject> m_devices; ///< made when first asked
    std::unique_ptr<Parts> m_parts;             ///< while it runs
    QElapsedTimer m_sinceFrame;
};

} // namespace snugwalk

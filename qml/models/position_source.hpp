// SPDX-License-Identifier: Apache-2.0
// Where positions come from; the makers live in platform/position.
#pragma once

#include <QObject>

#include "base/geo.hpp"

namespace snugwalk {

/// Gives fixes while it runs. A source that has nothing to give stays silent.
class PositionSource : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// "receiver" or "log".
    [[nodiscard]] virtual QString kind() const = 0;
    virtual void start() = 0;
    virtual void stop() = 0;

Q_SIGNALS:
    void fixed(const snugwalk::Fix &fix);
    /// The receiver is switched off, refused or gone.
    void lost();
};

} // namespace snugwalk

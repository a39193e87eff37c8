// SPDX-License-Identifier: Apache-2.0
// The other device's code, read off its screen by the camera or out of a picture.
#pragma once

#include <QImage>
#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "act_desk.hpp"
#include "camera_model.hpp"

namespace snugwalk {

class CodeReader : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(bool able READ isAble CONSTANT)
    Q_PROPERTY(QVariantMap fault READ fault NOTIFY changed)
public:
    CodeReader(const ActDesk *desk, QObject *parent);

    /// Whether this program reads pictures of codes.
    [[nodiscard]] bool isAble() const;
    /// {what, act} when a picture had no code; empty otherwise.
    [[nodiscard]] QVariantMap fault() const { return m_fault; }
    [[nodiscard]] bool isBusy() const { return m_looking; }

    /// Looks at what the camera sees now; does nothing while it looks at the frame before.
    Q_INVOKABLE void look(const snugwalk::CameraModel *camera);
    /// \param file an address of a picture file
    Q_INVOKABLE void lookAtFile(const QString &file);
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void changed();
    /// A code was found: its bytes as words.
    void found(const QString &words);

private:
    void take(const Result<std::string> &words, bool isTold);

    const ActDesk *m_desk;
    QVariantMap m_fault;
    bool m_looking = false;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Photos of the logbook for QML: image://photo/thumb/<hash> and image://photo/full/<hash>.
#pragma once

#include <filesystem>

#include <QQuickImageProvider>

namespace snugwalk {

/// Reads and decodes on Qt's image thread, never on the one that draws.
class PhotoProvider : public QQuickImageProvider {
public:
    explicit PhotoProvider(std::filesystem::path folder);
    /// An empty image when there is none of that name. Originals are turned upright.
    QImage requestImage(const QString &id, QSize *size, const QSize &requested) override;

private:
    std::filesystem::path m_folder;
};

} // namespace snugwalk

// SPDX-License-Identifier: Apache-2.0
// Choosing the class behind each maker.
#include "camera/make_camera.hpp"

#include <QDir>

#include "camera/qt_camera.hpp"
#include "camera/recorded_camera.hpp"

namespace snugwalk {

std::unique_ptr<CameraSource> systemCamera() { return std::make_unique<QtCamera>(); }

Result<std::unique_ptr<CameraSource>> recordedCamera(const std::string &folder)
{
    const QDir place(QString::fromStdString(folder));
    const QStringList endings{QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")};
    QStringList files;
    for (const QString &name : place.entryList(endings, QDir::Files, QDir::Name))
        files << place.filePath(name);
    if (files.isEmpty())
        return Error{Errc::NotFound, "no picture in the folder", folder,
                     "name a folder with .jpg or .png files"};
    return std::unique_ptr<CameraSource>(std::make_unique<RecordedCamera>(std::move(files)));
}

} // namespace snugwalk
